export {
  answerWords,
  doubtQuestion,
  doubtWords,
  type DoubtDeed,
  type DoubtedFacts,
} from './doubt-words';
