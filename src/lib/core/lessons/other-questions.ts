import { questionsOf, type AskedQuestion } from '#core/questions';
import type { Lesson } from './lesson-of';
import { isSameQuestion, standsBeside } from './questions-standing';

/**
 * What could stand in the place of a question of a lesson: of the same level, telling no answer of
 * the other questions and told by none. Those of another template come first, then other ways to
 * ask the same; where no other question of the lesson is about the whole set, such ones lead.
 * @example
 * otherQuestions({ facts: { graph: 'bar-graph', ranges: [], table: { form: 'counts', rows: [] }, choice: {} }, questions: [] }, { template: 'R2', level: 'read' }) // => []
 */
export const otherQuestions = (
  lesson: Pick<Lesson, 'facts' | 'questions'>,
  question: AskedQuestion,
): readonly AskedQuestion[] => {
  const others = lesson.questions.flatMap((each) =>
    each.kind === 'asked' && !isSameQuestion(each.question, question) ? [each.question] : [],
  );
  const possible = questionsOf(lesson.facts).filter(
    (each) =>
      each.level === question.level &&
      !isSameQuestion(each, question) &&
      standsBeside(each, others),
  );
  const isWholeWanted = !others.some(({ wholeSet }) => wholeSet);
  const placeOf = ({ template, wholeSet }: AskedQuestion): number =>
    (template === question.template ? 2 : 0) + (isWholeWanted && !wholeSet ? 1 : 0);
  return possible.toSorted((one, other) => placeOf(one) - placeOf(other));
};
