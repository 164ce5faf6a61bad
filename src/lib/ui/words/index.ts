export { cautionWords } from './cautions';
export { childCautionWords, localAdvice } from './child-cautions';
export {
  childTasks,
  isDayState,
  lostWords,
  quantityIcons,
  stampsByQuantity,
  stateWords,
} from './day-words';
export { everyChildCaution } from './every-child-caution';
export {
  blankWords,
  columnWords,
  endedWords,
  extraWords,
  gapWords,
  logWords,
  monthTab,
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
export { parseErrorWords } from './parse-error-words';
export { endingWords, handWords, roleWords } from './people-words';
export { markWords, quantityWords, stageWords } from './quantity-words';
export { questionWords, type QuestionWords } from './question-words';
export { troubleWords } from './trouble-words';
