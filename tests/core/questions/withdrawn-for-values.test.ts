import { describe, expect, it } from 'vitest';
import type { Notebook } from '#core/journal';
import { daily, factsOf, kinds, notebookOf, ofTemplate, type Asking } from './facts-of-lines';
import { said, bean, bars, kindBars, rain, rainBars, rainPlot } from './hand-logs';

const ask = (id: string, notebook: Notebook, asking: Asking): number =>
  ofTemplate(factsOf(notebook, asking), id).length;

describe('a question is withdrawn', () => {
  it('where two days tie and one is asked for', () => {
    expect(ask('R3', bean([9, 9]), bars)).toBe(0);
    expect(ask('C9', rain([2, 3, 2, 6, 2, 6, 1, 6]), rainPlot)).toBe(0);
    expect(ask('C5', bean([4, 5, 6]), bars)).toBe(0);
    expect(ask('C7', bean([4, 8, 12]), bars)).toBe(0);
  });

  it('where the lead is less than two units, or the gaps differ', () => {
    expect(ask('C7', bean([4, 6, 9]), bars)).toBe(0);
    expect(ask('C7', bean([4, 5, null, 12]), bars)).toBe(0);
  });

  it('where a value is missing', () => {
    const texts = said(ofTemplate(factsOf(bean([5, 'missed', 9]), bars), 'R1'));
    expect(texts.filter((text) => text.includes('3 March'))).toEqual([]);
    const leads = notebookOf({ Bean: daily([5, 9, 9]), Pea: daily([2, null, 8]) });
    const two = { source: 'days-in-order', graph: 'line-graph' } as const;
    expect(said(ofTemplate(factsOf(leads, two), 'C13'))).toEqual([
      'Find Monday 2 March. How far was Bean ahead of Pea? 3 cm',
      'Find Wednesday 4 March. How far was Bean ahead of Pea? 1 cm',
    ]);
  });

  it('where a value is doubted', () => {
    // 40 cm after 6 cm is beyond what a plant does in a day (15 cm of room at most).
    const notebook = bean([4, 5, 6, 40, 7, 8]);
    const facts = factsOf(notebook, { ...bars, stage: 'grade-3' });
    expect(facts.doubted.size).toBeGreaterThan(0);
    const texts = ['R1', 'R3', 'C2', 'C5', 'C7', 'C8'].flatMap((id) => said(ofTemplate(facts, id)));
    expect(texts.filter((text) => text.includes('40 cm'))).toEqual([]);
    expect(texts.filter((text) => text.includes('Thursday 5 March'))).toEqual([]);
    // The same rain twice: was the gauge emptied? Nothing is asked about the whole, or that pile.
    const plot = factsOf(rain([1, 3, 7, 7, 3, 1, 4, 1, 3]), rainPlot);
    expect(plot.doubted.size).toBe(1);
    expect(said(ofTemplate(plot, 'R6')).some((text) => text.includes('7 mm'))).toBe(false);
    expect(ofTemplate(plot, 'C9')).toEqual([]);
  });

  it('where units are mixed: there is no graph to ask about', () => {
    const mixed = notebookOf({
      Bean: [...daily([5, 6]), { day: '2026-03-04', read: '3', unit: 'in' }],
    });
    expect(() => factsOf(mixed, bars)).toThrow('units-mixed');
  });

  it('where the days are too near for growth, or too far to be shared out', () => {
    expect(ask('C2', bean([4, 6, 8]), bars)).toBe(0);
    expect(ask('C8', bean([4, 7]), bars)).toBe(0);
    expect(ask('C8', bean([4, null, null, null, null, null, 10]), bars)).toBe(0);
  });

  it('where the answer is 0', () => {
    expect(said(ofTemplate(factsOf(rain([0, 4]), rainBars), 'R1'))).toEqual([
      'Find Tuesday 3 March. How much rain was there? 4 mm',
    ]);
    expect(ask('R2', kinds({ sun: 3, cloud: 2, rain: 0 }), kindBars)).toBe(2);
    expect(ask('C9', rain([0, 3, 0, 6, 0, 5, 0, 6]), rainPlot)).toBe(0);
  });

  it('where the answer is a number in the question', () => {
    // 3 cm on 3 March; and 3 cm of growth in 3 days.
    expect(said(ofTemplate(factsOf(bean([5, 3]), bars), 'R1'))).toEqual([
      'Find Monday 2 March. How tall was Bean? 5 cm',
    ]);
    expect(ask('C2', bean([4, 5, 6, 7]), bars)).toBe(0);
    expect(ask('R6', rain([1, 2, 4, 2]), rainPlot)).toBe(1);
  });
});
