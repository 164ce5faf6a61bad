export { ideaText } from './idea-words';
export { easierText, questionText, stretchText } from './question-text';
export { slipText } from './slip-words';
export { answerText } from './told-text';
