export { dayAmount } from './day-amount';
export { questionsAboutCorrection } from './correction-questions';
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
export { inOtherSystem } from './other-system';
export { secondMeasuresDue, type SecondMeasureDue } from './second-measures-due';
export { quietDays, seriesOf } from './series';
export type { Series, SeriesDay, SeriesPoint } from './series';
