import { describe, expect, it } from 'vitest';
import { decodeLessonChanges, lessonBlocks } from '#core/lessons';
import type { AskedQuestion } from '#core/questions';

const question: AskedQuestion = {
  ...{ template: 'R2', level: 'read', range: 'G1', slips: [], wholeSet: false },
  blanks: { kind: { kind: 'word', word: 'sun' }, counted: { kind: 'word', word: 'days' } },
  answer: { kind: 'count', count: 4, of: 'days' },
};
const valueOf = (sheets: readonly Record<string, unknown>[]) => {
  const read = decodeLessonChanges(sheets);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
};
const partOf = (...sheets: readonly Record<string, unknown>[]) => {
  const read = decodeLessonChanges(sheets);
  return read.ok ? null : read.error.part;
};

describe('the changes of a lesson', () => {
  it('are none where nothing was changed', () => {
    expect(valueOf([])).toEqual({ madeOn: null, title: null, texts: {}, questions: null, own: [] });
  });

  it('win over earlier ones field by field, and over earlier texts block by block', () => {
    const changes = valueOf([
      { madeOn: '2026-03-20', questions: [question], texts: { opener: 'one', talk: 'two' } },
      { title: 'Our weather', texts: { talk: '' } },
    ]);
    expect(changes.madeOn).toBe('2026-03-20');
    expect(changes.questions).toEqual([question]);
    expect(changes.title).toBe('Our weather');
    expect(changes.texts).toEqual({ opener: 'one', talk: '' });
  });

  it('are taken back by a null, and the plan’s own stands again', () => {
    const changes = valueOf([
      { title: 'Ours', texts: { teach: 'mine' }, questions: [question], own: [ownOne] },
      { title: null, texts: { teach: null }, questions: null, own: null },
    ]);
    expect(changes).toEqual({ madeOn: null, title: null, texts: {}, questions: null, own: [] });
  });

  it('keep what they know of a later program’s, and leave out the rest', () => {
    const changes = valueOf([{ title: 'Ours', music: 'on', texts: { opener: 'a', song: 'b' } }]);
    expect(changes.title).toBe('Ours');
    expect(changes.texts).toEqual({ opener: 'a' });
  });

  it('can hold words for every block', () => {
    const texts = Object.fromEntries(lessonBlocks.map((block) => [block, `own ${block}`]));
    expect(valueOf([{ texts }]).texts).toEqual(texts);
  });

  it('come back from the journal’s text as they went in', () => {
    const sheet = { madeOn: '2026-03-20', questions: [question], own: [ownOne], texts: {} };
    expect(valueOf([JSON.parse(JSON.stringify(sheet))])).toEqual(valueOf([sheet]));
  });

  it('name the part that is damaged', () => {
    expect(partOf({ madeOn: '2026-02-30' })).toBe('madeOn');
    expect(partOf({ title: 'fine' }, { title: 7 })).toBe('title');
    expect(partOf({ texts: { opener: 7 } })).toBe('texts.opener');
    expect(partOf({ own: [{ level: 'deep', text: '', answer: '' }] })).toBe('own.0.level');
    expect(partOf({ questions: [question, { ...question, template: 'Z9' }] })).toBe('questions.1');
    expect(partOf({ questions: 'all' })).toBe('questions');
  });
});

const ownOne = { level: 'between', text: 'How many days with no sun?', answer: '4 days' } as const;
