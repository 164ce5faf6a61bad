import { describe, expect, test } from 'vitest';
import { questionsOf, type AskedQuestion } from '#core/questions';
import { answerText } from '#ui/ladder-words';
import { sampleLessons } from '../../core/questions/lessons-of-sample';
import { answerSpace } from '../../../src/lib/ui/lesson-paper/answer-space';
import { paperLesson } from './paper-lessons';
import { childText } from '../../../src/lib/ui/lesson-paper/child-text';

const everyQuestion = [...Object.values(sampleLessons), paperLesson('week').facts].flatMap(
  (facts) => questionsOf(facts),
);
const spaceOf = (question: AskedQuestion) => answerSpace({ kind: 'asked', question });
const asked = (template: AskedQuestion['template']): AskedQuestion => {
  const found = everyQuestion.find((each) => each.template === template);
  if (!found) throw new Error(`The made-up notebook has no ${template}`);
  return found;
};

describe('the room for an answer', () => {
  test('is there for every question of the made-up notebook', () => {
    expect(everyQuestion.length).toBeGreaterThan(200);
    for (const question of everyQuestion) {
      const { blanks, lines, choices } = spaceOf(question);
      expect([question.template, blanks.length + lines + choices.length > 0]).toEqual([
        question.template,
        true,
      ]);
    }
  });

  test('never tells the answer: only its unit, or what is counted, stands there', () => {
    for (const question of everyQuestion) {
      const { blanks } = spaceOf(question);
      const printed = blanks.map(({ before, after }) => `${before} ${after}`).join(' ');
      expect([question.template, printed]).not.toEqual([
        question.template,
        expect.stringContaining(answerText(question.answer)),
      ]);
      // A number that is printed is the number of a place in an order.
      const numbers = question.template === 'C6' ? /\d{2}/ : /\d/;
      expect([question.template, numbers.test(printed)]).toEqual([question.template, false]);
    }
  });

  test('is a short blank with its unit for a length, and with what is counted for a count', () => {
    expect(spaceOf(asked('C2'))).toEqual({
      blanks: [{ before: '', room: 'number', after: 'cm' }],
      ...{ lines: 0, choices: [] },
    });
    expect(spaceOf(asked('C4')).blanks).toEqual([{ before: '', room: 'number', after: 'days' }]);
  });

  test('has no unit where the unit or what is counted is asked for', () => {
    for (const template of ['R4', 'R10'] as const)
      expect(spaceOf(asked(template)).blanks).toEqual([{ before: '', room: 'word', after: '' }]);
  });

  test('has two days to name, or a line where nobody says how many', () => {
    expect(spaceOf(asked('C5')).blanks.map(({ before }) => before)).toEqual(['', 'and']);
    expect(spaceOf(asked('R8'))).toEqual({ blanks: [], lines: 2, choices: [] });
  });

  test('has room for a reason where a grown-up judges the answer', () => {
    for (const template of ['Y2', 'Y8'] as const) expect(spaceOf(asked(template)).lines).toBe(1);
    expect(spaceOf(asked('H1')).lines).toBe(2);
  });

  test('lets one of a few be ringed, and each stands by itself', () => {
    const question = asked('H9');
    const { choices } = spaceOf(question);
    expect(choices).toHaveLength(3);
    expect(choices).toContain(answerText(question.answer));
    const text = childText({ kind: 'asked', question });
    for (const choice of choices) expect(text).not.toContain(choice);
    expect(text).toMatch(/\?$/);
  });
});
