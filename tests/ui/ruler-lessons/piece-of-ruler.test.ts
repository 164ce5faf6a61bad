import { describe, expect, test } from 'vitest';
import { seededRandom } from '#core/base';
import { betweenMarksTask, offZeroTask, offZeroTaskOf, type RulerTask } from '#core/lessons';
import {
  closeUpOf,
  pieceOfRuler,
  pieceOfTask,
} from '../../../src/lib/ui/ruler-lessons/piece-of-ruler';

const inch = 25_400_000;
/** The national item of NAEP, grade 4: a thing from 8 to 10 1/2 inches (reported in its scoring guide). */
const national = (() => {
  const made = offZeroTaskOf({ unit: 'in', mark: '1/2 in', begins: 8 * inch, ends: 10.5 * inch });
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
})();

describe('a piece of a ruler', () => {
  test('puts every number where it is: one whole unit is one length of the drawing', () => {
    const piece = pieceOfRuler(national, { fromExact: 7 * inch, toExact: 12 * inch }, 50);
    const numbered = piece.ticks.filter(({ label }) => label !== null);
    expect(numbered.map(({ label, at }) => [label, at])).toEqual([
      ['7', 0],
      ['8', 50],
      ['9', 100],
      ['10', 150],
      ['11', 200],
      ['12', 250],
    ]);
    expect(piece.length).toBe(250);
    expect(piece.strip).toEqual({ from: 50, to: 175 });
    expect(piece.leftEnd).toBe('broken');
  });

  test('tells of each space whether the strip covers it, a part of it, or nothing', () => {
    const { spaces } = pieceOfRuler(national, { fromExact: 7 * inch, toExact: 12 * inch }, 50);
    expect(spaces.map(({ fromNumber, covered }) => [fromNumber, covered])).toEqual([
      [7, 'none'],
      [8, 'whole'],
      [9, 'whole'],
      [10, 'part'],
      [11, 'none'],
    ]);
  });

  test('of a whole ruler begins at its zero edge and goes one space past the strip', () => {
    const ends = pieceOfTask(national);
    expect(ends).toEqual({ fromExact: 0, toExact: 12 * inch });
    expect(pieceOfRuler(national, ends, 1).leftEnd).toBe('zero-edge');
  });
});

const random = seededRandom(2026);
const stages = ['grade-1', 'grade-2', 'grade-3'] as const;
const families = ['inches', 'centimetres'] as const;
const manyOf = (make: typeof offZeroTask): readonly RulerTask[] =>
  Array.from({ length: 600 }, (_, index) => make(stages[index % 3]!, families[index % 2]!, random));

describe('every task that is made', () => {
  test('lies wholly on its piece', () => {
    for (const task of manyOf(offZeroTask)) {
      const piece = pieceOfRuler(task, pieceOfTask(task), 10);
      expect(piece.strip.from).toBeGreaterThanOrEqual(0);
      expect(piece.strip.to).toBeLessThanOrEqual(piece.length);
      expect(piece.spaces.at(-1)!.at + 10).toBeCloseTo(piece.length, 6);
    }
  });

  test('has its end in the close-up, with some of the strip before it, in any of the spaces', () => {
    const places = new Set<number>();
    for (const task of manyOf(betweenMarksTask)) {
      const ends = closeUpOf(task, random());
      const piece = pieceOfRuler(task, ends, 1);
      expect(piece.spaces).toHaveLength(4);
      expect(piece.strip.to).toBeGreaterThan(0);
      expect(piece.strip.to).toBeLessThan(4);
      expect(piece.leftEnd).toBe(ends.fromExact === 0 ? 'zero-edge' : 'goes-on');
      expect(ends.toExact).toBeLessThanOrEqual(task.rulerToExact);
      if (ends.fromExact > 0) expect(piece.strip.to).toBeGreaterThan(1);
      places.add(Math.floor(piece.strip.to));
    }
    expect([...places].sort()).toEqual([1, 2, 3]);
  });
});
