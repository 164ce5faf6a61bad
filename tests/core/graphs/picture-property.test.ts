import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawRight, lookAtPictureGraph, type Drawing } from '#core/graphs';
import type { Planter } from './planted-bar-mistakes';
import { keysFor, plantPictureMistake } from './planted-picture-mistakes';
import { randomCounts, randomRight } from './random-tables';
import { idsOf } from './right-drawings';

const cases = fc
  .record({
    right: randomRight('picture-graph', randomCounts),
    upright: fc.boolean(),
    pickKey: fc.nat(3),
  })
  .map(({ right, upright, pickKey }) => {
    const keys = keysFor(right);
    const keyValue = keys[pickKey % keys.length]!;
    return { right, drawing: drawRight(right, { upright, keyValue }) };
  });
const fixed = { seed: 20261125, numRuns: 150 };

// Many runs: a busy machine takes longer than the usual five seconds.
describe('a random table drawn with pictures', { timeout: 60_000 }, () => {
  it('has nothing to look at again when it is drawn right', () => {
    fc.assert(
      fc.property(cases, ({ right, drawing }) => {
        const look = lookAtPictureGraph(right, drawing);
        expect(look.mistakes).toEqual([]);
        expect(look.right).toContain('every-value');
      }),
      fixed,
    );
  });

  it.each(Object.entries<Planter>(plantPictureMistake))(
    '%s planted alone is found, and nothing else is',
    (id, plant) => {
      fc.assert(
        fc.property(cases, fc.nat(59), ({ right, drawing }, pick) => {
          const planted = plant(right, drawing, pick);
          fc.pre(planted !== null);
          expect(idsOf(lookAtPictureGraph(right, planted!))).toEqual([id]);
        }),
        { ...fixed, maxSkipsPerRun: 50 },
      );
    },
  );

  it('is called right if and only if every row has its pictures', () => {
    const halves = fc.array(fc.integer({ min: 0, max: 26 }), { minLength: 6, maxLength: 6 });
    const nudges = fc.array(fc.constantFrom(0, 0, 0, -1, 1, 2), { minLength: 6, maxLength: 6 });
    const plan = fc.record({ halves, nudges, isNudge: fc.boolean() });
    fc.assert(
      fc.property(cases, plan, ({ right, drawing }, { halves, nudges, isNudge }) => {
        const halvesIn = (at: number): number =>
          drawing.symbols
            .filter(({ row }) => row === at)
            .reduce((sum, { part }) => sum + (part === 'half' ? 1 : 2), 0);
        const wanted = drawing.places.map(({ at }) => halvesIn(at));
        const counts = wanted.map((count, row) =>
          Math.max(0, isNudge ? count + nudges[row]! : halves[row]!),
        );
        const symbols = drawing.places.flatMap(({ at: row }, index) =>
          Array.from({ length: Math.ceil(counts[index]! / 2) }, (_, order) => ({
            ...{ row, at: order + 0.5, size: 1, symbol: 'circle' as const },
            part: order * 2 + 1 === counts[index]! ? ('half' as const) : ('whole' as const),
          })),
        );
        const look = lookAtPictureGraph(right, { ...drawing, symbols });
        const isRight = counts.every((count, row) => count === wanted[row]);
        expect(look.mistakes.length === 0).toBe(isRight);
        expect(look.right.includes('every-value')).toBe(isRight);
      }),
      { ...fixed, numRuns: 400 },
    );
  });

  it('is looked at whatever is on the paper, and points only at what is there', () => {
    const at = fc.double({ min: -2, max: 20, noNaN: true });
    const wild = fc.record({
      key: fc.option(
        fc.record({
          value: fc.option(fc.constantFrom(0, 1, 2, 5, -1)),
          symbol: fc.option(fc.constantFrom('sun', 'leaf')),
          text: fc.constantFrom('', '3 days'),
        }),
      ),
      places: fc.array(fc.record({ at, text: fc.constantFrom('sun', 'rain', 'cloud', '', 'dog') })),
      symbols: fc.array(
        fc.record({
          ...{ row: at, at, size: at, symbol: fc.constantFrom('sun', 'leaf') },
          part: fc.constantFrom('whole', 'half'),
        }),
        { maxLength: 40 },
      ),
    });
    fc.assert(
      fc.property(cases, wild, ({ right, drawing }, { key, places, symbols }) => {
        const drawn = { ...drawing, key, places, symbols } as Drawing;
        for (const { lookAt } of lookAtPictureGraph(right, drawn).mistakes) {
          if (!('indexes' in lookAt)) continue;
          const size = lookAt.part === 'places' ? places.length : symbols.length;
          expect(lookAt.indexes.every((index) => index >= 0 && index < size)).toBe(true);
        }
      }),
      fixed,
    );
  });
});
