import { failed, ok, type Result } from '#core/base';
import { residualsOf, type Line } from './line';
import { medianInPlace } from './median';
import { lineObstacle, type UndefinedStatistic } from './undefined-statistic';

/**
 * The line whose slope is the median of the slopes between all pairs of points (Theil 1950;
 * Sen 1968, J. American Statistical Association 63, 1379-1389). Pairs with the same x have no
 * slope and are left out. One bad entry among many hardly moves it.
 *
 * Its intercept is the median of y - slope x, so that half of the points lie above the line and
 * half below. Another convention, median(y) - slope median(x) (Conover), gives another number:
 * for Sen's example this rule gives 6 and that one 4.
 *
 * Undefined for fewer than two points and when all x are equal. Throws when the lists differ in
 * length. Works through n(n-1)/2 slopes, and needs 8 bytes for each while it does.
 * @example
 * medianOfSlopes([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78]) // => { ok: true, value: { slope: 4, intercept: 6 } }
 */
export const medianOfSlopes = (
  xs: readonly number[],
  ys: readonly number[],
): Result<Line, UndefinedStatistic> => {
  const obstacle = lineObstacle(xs, ys);
  if (obstacle) return failed(obstacle);
  const slopes = slopesOfPairs(Float64Array.from(xs), Float64Array.from(ys));
  if (!slopes) return failed({ kind: 'beyond-numbers' });
  const slope = medianInPlace(slopes);
  const aboveOrigin = Float64Array.from(residualsOf({ slope, intercept: 0 }, xs, ys));
  const intercept = medianInPlace(aboveOrigin);
  return Number.isFinite(intercept) ? ok({ slope, intercept }) : failed({ kind: 'beyond-numbers' });
};

/** Nothing, when a slope does not fit a double. */
const slopesOfPairs = (xs: Float64Array, ys: Float64Array): Float64Array | undefined => {
  const slopes = new Float64Array((xs.length * (xs.length - 1)) / 2);
  let count = 0;
  for (let one = 0; one < xs.length; one += 1) {
    const x = xs[one] as number;
    const y = ys[one] as number;
    for (let other = one + 1; other < xs.length; other += 1) {
      const run = (xs[other] as number) - x;
      if (run === 0) continue;
      const slope = ((ys[other] as number) - y) / run;
      if (!Number.isFinite(slope)) return undefined;
      slopes[count] = slope;
      count += 1;
    }
  }
  return slopes.subarray(0, count);
};
