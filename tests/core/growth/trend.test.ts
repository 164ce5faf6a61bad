import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { trendOf, type GrowthPoint, type Trend } from '#core/growth';
import { point, pointsOn, realLogs, smallLog, smallLogs, sunflower } from './log-points';
import { near, valueOf } from './near';
import { someLog } from './some-log';

const longEnough = realLogs.filter(({ xs }) => xs.length >= 5 && xs.at(-1)! - xs[0]! >= 7);

describe('the trend of a log', () => {
  it('is shown for most of the real logs', () => {
    expect(longEnough.map(({ label }) => label)).toHaveLength(13);
  });

  it.each(longEnough)('has both lines and the middle rate of $label', (log) => {
    const { expected, unit, xs, ys } = log;
    const trend = valueOf(trendOf(log.points));
    const scale = Math.max(...ys.map(Math.abs));
    // The reference counts days from another day: its line is looked at on the first day.
    const onFirstDay = (intercept: string, slope: string) =>
      Number(intercept) + Number(slope) * xs[0]!;
    near(trend.leastSquares.growthPerDay, expected.ls_slope, 1e-12);
    near(
      trend.leastSquares.onFirstDay,
      onFirstDay(expected.ls_intercept, expected.ls_slope),
      1e-12,
      scale,
    );
    near(trend.medianOfSlopes.growthPerDay, expected.theil_sen_slope, 1e-12);
    near(
      trend.medianOfSlopes.onFirstDay,
      onFirstDay(expected.theil_sen_intercept_median_residual, expected.theil_sen_slope),
      1e-12,
      scale,
    );
    near(valueOf(trend.rSquared), expected.r2, 1e-11);
    near(trend.medianGrowthPerDay, expected.median_step_rate, 1e-11);
    expect([trend.unit, trend.points.length]).toEqual([unit, expected.n]);
    expect([trend.smallest, trend.largest]).toEqual([Math.min(...ys), Math.max(...ys)]);
    trend.values.forEach((value, index) => near(value, ys[index], 1e-15));
    expect(trend.daysSinceFirst).toEqual(xs.map((x) => x - xs[0]!));
  });

  it('states its gaps, marks and residuals', () => {
    const points = [
      ...pointsOn([0, 1, 4, 6], [2, 3, 6, 8]),
      point('2026-03-10', 10.5, 'cm', '1 mm'),
    ];
    const trend = valueOf(trendOf(points));
    expect(trend.gaps).toEqual([1, 3, 2, 2]);
    expect([trend.finestMark, trend.coarsestMark]).toEqual(['1 mm', '1 cm']);
    expect([trend.firstDay, trend.spanDays]).toEqual(['2026-03-02', 8]);
    expect(trend.medianOfSlopes.growthPerDay).toBe(1);
    expect(trend.medianOfSlopes.residuals).toEqual([0, 0, 0, 0, 0.5]);
  });

  it('measures time in days and not in readings', () => {
    // A steady centimetre a day, read after gaps of 1, 1, 5, 1 and 6 days.
    const days = [0, 1, 2, 7, 8, 14];
    const trend = valueOf(trendOf(pointsOn(days, days)));
    expect(trend.medianOfSlopes).toMatchObject({ growthPerDay: 1, residuals: [0, 0, 0, 0, 0, 0] });
    // Least squares works from the mean day, 32/6, which is no double.
    near(trend.leastSquares.growthPerDay, 1, 1e-15);
    trend.leastSquares.residuals.forEach((residual) => near(residual, 0, 1e-15));
    expect(trend.medianGrowthPerDay).toBe(1);
  });

  it('takes the middle reading of a day', () => {
    const once = pointsOn([0, 2, 4, 6, 8], [1, 2, 3, 4, 5]);
    const thrice = [...once, ...pointsOn([4, 4], [9, 2])];
    expect(trendOf(thrice)).toEqual(trendOf(once));
  });

  it('allows mixed units, on one exact scale, and says so', () => {
    // The mixed log of logs.json carried on for two readings: 0.635 cm a day.
    const points = [
      ...smallLog('mixed units on one exact line').points,
      point('2025-04-09', 4, 'in', '1/4 in'),
      point('2025-04-11', 11.43, 'cm', '0.1 mm'),
    ];
    const trend = valueOf(trendOf(points));
    expect([trend.unit, trend.unitsMixed]).toEqual(['cm', true]);
    near(trend.leastSquares.growthPerDay, 0.635, 1e-15);
    near(trend.medianOfSlopes.growthPerDay, 0.635, 1e-15);
    expect(valueOf(trendOf(points, { unit: 'in' })).medianOfSlopes.growthPerDay).toBe(0.25);
    expect(valueOf(trendOf(sunflower.points)).unitsMixed).toBe(false);
  });

  it('crosses a clock change and a leap day without losing a day', () => {
    // New York and Chicago changed clocks on 10 March 2024 (tz database).
    const days = [0, 5, 10, 15, 20];
    const points = pointsOn(
      days,
      days.map((day) => day / 2),
      'cm',
      '0.5 cm',
      civilDay('2024-02-25'),
    );
    expect(points.map(({ day }) => day)).toContain('2024-03-11');
    expect(valueOf(trendOf(points)).leastSquares.growthPerDay).toBe(0.5);
  });

  it('falls for a shadow that shrinks', () => {
    const trend = valueOf(trendOf(pointsOn([0, 7, 14, 21, 28], [30, 28, 26, 24, 22])));
    near(trend.leastSquares.growthPerDay, -2 / 7, 1e-15);
    near(trend.medianOfSlopes.growthPerDay, -2 / 7, 1e-15);
  });

  it('of a level log is level, and has no r squared', () => {
    const trend = valueOf(trendOf(pointsOn([0, 2, 4, 6, 8], [5, 5, 5, 5, 5])));
    expect(trend.leastSquares).toEqual({
      growthPerDay: 0,
      onFirstDay: 5,
      residuals: [0, 0, 0, 0, 0],
    });
    expect(trend.medianOfSlopes.growthPerDay).toBe(0);
    expect(trend.rSquared).toEqual({ ok: false, error: { kind: 'no-spread' } });
  });
});

