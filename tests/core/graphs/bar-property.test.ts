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
const fixed = { seed: 20261125, numRuns: 150 };

// Many runs: a busy machine takes longer than the usual five seconds.
describe('a random table drawn as bars', { timeout: 60_000 }, () => {
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

  it('is called right if and only if every bar ends within a quarter of its value', () => {
    const quarters = fc.array(fc.integer({ min: 0, max: 4 * 14 }), {
      minLength: 10,
      maxLength: 10,
    });
    const nudges = fc.array(fc.integer({ min: -2, max: 2 }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(cases, fc.oneof(quarters, nudges), ({ right, times, upright }, parts) => {
        const drawing = drawnWithStep(right, times, upright);
        const isNudge = parts.some((part) => part < 0) || Math.max(...parts) < 3;
        const tops = drawing.bars.map(({ to }, index) =>
          Math.max(0, isNudge ? to + parts[index]! / 4 : parts[index]! / 4),
        );
        // A step is one square, so a quarter of an interval is a quarter of a square.
        const isRight = drawing.bars.every(({ to }, index) => Math.abs(tops[index]! - to) <= 0.25);
        const bars = drawing.bars.map((bar, index) => ({ ...bar, to: tops[index]! }));
        const look = lookAtBarGraph(right, { ...drawing, bars });
        expect(look.mistakes.length === 0).toBe(isRight);
        expect(look.right.includes('every-value')).toBe(isRight);
      }),
      { ...fixed, numRuns: 400 },
    );
  });

  it('is looked at whatever is on the paper, and points only at what is there', () => {
    const at = fc.double({ min: -2, max: 20, noNaN: true });
    const wild = fc.record({
      ticks: fc.array(fc.record({ at, text: fc.constantFrom('0', '1', '2', '5', '10', '', 'x') })),
      places: fc.array(fc.record({ at, text: fc.constantFrom('sun', 'rain', 'Mon 2', '', 'dog') })),
      bars: fc.array(fc.record({ at, width: at, from: at, to: at }), { maxLength: 12 }),
      title: fc.constantFrom('', 'days', 'x'),
    });
    fc.assert(
      fc.property(cases, wild, ({ right, upright }, { ticks, places, bars, title }) => {
        const side = { label: '', ticks };
        const drawing = { ...drawnWithStep(right, 1, upright), side, places, bars, title };
        const look = lookAtBarGraph(right, drawing);
        const sizes = { bars: bars.length, places: places.length, 'side-ticks': ticks.length };
        for (const { lookAt } of look.mistakes) {
          if (!('indexes' in lookAt)) continue;
          const size = sizes[lookAt.part as keyof typeof sizes];
          expect(lookAt.indexes.every((index) => index >= 0 && index < size)).toBe(true);
        }
      }),
      fixed,
    );
  });
});
