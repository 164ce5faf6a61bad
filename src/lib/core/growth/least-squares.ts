import { linearRegression, rSquared } from 'simple-statistics';
import { failed, ok, type Result } from '#core/base';
import { lineAt, type Line } from './line';
import { hasSpread, lineObstacle, type UndefinedStatistic } from './undefined-statistic';

/**
 * The least-squares line of y on x: the line with the smallest sum of squared residuals (checked
 * against the NIST Statistical Reference Datasets). One wild value can turn it far; a wild value
 * at the mean of x does not turn it at all, it only lifts it.
 * Undefined for fewer than two points and when all x are equal. Throws when the lists differ in
 * length.
 * @example
 * leastSquares([0, 2, 4], [2, 3, 4]) // => { ok: true, value: { slope: 0.5, intercept: 2 } }
 * leastSquares([5, 5], [1, 2]) // => { ok: false, error: { kind: 'no-spread' } }
 */
export const leastSquares = (
  xs: readonly number[],
  ys: readonly number[],
): Result<Line, UndefinedStatistic> => {
  // The package answers slope 0 for one point and divides by zero when all x are equal.
  const obstacle = lineObstacle(xs, ys);
  if (obstacle) return failed(obstacle);
  const { m: slope, b: intercept } = linearRegression(pairs(xs, ys));
  return Number.isFinite(slope) && Number.isFinite(intercept)
    ? ok({ slope: slope + 0, intercept })
    : failed({ kind: 'beyond-numbers' });
};

/**
 * The share of the spread of y that a line accounts for: 1 when it meets every point, near 0 when
 * it does no better than one level for all. Only meant for the least-squares line; another line
 * can fall below 0. Undefined when all y are equal, because there is no spread to account for.
 * @example
 * rSquaredOf({ slope: 0.5, intercept: 2 }, [0, 2, 4], [2, 3, 4]) // => { ok: true, value: 1 }
 * rSquaredOf({ slope: 0, intercept: 5 }, [0, 1], [5, 5]) // => { ok: false, error: { kind: 'no-spread' } }
 */
export const rSquaredOf = (
  line: Line,
  xs: readonly number[],
  ys: readonly number[],
): Result<number, UndefinedStatistic> => {
  // The package answers 1 for one point and divides by zero when all y are equal.
  const obstacle = lineObstacle(xs, ys);
  if (obstacle) return failed(obstacle);
  if (!hasSpread(ys)) return failed({ kind: 'no-spread' });
  const share = rSquared(pairs(xs, ys), (x) => lineAt(line, x));
  return Number.isFinite(share) ? ok(share) : failed({ kind: 'beyond-numbers' });
};

const pairs = (xs: readonly number[], ys: readonly number[]): number[][] =>
  xs.map((x, index) => [x, ys[index] as number]);
