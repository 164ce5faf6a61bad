export { cautionWords, childCautionWords, localAdvice } from './cautions';
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
export { troubleWords } from './trouble-words';
