export {
  fitWords,
  missingWords,
  sourceWords,
  tableQuestionWords,
  variantWords,
} from './choose-words';
export { graphNames, isGraphKind } from './graph-names';
export { keyWords } from './key-words';
