export { aheadBandWords, aheadWords } from './ahead-band-words';
export { spokenWords, toldAmount, unitWord } from './amount-words';
export { betweenAbout, betweenWords } from './between-words';
export {
  answerWords,
  doubtListWords,
  doubtedDayWords,
  doubtedWords,
  doubtsWaitingWords,
} from './doubted-words';
export { fastestWords } from './fastest-words';
export {
  childKindWords,
  childShadowWords,
  clockGraphSentence,
  grownUpsGraph,
  kindSpanWords,
  readingInUnit,
  readingWhenWords,
  readingWords,
  shadowWords,
  sideWords,
  timeGraphSentences,
} from './graph-words';
export {
  changeTableWords,
  childGrowthWords,
  leftOutWords,
  pageUnitWords,
  shareWords,
  tooShortWords,
  whyTooShortWords,
} from './growth-words';
export { guessesAbout, guessesWords, nobodyNamed } from './guesses-words';
export { deadZoneUnseen, pairsAbout, startAtOneWords } from './pairs-words';
export {
  childRainWords,
  periodWords,
  rainPeriodWords,
  rainWords,
  totalNotes,
  totalWords,
  wetDayWords,
} from './rain-words';
export { noSunWords, sunDayWords, sunWords } from './sun-words';
export {
  furthestWords,
  isAboutTrend,
  shapeWords,
  slopeWords,
  trendFacts,
  trendFigures,
  trendTooFewWords,
} from './trend-words';
export {
  cannotTellTwice,
  neverRemoved,
  twiceWords,
  withEveryReading,
  withoutWords,
} from './twice-words';
