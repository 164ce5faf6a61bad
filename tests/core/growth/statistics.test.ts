import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares, median, medianOfSlopes, residualsOf, rSquaredOf } from '#core/growth';
import anscombe from '../../reference/anscombe.json';
import regression from '../../reference/regression_nist.json';
import theilSen from '../../reference/theil_sen.json';
import univariate from '../../reference/univariate_nist.json';
import { realSeries, smallLog, smallLogs } from './log-points';
import { near, valueOf } from './near';

const numbers = (texts: readonly (string | number)[]): readonly number[] =>
  Object.freeze(texts.map(Number));

describe('the least-squares line', () => {
  const sets: readonly NistSet[] = regression.sets;
  const [norris, noIntercept, pontius] = sets as [NistSet, NistSet, NistSet];

  it('meets the certified values of NIST StRD Norris', () => {
    // Tolerances: the intercept is a small difference of large sums, the slope is not.
    const [xs, ys] = [numbers(norris.x), numbers(norris.y)];
    const line = valueOf(leastSquares(xs, ys));
    near(line.slope, norris.certified?.B1, 1e-9);
    near(line.intercept, norris.certified?.B0, 1e-8);
    near(valueOf(rSquaredOf(line, xs, ys)), norris.certified?.R2, 1e-12);
    const squares = residualsOf(line, xs, ys).reduce((sum, each) => sum + each * each, 0);
    near(squares, norris.certified?.ss_residual, 1e-9);
  });

  it('fits the data of NIST StRD NoInt1, with an intercept, by the line y = x + 70', () => {
    const line = valueOf(leastSquares(numbers(noIntercept.x), numbers(noIntercept.y)));
    near(line.slope, 1, 1e-12);
    near(line.intercept, 70, 1e-12);
  });

  it('fits a straight line to NIST StRD Pontius as exact rational arithmetic does', () => {
    // NIST certifies a quadratic for these data; the straight line is not certified.
    const [xs, ys] = [numbers(pontius.x), numbers(pontius.y)];
    const straight = pontius['straight_line_exact (not certified, own rational arithmetic)'];
    const line = valueOf(leastSquares(xs, ys));
    near(line.slope, straight?.slope, 1e-9);
    near(line.intercept, straight?.intercept, 1e-9);
    near(valueOf(rSquaredOf(line, xs, ys)), straight?.r2, 1e-12);
  });

  it.each(['I', 'III'] as const)('fits the data set %s of Anscombe 1973', (set) => {
    const given = anscombe[set];
    const [xs, ys] = [numbers(given.x), numbers(given.y)];
    const line = valueOf(leastSquares(xs, ys));
    near(line.slope, given.slope, 1e-12);
    near(line.intercept, given.intercept, 1e-12);
    near(valueOf(rSquaredOf(line, xs, ys)), given.r2, 1e-12);
  });

  it('keeps its slope under a wild value at the mean of x, and is only lifted', () => {
    // So no test of robustness may put its wild value in the middle (logs.json).
    const wild = smallLog('typo 10x on the middle day');
    const line = valueOf(leastSquares(wild.xs, wild.ys));
    near(line.slope, 0.6, 1e-12);
    near(line.intercept, 16.16, 1e-12);
  });
});

describe('the median-of-slopes line', () => {
  it.each(theilSen.cases.filter((each) => each.theil_sen_slope !== null))(
    'has the slope and the intercept of $name',
    (given) => {
      const line = valueOf(medianOfSlopes(numbers(given.x), numbers(given.y)));
      near(line.slope, given.theil_sen_slope, 1e-12);
      near(line.intercept, given.intercept_median_residual, 1e-12);
      const squares = valueOf(leastSquares(numbers(given.x), numbers(given.y)));
      near(squares.slope, given.ls_slope, 1e-12);
      near(squares.intercept, given.ls_intercept, 1e-12);
    },
  );

  it('takes the median residual for its intercept: 6 for Sen 1968, where the other rule gives 4', () => {
    const sen = theilSen.cases[0]!;
    expect(sen.intercept_median_y_minus_slope_median_x).toBe('4');
    expect(medianOfSlopes(sen.x, sen.y)).toEqual({ ok: true, value: { slope: 4, intercept: 6 } });
  });

  it.each(['I', 'III'] as const)('has the line of the data set %s of Anscombe 1973', (set) => {
    const given = anscombe[set];
    const line = valueOf(medianOfSlopes(numbers(given.x), numbers(given.y)));
    near(line.slope, given.theil_sen_slope, 1e-12);
    near(line.intercept, given.theil_sen_intercept_median_residual, 1e-12);
  });

  it('stays with the readings where one off the middle is ten times too big', () => {
    const wild = smallLog('typo 10x on the fourth day');
    near(valueOf(medianOfSlopes(wild.xs, wild.ys)).slope, 0.6, 1e-12);
    near(valueOf(leastSquares(wild.xs, wild.ys)).slope, 6.72, 1e-12);
  });
});

