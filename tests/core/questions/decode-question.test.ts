import { describe, expect, it } from 'vitest';
import { decodeQuestion, formOf, questionsOf, type AskedQuestion } from '#core/questions';
import { easierText, questionText, stretchText } from '#ui/ladder-words';
import { lessonsOfMany } from './lessons-of-many';
import { sampleLessons } from './lessons-of-sample';

const everyAsked = [...Object.values(sampleLessons), ...lessonsOfMany(150)].flatMap(questionsOf);
const aQuestion = (id: string): AskedQuestion => {
  const found = everyAsked.find(({ template }) => template === id);
  if (!found) throw new Error(`${id} is not asked`);
  return found;
};
const errorOf = (sheet: unknown) => {
  const read = decodeQuestion(sheet);
  return read.ok ? null : read.error;
};

describe('a question that was kept', () => {
  it('has a form, comes back as it was, and can be said', () => {
    const ids = new Set<string>();
    for (const question of everyAsked) {
      ids.add(question.template);
      if (formOf(question) === null) throw new Error(JSON.stringify(question));
      const read = decodeQuestion(JSON.parse(JSON.stringify(question)));
      expect(read).toEqual({ ok: true, value: question });
    }
    // What is asked only of rare logs is worked out by hand elsewhere.
    expect(ids.size).toBeGreaterThan(36);
  });

  it('of two plants is of one of two forms: how far on a day, and on which day most', () => {
    const forms = everyAsked
      .filter(({ template }) => template === 'C13')
      .map((question) => [formOf(question), question.answer.kind, 'day' in question.blanks]);
    expect(new Set(forms.map((form) => form.join(' ')))).toEqual(
      new Set(['how-far length true', 'which-day day false']),
    );
  });

  it('without one of its blanks, or with another kind of thing in it, is none', () => {
    const { plant, ...withoutPlant } = aQuestion('R1').blanks;
    expect(plant?.kind).toBe('word');
    expect(errorOf({ ...aQuestion('R1'), blanks: withoutPlant })).toEqual({
      ...{ kind: 'not-a-question', part: 'blanks' },
    });
    const blanks = { ...aQuestion('R1').blanks, day: { kind: 'word', word: 'Monday' } };
    expect(errorOf({ ...aQuestion('R1'), blanks })).toEqual({
      ...{ kind: 'not-a-question', part: 'blanks' },
    });
  });

  it('with an answer of another kind is none', () => {
    const answer = { kind: 'word', word: 'tall' };
    expect(errorOf({ ...aQuestion('C2'), answer })?.part).toBe('blanks');
  });

  it('with a blank that a later program added is still said', () => {
    const blanks = { ...aQuestion('R1').blanks, later: { kind: 'word', word: 'x' } };
    const read = decodeQuestion({ ...aQuestion('R1'), blanks });
    if (!read.ok) throw new Error(read.error.part);
    for (const text of [questionText, easierText, stretchText]) {
      expect(text(read.value)).toBe(text(aQuestion('R1')));
    }
  });
});
