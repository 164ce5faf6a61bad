export type {
  AskedQuestion,
  Level,
  NumberRange,
  QuestionId,
  QuestionTemplate,
  Slip,
  Told,
} from './question';
export { levels, numberRanges, questionIds } from './question';
export { formOf, type FormName } from './question-form';
export { slipIds, type SlipId } from './slip-id';
export {
  lessonFactsOf,
  rangesByStage,
  type LessonFacts,
  type LessonFactsError,
} from './lesson-facts';
export { everyTemplate, questionsOf } from './every-template';
export { chooseQuestions, type ChosenQuestions } from './choose-questions';
export { decodeQuestion, decodeTold, type QuestionError } from './decode-question';
export { answerBys, answerWayOf, type AnswerBy, type AnswerWay } from './answer-way';
export { judgeAnswer, type Judged } from './judge-answer';
export { isTelling } from './telling';
export { sameTold } from './told';
export {
  flawedPractice,
  flawIds,
  practiceAskedAbout,
  type FlawedPractice,
  type FlawId,
} from './flawed-practice';
export { practiceTable, type PracticeTable } from './practice-table';