describe('one wild reading', () => {
  // Half a centimetre a day for two weeks; the readings of logs.json are too short for a trend.
  const days = [0, 2, 4, 6, 8, 10, 12];
  const heights = [0.5, 1.5, 2.5, 3.5, 4.5, 5.5, 6.5];
  const withWild = (at: number) =>
    valueOf(
      trendOf(
        pointsOn(
          days,
          heights.map((cm, index) => (index === at ? cm * 10 : cm)),
          'cm',
          '1 mm',
        ),
      ),
    );

  it('off the middle turns the least-squares line and leaves the median of slopes', () => {
    // theil_sen.json, "seedling with one misread day": 0.5 and 1.22321428571429.
    const trend = withWild(4);
    expect(trend.medianOfSlopes).toMatchObject({ growthPerDay: 0.5, onFirstDay: 0.5 });
    near(trend.leastSquares.growthPerDay, 1.22321428571429, 1e-12);
    expect(trend.medianOfSlopes.residuals).toEqual([0, 0, 0, 0, 40.5, 0, 0]);
  });

  it('on the middle day turns neither, and only lifts the least-squares line', () => {
    const trend = withWild(3);
    near(trend.leastSquares.growthPerDay, 0.5, 1e-12);
    // 31.5 cm too much, shared by 7 readings.
    near(trend.leastSquares.onFirstDay, 0.5 + 31.5 / 7, 1e-12);
    expect(trend.medianOfSlopes).toMatchObject({ growthPerDay: 0.5, onFirstDay: 0.5 });
  });
});

