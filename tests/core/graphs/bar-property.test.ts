import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookAtBarGraph } from '#core/graphs';
import { drawnWithStep, plantBarMistake, type Planter } from './planted-bar-mistakes';
import { randomCounts, randomRight, randomValues } from './random-tables';
import { idsOf } from './right-drawings';

const cases = fc.record({
  right: randomRight('bar-graph', fc.oneof(randomCounts, randomValues)),
  times: fc.constantFrom(1, 2, 5),
  upright: fc.boolean(),
});
const fixed = { seed: 20261125, numRuns: 400 };

describe('a random table drawn as bars', () => {
  it('has nothing to look at again when it is drawn right', () => {
    fc.assert(
      fc.property(cases, ({ right, times, upright }) => {
        const look = lookAtBarGraph(right, drawnWithStep(right, times, upright));
        expect(look.mistakes).toEqual([]);
        expect(look.right).toContain('every-value');
      }),
      fixed,
    );
  });

  it.each(Object.entries<Planter>(plantBarMistake))(
    '%s planted alone is found, and nothing else is',
    (id, plant) => {
      fc.assert(
        fc.property(cases, fc.nat(59), ({ right, times, upright }, pick) => {
          const planted = plant(right, drawnWithStep(right, times, upright), pick);
          fc.pre(planted !== null);
          expect(idsOf(lookAtBarGraph(right, planted!))).toEqual([id]);
        }),
        { ...fixed, maxSkipsPerRun: 50 },
      );
    },
  );
});
