export { spokenWords, toldAmount, unitWord } from './amount-words';
export { cautionWords, childCautionWords, localAdvice } from './cautions';
export {
  blankWords,
  columnWords,
  endedWords,
  gapWords,
  linesWrittenWords,
  logWords,
  monthTitle,
  protocolWords,
  rowWords,
  daysWords,
  stretchDays,
  stretchWords,
  wasWords,
  whySuggestions,
  workWords,
  writtenWords,
} from './log-words';
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
export { parseErrorWords } from './parse-error-words';
export { endingWords, handWords, roleWords } from './people-words';
export {
  isDayState,
  lostWords,
  markWords,
  quantityWords,
  stageWords,
  stampsByQuantity,
  stateWords,
} from './quantity-words';
export { questionWords, type QuestionWords } from './question-words';
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
  backupErrorWords,
  damagedWords,
  fileErrorWords,
  keepsWords,
  linesWords,
  momentWords,
  newerLinesWords,
  numberWords,
  persistenceWords,
  putAwayWords,
  roomWords,
  sizeWords,
  type FileError,
} from './records-words';
export {
  addedUpWords,
  anotherNumberWords,
  importFieldWords,
  monthWords,
  outcomeCountWords,
  refusalWords,
  rowContentWords,
  rowsWords,
  tableErrorWords,
  tableSpanWords,
  toComeWords,
  unitChoiceWords,
  whyNotInWords,
} from './table-words';
export {
  furthestWords,
  isAboutTrend,
  shapeWords,
  slopeWords,
  trendFacts,
  trendFigures,
  trendTooFewWords,
} from './trend-words';
export { troubleWords } from './trouble-words';