describe('a log too short for a trend', () => {
  it.each(smallLogs.filter(({ xs }) => new Set(xs).size < 5))(
    'is "$name", with too few days measured',
    ({ points, xs }) => {
      expect(trendOf(points)).toEqual({
        ok: false,
        error: { kind: 'too-few', have: new Set(xs).size, need: 5 },
      });
    },
  );

  it.each(['typo 10x on the middle day', 'typo 10x on the fourth day'])(
    'is "%s", with five readings in four days',
    (name) => {
      expect(trendOf(smallLog(name).points)).toEqual({
        ok: false,
        error: { kind: 'too-short', days: 4, need: 7 },
      });
    },
  );

  it('lacks a day at six days, and is long enough at seven', () => {
    expect(trendOf(pointsOn([0, 1, 2, 3, 6], [1, 2, 3, 4, 5])).ok).toBe(false);
    expect(trendOf(pointsOn([0, 1, 2, 3, 7], [1, 2, 3, 4, 5])).ok).toBe(true);
  });

  it('counts days, so that five readings of one morning are one', () => {
    expect(trendOf(pointsOn([0, 0, 0, 0, 0], [1, 2, 3, 4, 5]))).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 1, need: 5 },
    });
  });

  it('is not told in counts when it holds lengths', () => {
    expect(() => trendOf(pointsOn([0, 2, 4, 6, 8], [1, 2, 3, 4, 5]), { unit: 'count' })).toThrow(
      'cannot be told in count',
    );
  });
});

describe('laws of the trend', () => {
  const run = { seed: 19190419, numRuns: 150 };
  const linesOf = ({ leastSquares, medianOfSlopes, rSquared, gaps, values }: Trend) => ({
    leastSquares,
    medianOfSlopes,
    rSquared,
    gaps,
    values,
  });
  const trending = someLog.filter((points) => trendOf(points).ok);
  const withEach = (points: readonly GrowthPoint[], change: (one: GrowthPoint) => GrowthPoint) =>
    valueOf(trendOf(points.map(change)));

  it('is the same trend however many days later it all happened', () => {
    fc.assert(
      fc.property(trending, fc.integer({ min: -9999, max: 9999 }), (points, shift) => {
        const later = withEach(points, (one) => ({ ...one, day: addDays(one.day, shift) }));
        expect(linesOf(later)).toEqual(linesOf(valueOf(trendOf(points))));
      }),
      run,
    );
  });

  it('is the same trend in whatever order the readings come', () => {
    fc.assert(
      fc.property(trending, (points) => {
        expect(trendOf([...points].reverse())).toEqual(trendOf(points));
      }),
      run,
    );
  });

  it('doubles with the readings', () => {
    fc.assert(
      fc.property(trending, (points) => {
        const plain = valueOf(trendOf(points));
        const doubled = withEach(points, (one) => ({ ...one, exact: one.exact * 2 }));
        for (const line of ['leastSquares', 'medianOfSlopes'] as const) {
          expect(doubled[line].growthPerDay).toBe(plain[line].growthPerDay * 2);
          expect(doubled[line].onFirstDay).toBe(plain[line].onFirstDay * 2);
        }
        expect(doubled.medianGrowthPerDay).toBe(plain.medianGrowthPerDay * 2);
      }),
      run,
    );
  });

  it('leaves residuals that cancel out around the least-squares line', () => {
    fc.assert(
      fc.property(trending, (points) => {
        const { leastSquares } = valueOf(trendOf(points));
        near(
          leastSquares.residuals.reduce((sum, each) => sum + each, 0),
          0,
          1e-9,
          1000,
        );
      }),
      run,
    );
  });
});

it('A thousand readings have their trend in well under 200 ms', () => {
  const days = Array.from({ length: 1000 }, (_, day) => day);
  const points = pointsOn(
    days,
    days.map((day) => Math.round(40 * Math.sin(day / 90) + day / 3 + 50)),
  );
  trendOf(points);
  const before = performance.now();
  const trend = trendOf(points);
  expect(performance.now() - before).toBeLessThan(200);
  expect(trend.ok).toBe(true);
});