describe('both lines', () => {
  it.each(realSeries)('fit $label', ({ xs, ys, expected }) => {
    // The reference has 15 digits; intercepts are compared on the scale of the readings.
    const scale = Math.max(...ys.map(Math.abs));
    const squares = valueOf(leastSquares(xs, ys));
    near(squares.slope, expected.ls_slope, 1e-12);
    near(squares.intercept, expected.ls_intercept, 1e-12, scale);
    near(valueOf(rSquaredOf(squares, xs, ys)), expected.r2, 1e-11);
    const slopes = valueOf(medianOfSlopes(xs, ys));
    near(slopes.slope, expected.theil_sen_slope, 1e-12);
    near(slopes.intercept, expected.theil_sen_intercept_median_residual, 1e-12, scale);
    near(valueOf(median(ys)), expected.median_y, 1e-12);
  });

  it.each(smallLogs.filter(({ xs }) => xs.length > 1))('fit the log "$name"', (log) => {
    const squares = valueOf(leastSquares(log.xs, log.ys));
    near(squares.slope, log.expected.ls_slope, 1e-12);
    near(squares.intercept, log.expected.ls_intercept, 1e-12);
    const slopes = valueOf(medianOfSlopes(log.xs, log.ys));
    near(slopes.slope, log.expected.theil_sen_slope, 1e-12);
    near(slopes.intercept, log.expected.theil_sen_intercept_median_residual, 1e-12);
    near(valueOf(median(log.ys)), log.expected.median, 1e-12);
  });

  it.each([
    ['no point', [], [], { kind: 'too-few', have: 0, need: 2 }],
    // simple-statistics answers slope 0.
    ['one point', [5], [3], { kind: 'too-few', have: 1, need: 2 }],
    // simple-statistics divides 0 by 0.
    ['points on one day', [5, 5, 5], [1, 2, 3], { kind: 'no-spread' }],
    // The rounded mean of three tenths is not a tenth: simple-statistics finds a slope in the dust.
    ['points at one tenth', [0.1, 0.1, 0.1], [1, 2, 4], { kind: 'no-spread' }],
    ['a missing number', [1, 2, 3], [1, NaN, 3], { kind: 'not-finite', index: 1 }],
    ['an endless number', [1, Infinity], [1, 2], { kind: 'not-finite', index: 1 }],
    ['numbers beyond a double', [0, 1e-300], [0, 1e300], { kind: 'beyond-numbers' }],
  ])('do not exist for %s', (_, xs, ys, error) => {
    expect(leastSquares(xs, ys)).toEqual({ ok: false, error });
    expect(medianOfSlopes(xs, ys)).toEqual({ ok: false, error });
  });

  it('refuse lists of different length, which is a mistake of the program', () => {
    expect(() => leastSquares([1, 2], [1])).toThrow();
    expect(() => medianOfSlopes([1], [1, 2])).toThrow();
  });

  it('answer 0 and never -0 for a level log, in either direction', () => {
    expect(valueOf(leastSquares([2, 1, 0], [5, 5, 5])).slope).toBe(0);
    expect(valueOf(medianOfSlopes([2, 1, 0], [5, 5, 5])).slope).toBe(0);
  });
});

describe('r squared', () => {
  it('does not exist for one point, nor for a level log', () => {
    // simple-statistics answers 1 for one point and divides 0 by 0 for a level log.
    const level = { slope: 0, intercept: 5 };
    expect(rSquaredOf(level, [1], [5])).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 1, need: 2 },
    });
    expect(rSquaredOf(level, [0, 1, 2], [5, 5, 5])).toEqual({
      ok: false,
      error: { kind: 'no-spread' },
    });
  });
});

