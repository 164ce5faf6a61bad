import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { lessonFactsOf, questionsOf, type AskedQuestion } from '#core/questions';
import type { Notebook } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import { sibling, specimenId, thing } from '../graphs/small-notebook';
import { daily, factsOf, kinds, notebookOf, ofTemplate } from './facts-of-lines';

/** Small logs of what the reading of ten thousand made-up journals found, once each. */
const numbersOf = (questions: readonly AskedQuestion[]): readonly number[] =>
  questions.flatMap(({ slips }) =>
    slips.flatMap(({ told }) =>
      told.kind === 'count' ? [told.count] : told.kind === 'length' ? [told.exact / 1e7] : [],
    ),
  );

/** Of a table that is told in another unit or mark than it was read in. */
const toldIn = (notebook: Notebook, unit: Unit, mark: MarkId, plot = false) => {
  const day = civilDay('2026-03-02');
  const facts = lessonFactsOf(
    notebook,
    {
      ...{ source: plot ? 'reads-of-one' : 'days-in-order', investigation: thing, mostKinds: null },
      ...{ from: day, to: plot ? day : civilDay('2026-03-10'), specimens: [specimenId(0)] },
      told: { unit, mark, converts: true },
    },
    ...([plot ? 'line-plot' : 'line-graph', 'grade-3', civilDay('2026-03-10')] as const),
  );
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return questionsOf(facts.value);
};

describe('what the reading of many made-up journals found', () => {
  it('asks which days have no number of the free days too: they have a place on a line graph', () => {
    // 7 and 8 March 2026 are a Saturday and a Sunday, free days of a school week.
    const school = notebookOf(
      { Bean: daily([1, 2, null, 4, 5, null, null, 8]) },
      { weekdays: [1, 2, 3, 4, 5] },
    );
    const [asked] = ofTemplate(
      factsOf(school, { source: 'days-in-order', graph: 'line-graph', to: '2026-03-09' }),
      'R8',
    );
    const days = ['2026-03-04', '2026-03-07', '2026-03-08'];
    expect(asked?.answer).toEqual({ kind: 'days', days });
  });

  it('lets a child count no half steps before grade 3, also where both ends are whole', () => {
    const read = ['2', '2 1/2', '2 1/2', '3', '2 1/2'].map((each) => ({
      day: '2026-03-02',
      read: each,
    }));
    const pencil = notebookOf({ Pencil: read }, { quantity: 'length', unit: 'in', mark: '1/2 in' });
    const asking = { source: 'reads-of-one', graph: 'line-plot', to: '2026-03-02' } as const;
    const told = ['in', '1/2 in'] as const;
    expect(ofTemplate(factsOf(pencil, { ...asking, told }), 'C10')).toEqual([]);
    const older = factsOf(pencil, { ...asking, told, stage: 'grade-3' });
    expect(ofTemplate(older, 'C10').map(({ answer }) => answer)).toEqual([
      { kind: 'count', count: 2, of: 'steps' },
    ]);
  });

  it('has no slip beyond 20 in grade 1', () => {
    // 12 + 10 is 22.
    const skies = factsOf(kinds({ sun: 12, cloud: 10 }), {
      ...{ source: 'kind-days', graph: 'bar-graph', stage: 'grade-1' },
    });
    const [asked] = ofTemplate(skies, 'C1');
    expect(asked?.answer).toEqual({ kind: 'count', count: 2, of: 'days' });
    expect(Math.max(...numbersOf(asked ? [asked] : []))).toBe(12);
  });

  it('counts a day of two words of weather as one of the ten days that a month ahead needs', () => {
    const twice = (days: number) =>
      notebookOf(
        {
          Sky: Array.from({ length: days }, (_, index) => {
            const day = `2026-03-${String(index + 2).padStart(2, '0')}`;
            return [
              { day, word: 'sun' },
              { day, word: 'rain' },
            ];
          }).flat(),
        },
        { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'rain'] },
      );
    const asking = { source: 'kind-days', graph: 'bar-graph' } as const;
    expect(ofTemplate(factsOf(twice(9), asking), 'Y4')).toEqual([]);
    expect(ofTemplate(factsOf(twice(10), asking), 'Y4')).toHaveLength(1);
  });

  it('waits five days after a whole inch, also on a graph of half inches', () => {
    const read = ['1', null, null, null, '3', null, '4 1/2'];
    const lines = daily(read).map(
      (line) => ({ ...line, mark: line.read === '3' ? '1 in' : '1/2 in' }) as const,
    );
    const bean = notebookOf({ Bean: lines }, { unit: 'in', mark: '1/2 in' });
    const facts = factsOf(bean, {
      ...{ source: 'days-in-order', graph: 'line-graph', stage: 'grade-3', to: '2026-03-08' },
      told: ['in', '1/2 in'],
    });
    // From 2 to 6 March it grew 2 inches, but one of them was read to a whole inch only.
    expect(ofTemplate(facts, 'C2')).toEqual([]);
  });

  it('asks for no millimetres of what was read in inches, though it comes out even', () => {
    const lines = daily([10, 10, 20, 30]);
    const bean = notebookOf({ Bean: lines }, { unit: 'in', mark: '1 in' });
    const asked = toldIn(bean, 'mm', '1 mm').map(({ template }) => template);
    expect(asked.filter((id) => ['R1', 'R3', 'C2', 'C5', 'C7', 'C8'].includes(id))).toEqual([]);
  });

  it('gives no range of reads that are only about what was read', () => {
    const read = [2, 3, 4, 5, 6].map((each) => ({ day: '2026-03-02', read: `${each}` }));
    const pencil = notebookOf({ Pencil: read }, { quantity: 'length' });
    const asked = (unit: Unit, mark: MarkId) =>
      toldIn(pencil, unit, mark, true).filter(({ template }) => template === 'Y7').length;
    expect(asked('cm', '1 cm')).toBe(1);
    expect(asked('in', '1/2 in')).toBe(0);
  });

  it('looks at every number of the last four days before it looks ahead, not at four numbers', () => {
    // 60 cm is doubted; four people read on the last day.
    const lines = [
      ...daily([3, 4, 5, 6, 7, 60, 8]),
      ...Array.from({ length: 4 }, () => ({ day: '2026-03-09', read: '9', author: sibling })),
    ];
    const notebook = notebookOf({ Bean: lines });
    const choice = {
      ...({ source: 'days-in-order', investigation: thing, mostKinds: null } as const),
      ...{ from: civilDay('2026-03-02'), to: civilDay('2026-03-09') },
      ...{
        specimens: [specimenId(0)],
        told: { unit: 'cm', mark: '1 cm', converts: false } as const,
      },
    };
    const facts = lessonFactsOf(notebook, choice, 'line-graph', 'grade-2', civilDay('2026-03-09'));
    if (!facts.ok) throw new Error(JSON.stringify(facts.error));
    expect(facts.value.doubted.size).toBeGreaterThan(0);
    expect(ofTemplate(facts.value, 'Y1')).toEqual([]);
    const sure = lessonFactsOf(
      notebookOf({ Bean: lines.filter(({ read }) => read !== '60') }),
      ...([choice, 'line-graph', 'grade-2', civilDay('2026-03-09')] as const),
    );
    if (!sure.ok) throw new Error(JSON.stringify(sure.error));
    expect(ofTemplate(sure.value, 'Y1')).toHaveLength(1);
  });
});
