import { describe, expect, it } from 'vitest';
import { chooseQuestions, questionsOf, type AskedQuestion } from '#core/questions';
import { answerText, easierText, questionText, slipText, stretchText } from '#ui/ladder-words';
import { sampleLessons } from './lessons-of-sample';

/** A question as text: what is asked, the answer, the slips, and the ways down and up. */
const written = (question: AskedQuestion): string =>
  [
    `${question.template} ${question.level} ${question.range}${question.wholeSet ? ' whole set' : ''}`,
    `  ${questionText(question)}`,
    `  = ${answerText(question.answer)}`,
    ...question.slips.map(({ told, shows }) => `  ~ ${answerText(told)}: ${slipText(shows)}`),
    `  easier: ${easierText(question)}`,
    `  further: ${stretchText(question)}`,
  ].join('\n');

describe('the questions of the made-up notebook', () => {
  it.each(Object.entries(sampleLessons))(
    'of %s are those of its golden file',
    async (name, facts) => {
      const { read, between, beyond, behind, missing } = chooseQuestions(facts, 7);
      const all = questionsOf(facts);
      expect(all.length).toBeGreaterThan(5);
      const text = [
        `${all.length} questions`,
        ...all.map(written),
        'chosen with seed 7',
        ...[...read, ...between, ...beyond, ...behind].map(written),
        `missing: ${JSON.stringify(missing)}`,
      ].join('\n\n');
      await expect(`${text}\n`).toMatchFileSnapshot(`./${name}.golden.txt`);
    },
  );
});
