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
  whySuggestions,
  workWords,
  writtenWords,
} from './log-words';
export { parseErrorWords } from './parse-error-words';
export { endingWords, handWords, roleWords } from './people-words';
export {
  isDayState,
  markWords,
  quantityWords,
  stageWords,
  stampsByQuantity,
  stateWords,
} from './quantity-words';
export { questionWords, type QuestionWords } from './question-words';
export {
  backupErrorWords,
  damagedWords,
  fileErrorWords,
  keepsWords,
  linesWords,
  momentWords,
  numberWords,
  persistenceWords,
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
export { troubleWords } from './trouble-words';
