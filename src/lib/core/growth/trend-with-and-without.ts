import { failed, ok, type Result } from '#core/base';
import type { EntryId } from '#core/journal';
import type { Unit } from '#core/measure';
import { withoutReadings, type Series } from '#core/series';
import { comparablePoints } from './comparable-points';
import { trendOf, type Trend, type TrendError } from './trend';

/** The trend of a log twice: of every reading, and without those somebody is unsure about. */
export interface TrendTwice {
  readonly withAll: Trend;
  readonly without: Trend;
  /** Growth per day of the trend without them less that of all, in the unit of both. */
  readonly difference: { readonly medianOfSlopes: number; readonly leastSquares: number };
}

/**
 * What doubted readings do to the trend, for the grown-up's page: "with Tuesday, without Tuesday".
 * No reading is removed from the log by it. Both trends are told in one unit, the one given or that
 * of the last reading.
 * Errors: as for `trendOf`, with `which` of the two cannot be told.
 * @example
 * trendWithAndWithout({ points: [], days: [] }, new Set()) // => { ok: false, error: { kind: 'too-few', have: 0, need: 5, which: 'with-all' } }
 */
export const trendWithAndWithout = (
  series: Series,
  doubtedIds: ReadonlySet<EntryId>,
  options: { readonly unit?: Unit } = {},
): Result<TrendTwice, TrendTwiceError> => {
  const { points } = comparablePoints(series.points);
  const withAll = trendOf(points, options);
  if (!withAll.ok) return failed({ ...withAll.error, which: 'with-all' });
  const { unit } = withAll.value;
  const sure = withoutReadings({ ...series, points }, doubtedIds);
  const without = trendOf(sure.points, { unit });
  if (!without.ok) return failed({ ...without.error, which: 'without' });
  const differenceOf = (line: 'medianOfSlopes' | 'leastSquares'): number =>
    without.value[line].growthPerDay - withAll.value[line].growthPerDay;
  return ok({
    withAll: withAll.value,
    without: without.value,
    difference: {
      medianOfSlopes: differenceOf('medianOfSlopes'),
      leastSquares: differenceOf('leastSquares'),
    },
  });
};

export type TrendTwiceError = TrendError & { readonly which: 'with-all' | 'without' };
