import { describe, expect, test } from 'vitest';
import { drawRight, type Drawing } from '#core/graphs';
import { halfDrawn } from '../../../src/lib/ui/lesson-paper/half-drawn';
import { paperLesson, taughtNames } from './paper-lessons';

const marksOf = ({ symbols, bars, crosses, points }: Drawing): readonly unknown[] => [
  ...[...symbols, ...bars, ...crosses, ...points],
];

describe('a graph half drawn', () => {
  test('has some of the right marks, where they are right, and not all of them', () => {
    for (const name of taughtNames) {
      const { facts } = paperLesson(name);
      const [half, whole] = [halfDrawn(facts), drawRight(facts.right)];
      expect(marksOf(half).length).toBeGreaterThan(0);
      expect(marksOf(half).length).toBeLessThan(marksOf(whole).length);
      for (const mark of marksOf(half)) expect(marksOf(whole)).toContainEqual(mark);
      expect(half.title).toBe('');
    }
  });

  test('has the bars of the first four of seven days, 11 to 14 March: 1, 2, 3 and 4 cm', () => {
    const { bars, side } = halfDrawn(paperLesson('week').facts);
    expect(bars.map(({ to }) => to)).toEqual([1, 2, 3, 4]);
    expect(side.ticks.length).toBeGreaterThan(9);
  });

  test('joins only points that stand, by their new places', () => {
    const { points, joins } = halfDrawn(paperLesson('two lines').facts);
    expect(joins.length).toBeGreaterThan(2);
    for (const { from, to } of joins) {
      expect(points[from]!.series).toBe(points[to]!.series);
      expect(points[from]!.x).toBeLessThan(points[to]!.x);
    }
  });
});
