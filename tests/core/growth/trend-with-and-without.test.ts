import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { trendOf, trendWithAndWithout } from '#core/growth';
import { read, took } from '../journal/entries';
import { seriesAt } from '../series/bean-log';
import { idOf, tookIn } from '../series/care-log';
import { valueOf } from './near';

const first = civilDay('2026-03-02');
/** 1 cm a day, but on the fourth day inches were read as centimetres: 10 cm became 4. */
const days = [0, 1, 2, 3, 4, 7, 8, 9];
const values = [7, 8, 9, 4, 11, 14, 15, 16];
const series = seriesAt(
  addDays(first, 9),
  ...days.map((day, index) => took(10 + index, addDays(first, day), values[index]!)),
);
const doubted = idOf(13);

describe('the trend with and without a doubted reading', () => {
  const twice = valueOf(trendWithAndWithout(series, new Set([doubted])));

  it('tells both, and the difference in growth per day', () => {
    expect([twice.withAll.points.length, twice.without.points.length]).toEqual([8, 7]);
    expect(twice.without.medianOfSlopes.growthPerDay).toBe(1);
    expect(twice.without.leastSquares.growthPerDay).toBeCloseTo(1, 12);
    expect(twice.difference.medianOfSlopes).toBe(
      twice.without.medianOfSlopes.growthPerDay - twice.withAll.medianOfSlopes.growthPerDay,
    );
    // By hand: sum of xy is 444 - 8 * 4.25 * 10.5 = 87, sum of xx is 224 - 8 * 4.25 squared = 79.5.
    expect(twice.withAll.leastSquares.growthPerDay).toBeCloseTo(87 / 79.5, 12);
    expect(twice.difference.leastSquares).toBeCloseTo(1 - 87 / 79.5, 12);
  });

  it('moves the least-squares line more than the median of slopes', () => {
    expect(Math.abs(twice.difference.leastSquares)).toBeGreaterThan(
      Math.abs(twice.difference.medianOfSlopes),
    );
  });

  it('leaves the log as it is, and with nothing doubted both are one', () => {
    const both = valueOf(trendWithAndWithout(series, new Set()));
    expect(both.without).toEqual(both.withAll);
    expect(both.difference).toEqual({ medianOfSlopes: 0, leastSquares: 0 });
    expect(both.withAll).toEqual(valueOf(trendOf(series.points)));
    expect(series.points).toHaveLength(8);
  });

  it('says which of the two cannot be told', () => {
    const allButFour = new Set(series.points.slice(4).map(({ reading }) => reading));
    expect(trendWithAndWithout(series, allButFour)).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 4, need: 5, which: 'without' },
    });
    const few = seriesAt('2026-03-03', took(10, '2026-03-02', 3));
    expect(trendWithAndWithout(few, new Set())).toMatchObject({
      error: { kind: 'too-few', which: 'with-all' },
    });
  });

  it('tells both in one unit, also when the reading left out was the only one in inches', () => {
    const mixed = seriesAt(
      addDays(first, 10),
      ...days.map((day, index) => took(10 + index, addDays(first, day), values[index]!)),
      tookIn(30, addDays(first, 10), read(7, 'in', '1 in')),
    );
    const both = valueOf(trendWithAndWithout(mixed, new Set([idOf(30)])));
    expect([both.withAll.unit, both.without.unit]).toEqual(['in', 'in']);
    expect(valueOf(trendWithAndWithout(mixed, new Set(), { unit: 'cm' })).without.unit).toBe('cm');
  });
});
