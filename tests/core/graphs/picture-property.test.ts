import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawRight, lookAtPictureGraph } from '#core/graphs';
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
const fixed = { seed: 20261125, numRuns: 400 };

describe('a random table drawn with pictures', () => {
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
});
