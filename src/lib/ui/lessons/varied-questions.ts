import type { AskedQuestion } from '#core/questions';

/**
 * Questions so that the first few differ: one of each template in turn, then the next way to ask
 * each. What came first of its template stays first.
 */
export const variedQuestions = (questions: readonly AskedQuestion[]): readonly AskedQuestion[] => {
  const turns = questions.map(
    ({ template }, index) =>
      questions.slice(0, index).filter((before) => before.template === template).length,
  );
  return questions
    .map((question, index) => ({ question, turn: turns[index]! }))
    .toSorted((one, other) => one.turn - other.turn)
    .map(({ question }) => question);
};
