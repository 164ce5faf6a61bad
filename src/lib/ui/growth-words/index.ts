export { spokenWords, toldAmount, unitWord } from './amount-words';
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
export {
  childRainWords,
  periodWords,
  rainPeriodWords,
  rainWords,
  totalNotes,
  totalWords,
  wetDayWords,
} from './rain-words';
export {
  furthestWords,
  isAboutTrend,
  shapeWords,
  slopeWords,
  trendFacts,
  trendFigures,
  trendTooFewWords,
} from './trend-words';
