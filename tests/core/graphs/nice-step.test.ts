import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { niceRange, niceStep, valueAxis } from '#core/graphs';
import graphs from '../../reference/graphs.json';

// Ticks, steps and nice ranges of npm d3-array 3.2.5, kept in tests/reference/graphs.json.
const cases = graphs.ticks.filter(({ min, max }) => min !== max);

describe('a nice step', () => {
  it.each(cases)('for $min to $max in $count is the one d3-array chooses', (each) => {
    expect(niceStep(each.max - each.min, each.count).size).toBe(each.tickStep);
  });

  it('is no step for a span that is none', () => {
    expect(() => niceStep(0, 5)).toThrow(RangeError);
    expect(() => niceStep(Number.NaN, 5)).toThrow(RangeError);
    expect(() => niceStep(10, 0)).toThrow(RangeError);
  });
});

describe('a nice range', () => {
  it.each(cases)('for $min to $max in $count is the one d3-array widens it to', (each) => {
    const { from, to } = niceRange(each.min, each.max, each.count);
    expect([from, to]).toEqual(each.nice_d3array);
  });

  it.each(cases)('for $min to $max in $count has the ticks of d3-array inside the data', (each) => {
    // d3's own ticks stop inside the data; ours go on to the nice ends, which is checked above.
    const { ticks } = niceRange(each.min, each.max, each.count);
    expect(ticks.filter((tick) => tick >= each.min && tick <= each.max)).toEqual(each.ticks);
  });

  it('of a single value is that value, with a single tick (as d3-array)', () => {
    expect(niceRange(1, 1, 5)).toEqual({ from: 1, to: 1, ticks: [1] });
    expect(niceRange(0, 0, 5)).toEqual({ from: 0, to: 0, ticks: [0] });
  });

  it('always covers the data, in even steps', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 1e6, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (largest, count) => {
          const { from, to, ticks } = niceRange(0, largest, count);
          expect(from).toBe(0);
          // Two roundings of a double may leave a value on a step a hair above it.
          expect(to).toBeGreaterThanOrEqual(largest * (1 - 4 * Number.EPSILON));
          const step = ticks[1] as number;
          ticks.forEach((tick, index) => expect(tick).toBeCloseTo(index * step, 6));
        },
      ),
      { seed: 20260302, numRuns: 300 },
    );
  });
});

describe('the side of a graph', () => {
  const labels = (...how: Parameters<typeof valueAxis>) =>
    valueAxis(...how).ticks.map((tick) => tick.label[0]);

  it('starts at 0 and reaches the largest value', () => {
    expect(labels(254.5, 'cm', '0.1 mm', 5)).toEqual([
      ...['0', '50', '100', '150', '200', '250', '300'],
    ]);
    expect(labels(0.38, 'cm', '0.1 mm', 4)).toEqual(['0', '0.1', '0.2', '0.3', '0.4']);
  });

  it('goes by halves, quarters and eighths for inches read in fractions, never by tenths', () => {
    expect(labels(3, 'in', '1/2 in', 6)).toEqual([
      ...['0', '1/2', '1', '1 1/2', '2', '2 1/2', '3'],
    ]);
    expect(labels(1, 'in', '1/4 in', 5)).toEqual(['0', '1/4', '1/2', '3/4', '1']);
    expect(labels(0.5, 'in', '1/8 in', 5)).toEqual(['0', '1/8', '1/4', '3/8', '1/2']);
  });

  it('goes by tenths for inches of rain', () => {
    expect(labels(1.13, 'in', '0.01 in', 5)).toEqual(['0', '0.2', '0.4', '0.6', '0.8', '1', '1.2']);
  });

  it('goes by inches where it is told in feet', () => {
    expect(labels(1.25, 'ft', '1 in', 5)).toEqual([
      ...['0', '0 ft 3 in', '0 ft 6 in', '0 ft 9 in', '1', '1 ft 3 in'],
    ]);
  });

  it('never goes by less than the mark that was read to', () => {
    expect(labels(3, 'cm', '1 cm', 6)).toEqual(['0', '1', '2', '3']);
    expect(labels(1.5, 'cm', '0.5 cm', 6)).toEqual(['0', '0.5', '1', '1.5']);
    expect(labels(1, 'in', '1/2 in', 6)).toEqual(['0', '1/2', '1']);
    expect(labels(2, 'ft', '1 ft', 6)).toEqual(['0', '1', '2']);
    expect(labels(7, 'mm', '1 cm', 6)).toEqual(['0', '10']);
  });

  it('never counts by less than one thing', () => {
    expect(labels(2, 'count', '1', 6)).toEqual(['0', '1', '2']);
  });

  it('is 0 to 1 for a log of nothing but noughts', () => {
    expect(valueAxis(0, 'cm', '1 cm', 5)).toMatchObject({ from: 0, to: 1 });
  });
});
