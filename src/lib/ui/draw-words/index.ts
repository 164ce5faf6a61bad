export { hintWords, hintWordsByTally } from './hint-words';
export type { HintLadder } from './hint-ladder';
export { rightWords } from './right-words';
