export { agreementWindow } from './agreement-window';
export { dayAmount } from './day-amount';
export { questionsAboutCorrection } from './correction-questions';
export type * from './doubt';
export { candidateOf, type DoubtCandidate } from './doubt-candidate';
export { doubtsAbout } from './doubts-about';
export { questionsAboutEntry, rulerExactFor, type EntryQuestion } from './entry-questions';
export {
  estimatesBy,
  estimatesOf,
  isAnswered,
  openEstimate,
  type AnsweredEstimate,
  type EstimateOutcome,
  type UnansweredEstimate,
} from './estimates-of';
export { notesOfSeries } from './extra-lines';
export {
  differenceChoices,
  fairTestOf,
  lightTrapDays,
  type DifferenceChoice,
  type FairTest,
  type FairTestSpecimen,
} from './fair-test';
export { helperToTry } from './helper-to-try';
export { lightTrapNeeds, type LightTrapNeed } from './light-trap-needs';
export { logMonths, type LogMonth } from './log-months';
export type * from './log-row';
export { foldedOverDays, logRows, openedUpToDays } from './log-rows';
export { canCompare, fewestUnitsForShares, guessUnitExact, missOf, type Miss } from './miss-of';
export { answersSinceChange, doubtedReadings, openDoubts, type OpenDoubt } from './open-doubts';
export { inOtherSystem } from './other-system';
export { plausibleWindow, type PlausibleWindow } from './plausible-window';
export { rulerPairs, type RulerPair } from './ruler-pairs';
export { secondMeasuresDue, type SecondMeasureDue } from './second-measures-due';
export { quietDays, seriesOf } from './series';
export type { Series, SeriesDay, SeriesPoint } from './series';
export { daysReadByMany, spreadOfDay, type SpreadOfDay } from './spread-of-day';
export { startAtOneSignal, type StartAtOne } from './start-at-one';
export { stillInInches, type StillInInches } from './still-in-inches';
export { withoutReadings } from './without-readings';
