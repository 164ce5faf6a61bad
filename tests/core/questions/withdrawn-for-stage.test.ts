import { describe, expect, it } from 'vitest';
import type { Notebook } from '#core/journal';
import { answerText } from '#ui/ladder-words';
import { daily, factsOf, kinds, notebookOf, ofTemplate, type Asking } from './facts-of-lines';
import { said, bean, bars, kindBars, rain, rainBars, rainPlot } from './hand-logs';

const ask = (id: string, notebook: Notebook, asking: Asking): number =>
  ofTemplate(factsOf(notebook, asking), id).length;

describe('a question is withdrawn', () => {
  it('where there are too few points', () => {
    expect(ask('C9', rain([2, 3, 2]), rainPlot)).toBe(0);
    expect(ask('C10', rain([2, 3, 2, 6]), rainPlot)).toBe(0);
    expect(ask('C6', rain([6, 2]), rainBars)).toBe(0);
  });

  it('where there are more kinds than the stage sorts', () => {
    const many = kinds({ sun: 3, cloud: 2, rain: 2, snow: 1 });
    expect(() => factsOf(many, { ...kindBars, stage: 'grade-1' })).toThrow('too-many-kinds');
  });

  it('where the numbers are beyond the stage', () => {
    const tall = bean([4, 9, 14, 19, 21, 23]);
    const given = { ...bars, source: 'days-in-order', graph: 'line-graph' } as const;
    const texts = said(ofTemplate(factsOf(tall, { ...given, stage: 'grade-1' }), 'R1'));
    expect(texts.some((text) => /2[13] cm/.test(text))).toBe(false);
    expect(ask('R1', tall, { ...given, stage: 'grade-2' })).toBe(6);
  });

  it('where a number has a part of a unit, up to grade 2', () => {
    const halves = notebookOf(
      { Bean: daily(['1 1/2', '2', '2 1/2']) },
      { unit: 'in', mark: '1/2 in' },
    );
    const inHalves = { ...bars, told: ['in', '1/2 in'] } as const;
    expect(said(ofTemplate(factsOf(halves, inHalves), 'R1'))).toEqual([
      'Find Tuesday 3 March. How tall was Bean? 2 inches',
    ]);
    expect(ask('R1', halves, { ...inHalves, stage: 'grade-3' })).toBe(3);
    expect(ask('C5', halves, { ...inHalves, stage: 'grade-3' })).toBe(0);
  });

  it('where it is of grade 3 only, or comes out with some left', () => {
    expect(ask('C8', bean([4, 6, 9]), bars)).toBe(0);
    // 5 cm in 2 days: 2 each day, and 1 left; but the 2 stands in the question.
    expect(said(ofTemplate(factsOf(bean([4, 6, 9]), { ...bars, stage: 'grade-3' }), 'C8'))).toEqual(
      [],
    );
    // 7 cm in 2 days from 5 March on: 3 each day, and 1 left.
    expect(
      said(
        ofTemplate(
          factsOf(bean([null, null, null, 5, 8, 12]), { ...bars, stage: 'grade-3' }),
          'C8',
        ),
      ),
    ).toHaveLength(1);
  });

  it('where rain is a total of several days', () => {
    const total = notebookOf(
      {
        Gauge: [
          ...daily([4, 7]),
          { day: '2026-03-05', read: '9', spanDays: 2 },
          { day: '2026-03-06', read: '2' },
        ],
      },
      { quantity: 'rain', unit: 'mm', mark: '1 mm' },
    );
    const facts = factsOf(total, rainBars);
    const texts = ['R1', 'R3', 'C2', 'C6'].flatMap((id) => said(ofTemplate(facts, id)));
    expect(texts.filter((text) => /5 March|9 mm/.test(text))).toEqual([]);
    expect(ofTemplate(facts, 'R8')).toEqual([]);
  });

  it('where a day is of two kinds and rows are put together', () => {
    const both = notebookOf(
      {
        Sky: [
          { day: '2026-03-02', word: 'sun' },
          { day: '2026-03-02', word: 'rain' },
          { day: '2026-03-03', word: 'sun' },
        ],
      },
      { quantity: 'daily-kind', unit: 'count', mark: '1', kinds: ['sun', 'rain'] },
    );
    expect(ask('R2', both, kindBars)).toBe(2);
    expect(['C3', 'C4', 'C12'].map((id) => ask(id, both, kindBars))).toEqual([0, 0, 0]);
  });
});

describe('the narrowest range', () => {
  it('regroups only where the ones do not suffice', () => {
    const ranges = ofTemplate(
      factsOf(bean([4, 9, 14, 21, 28, 30]), {
        ...bars,
        source: 'days-in-order',
        graph: 'line-graph',
      }),
      'C2',
    ).map(({ blanks, range }) => [answerText(blanks['less']!), answerText(blanks['more']!), range]);
    // 21 - 4 regroups (1 < 4), 28 - 4 does not; 28 - 9 regroups.
    expect(ranges).toContainEqual(['Monday 2 March', 'Thursday 5 March', 'G2b']);
    expect(ranges).toContainEqual(['Monday 2 March', 'Friday 6 March', 'G2a']);
    expect(ranges).toContainEqual(['Tuesday 3 March', 'Friday 6 March', 'G2b']);
  });
});
