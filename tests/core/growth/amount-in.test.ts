import { describe, expect, it } from 'vitest';
import {
  amountIn,
  comparablePoints,
  decimalText,
  furthestReading,
  perDayText,
  toldUnits,
  trendOf,
  unitReadIn,
} from '#core/growth';
import { point, pointsOn, sunflower } from './log-points';
import { valueOf } from './near';

const inch = 25_400_000;
const cm = 10_000_000;

describe('an amount worked out from readings', () => {
  it('is written as the coarser reading was, where it lies on that mark', () => {
    expect(amountIn(3 * inch, ['1 in', '1/4 in'], 'in').text).toBe('3 in');
    expect(amountIn(2.25 * inch, ['1 in', '1/4 in'], 'in').text).toBe('2 1/4 in');
  });

  it('is about, when it lies on none of the marks', () => {
    // 4.6 in less 4 1/4 in is 0.35 in, between tenths and between quarters.
    expect(amountIn(0.35 * inch, ['0.1 in', '1/4 in'], 'in')).toEqual({
      ...{ text: '0.4 in', isAbout: true },
    });
  });

  it('claims no more in the other system than the coarsest reading deserves', () => {
    expect(amountIn(5 * inch, ['1/4 in', '1/4 in'], 'cm')).toEqual({
      ...{ text: '12.7 cm', isAbout: true },
    });
    // To whole inches only whole centimetres are deserved: 12.7 cm rounds to 13.
    expect(amountIn(5 * inch, ['1 in', '1/4 in'], 'cm').text).toBe('13 cm');
  });

  it('is about when the readings were in both systems', () => {
    expect(amountIn(2 * cm, ['1 cm', '1/2 in'], 'cm')).toEqual({ text: '2 cm', isAbout: true });
  });

  it('keeps its sign, and counts have no unit', () => {
    expect(amountIn(-2 * cm, ['1 cm'], 'cm').text).toBe('−2 cm');
    expect(amountIn(7, ['1', '1'], 'count')).toEqual({ text: '7', isAbout: false });
  });

  it('needs to know what the readings were read to', () => {
    expect(() => amountIn(1, [], 'cm')).toThrow();
  });
});

describe('a share per day in figures', () => {
  it('is rounded once from the exact fraction, a half away from zero', () => {
    expect(perDayText({ exact: 3 * cm, days: 4 }, 'cm', 2)).toBe('0.75');
    expect(perDayText({ exact: cm, days: 8 }, 'cm', 2)).toBe('0.13');
    // The double nearest to 1.005 lies below it, and toFixed(2) would say 1.00.
    expect(perDayText({ exact: 10_050_000, days: 1 }, 'cm', 2)).toBe('1.01');
    expect(perDayText({ exact: -cm, days: 8 }, 'cm', 2)).toBe('−0.13');
  });

  it('never says minus nothing', () => {
    expect(perDayText({ exact: -1, days: 7 }, 'cm', 2)).toBe('0.00');
    expect(decimalText(-0.0001, 2)).toBe('0.00');
  });

  it('goes by the exact inch', () => {
    // 1 in = 2.54 cm exactly (NIST SP 811, App. B.8), so a quarter of an inch is 0.635 cm.
    expect(perDayText({ exact: inch, days: 4 }, 'cm', 3)).toBe('0.635');
    expect(perDayText({ exact: 300 * inch, days: 1 }, 'in', 0)).toBe('300');
  });

  it('shows the slopes that were published for the sunflowers of 1919', () => {
    // tests/reference/growth.json, from Reed & Holland 1919: 3.45220279720280 and 3.69341269841270.
    const trend = valueOf(trendOf(sunflower.points));
    expect(decimalText(trend.leastSquares.growthPerDay, 4)).toBe('3.4522');
    expect(decimalText(trend.medianOfSlopes.growthPerDay, 4)).toBe('3.6934');
    expect(decimalText(trend.leastSquares.growthPerDay, 2)).toBe('3.45');
    expect(decimalText(trend.medianOfSlopes.growthPerDay, 2)).toBe('3.69');
  });

  it('refuses what is no number', () => {
    expect(() => decimalText(Number.NaN, 2)).toThrow(RangeError);
  });
});

describe('the points a page can compare', () => {
  it('are all of one kind: that of the newest', () => {
    const lengths = pointsOn([0, 1], [4, 5]);
    const count = point('2026-03-09', 3, 'count', '1');
    expect(comparablePoints([...lengths, count])).toEqual({ points: [count], leftOut: 2 });
    expect(comparablePoints(lengths)).toEqual({ points: lengths, leftOut: 0 });
    expect(comparablePoints([])).toEqual({ points: [], leftOut: 0 });
  });

  it('may be in inches and centimetres together', () => {
    const mixed = [...pointsOn([0], [4]), point('2026-03-09', 3, 'in', '1/2 in')];
    expect(comparablePoints(mixed).leftOut).toBe(0);
  });
});

describe('the reading furthest from the line', () => {
  it('is the odd one', () => {
    const points = pointsOn([0, 1, 2, 3, 4, 5, 7, 8], [1, 2, 3, 14, 5, 6, 8, 9]);
    const found = furthestReading(valueOf(trendOf(points)))!;
    expect(found.point.day).toBe('2026-03-05');
    expect(found.residual).toBeCloseTo(10, 9);
  });

  it('is none when all lie on the line, though thirds of a centimetre are no doubles', () => {
    const straight = pointsOn([0, 3, 6, 9, 12], [1, 2, 3, 4, 5]);
    expect(furthestReading(valueOf(trendOf(straight)))).toBeNull();
  });
});

describe('the units a page is told in', () => {
  it('begin with the one the log is read in, even where another was planned', () => {
    expect(unitReadIn('cm', [])).toBe('cm');
    expect(unitReadIn('cm', pointsOn([0, 1], [4, 5], 'mm', '1 mm'))).toBe('cm');
    expect(unitReadIn('cm', pointsOn([0, 1], [4, 5], 'in', '1 in'))).toBe('in');
    expect(unitReadIn('cm', pointsOn([0], [4], 'count', '1'))).toBe('count');
  });

  it('are the one that was read, then the other system', () => {
    expect(toldUnits('mm')).toEqual(['mm', 'in']);
    expect(toldUnits('ft')).toEqual(['ft', 'cm']);
  });
});
