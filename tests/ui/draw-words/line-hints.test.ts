import { describe, expect, it } from 'vitest';
import { lineGraphHints } from '../../../src/lib/ui/draw-words/line-graph-hints';
import { linePlotHints } from '../../../src/lib/ui/draw-words/line-plot-hints';
import { gradeOf, sentencesOf, wordsOf } from '../../readability';

describe('the hints for line plots and line graphs', () => {
  // Grades counted by hand with the CMU Pronouncing Dictionary; formula of Kincaid et al. 1975.
  it.each([
    ['The cat sat on the mat.', -1.45],
    ['My bean is tall. It grew two inches this week.', -0.66],
    ['Measure from the soil to the very top of the plant.', 2.6455],
    ['It rained a lot on Monday. The cup had one inch of water in it.', 0.7083],
  ])('reckon the grade of "%s" as a count by hand does', (text, grade) => {
    expect(gradeOf(text)).toBeCloseTo(grade, 2);
  });

  const steps = Object.entries({ ...linePlotHints, ...lineGraphHints }).flatMap(([id, ladder]) =>
    ladder.map((text, step) => ({ id, step: step + 1, text })),
  );

  it('are three for each of the fifteen and fourteen mistakes', () => {
    expect(steps).toHaveLength(3 * (15 + 14));
  });

  it.each(steps)('$id step $step is short and easy to read', ({ text }) => {
    for (const sentence of sentencesOf(text)) {
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(10);
    }
    expect(gradeOf(text)).toBeLessThanOrEqual(3);
  });

  it.each(steps)('$id step $step is kind and holds no number', ({ text }) => {
    expect(text).not.toMatch(/\d/);
    expect(text).not.toMatch(/\b(wrong|mistake|error|bad|fail\w*|incorrect|no|zero|nought)\b/i);
    expect(text).not.toMatch(/\b(two|three|four|five|six|seven|eight|nine|ten)\b/i);
  });

  it.each(Object.entries({ ...linePlotHints, ...lineGraphHints }))(
    '%s is done beside a grown-up only in the last step',
    (_, [place, idea, besideGrownUp]) => {
      expect(`${place} ${idea}`).not.toMatch(/grown-up/);
      expect(besideGrownUp).toMatch(/grown-up/);
      expect(place).toMatch(/^(Look|Count)/);
    },
  );
});