describe('the median', () => {
  it.each([
    ['NumAcc1', univariate.numacc1.data, univariate.numacc1.recomputed.median],
    [
      'NumAcc3',
      ['1000000.2', ...Array.from({ length: 500 }, () => ['1000000.1', '1000000.3']).flat()],
      univariate.numacc3.recomputed.median,
    ],
    ['Michelso', univariate.michelso.data, univariate.michelso.recomputed.median],
    ['Lottery', univariate.lottery.data, univariate.lottery.recomputed.median],
  ])('of NIST StRD %s is the middle value', (_, data, expected) => {
    near(valueOf(median(numbers(data))), expected, 1e-15);
  });

  it('does not exist for no values, nor among what is no number', () => {
    expect(median([])).toEqual({ ok: false, error: { kind: 'too-few', have: 0, need: 1 } });
    expect(median([1, NaN])).toEqual({ ok: false, error: { kind: 'not-finite', index: 1 } });
  });

  it('is halfway between the two middle values, also where their sum is beyond a double', () => {
    expect(median([4, 1, 3, 2])).toEqual({ ok: true, value: 2.5 });
    expect(median([1.5e308, 1.7e308])).toEqual({ ok: true, value: 1.6e308 });
    expect(median([-0])).toEqual({ ok: true, value: 0 });
  });
});

describe('laws of the lines', () => {
  const run = { seed: 19190419, numRuns: 200 };
  const log = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: -300_000, max: 300_000 })), {
      minLength: 2,
      maxLength: 40,
    })
    .filter((points) => points.some(([x]) => x !== points[0]![0]))
    .map((points) => ({
      xs: Object.freeze(points.map(([x]) => x)),
      ys: Object.freeze(points.map(([, y]) => y)),
    }));

  it('median of slopes is what every pair, sorted, gives', () => {
    fc.assert(
      fc.property(log, ({ xs, ys }) => {
        const slopes = xs.flatMap((x, one) =>
          xs.flatMap((other, two) =>
            two > one && other !== x ? [(ys[two]! - ys[one]!) / (other - x)] : [],
          ),
        );
        const slope = sortedMedian(slopes);
        const intercept = sortedMedian(ys.map((y, index) => y - slope * xs[index]!));
        const line = valueOf(medianOfSlopes(xs, ys));
        near(line.slope, slope, 1e-15);
        near(line.intercept, intercept, 1e-15, 1e6);
      }),
      run,
    );
  });

  it('both move along when days are shifted, and stretch with the readings', () => {
    fc.assert(
      fc.property(log, fc.integer({ min: -500, max: 500 }), ({ xs, ys }, shift) => {
        for (const fit of [leastSquares, medianOfSlopes]) {
          const line = valueOf(fit(xs, ys));
          const later = valueOf(
            fit(
              xs.map((x) => x + shift),
              ys,
            ),
          );
          near(later.slope, line.slope, 1e-12, 1e6);
          near(later.intercept, line.intercept - shift * line.slope, 1e-12, 1e9);
          // A quarter is exact in a double, so nothing may be lost.
          const quartered = valueOf(
            fit(
              xs,
              ys.map((y) => y / 4),
            ),
          );
          expect(quartered).toEqual({ slope: line.slope / 4, intercept: line.intercept / 4 });
        }
      }),
      run,
    );
  });

  it('both are the same for readings in any order', () => {
    fc.assert(
      fc.property(log, ({ xs, ys }) => {
        const [back, forth] = [[...xs].reverse(), [...ys].reverse()];
        expect(medianOfSlopes(back, forth)).toEqual(medianOfSlopes(xs, ys));
        const line = valueOf(leastSquares(xs, ys));
        near(valueOf(leastSquares(back, forth)).slope, line.slope, 1e-12, 1e6);
      }),
      run,
    );
  });

  it('as many readings lie above the median-of-slopes line as below it', () => {
    fc.assert(
      fc.property(log, ({ xs, ys }) => {
        const residuals = residualsOf(valueOf(medianOfSlopes(xs, ys)), xs, ys);
        near(sortedMedian(residuals), 0, 1e-12, 1e6);
      }),
      run,
    );
  });
});

const sortedMedian = (values: readonly number[]): number => {
  const sorted = [...values].sort((one, other) => one - other);
  const half = sorted.length / 2;
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2;
};

interface NistSet {
  readonly x: readonly string[];
  readonly y: readonly string[];
  readonly certified?: {
    readonly B0?: string;
    readonly B1?: string;
    readonly R2?: string;
    readonly ss_residual?: string;
  };
  readonly 'straight_line_exact (not certified, own rational arithmetic)'?: {
    readonly slope: string;
    readonly intercept: string;
    readonly r2: string;
  };
}
