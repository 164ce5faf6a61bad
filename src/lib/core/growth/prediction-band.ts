import { failed, ok, type Result } from '#core/base';
import { addDays, daysBetween, type CivilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import type { Series, SeriesPoint } from '#core/series';
import { lengthAsThisWeek } from './as-this-week';
import { changesBetween } from './change';
import { onePointPerDay } from './growth-point';
import { median } from './median';
import {
  lengthPointsUntil,
  longestLookAheadDays,
  predictableQuantities,
  spanOf,
  type TooLittleToPredict,
} from './prediction-offer';

/** How tall it may be on a day to come, in whole nanometres: for a grown-up's page only. */
export interface PredictionBand {
  /** The newest day with a reading before the day that is asked about. */
  readonly lastDay: CivilDay;
  readonly lastExact: number;
  /** Days from there to the day that is asked about: 1 to 3. */
  readonly gapDays: number;
  readonly lowExact: number;
  readonly highExact: number;
  /** "If it keeps on as it did this week"; null with only one reading in that week. */
  readonly straightExact: number | null;
}

/**
 * What a grown-up can hold a child's prediction against, worked out from the readings before that
 * day only. The band reaches from no growth at all to twice the growth of late: the newest reading
 * plus the gap times 0 to 2 g, where g is the median of up to three most recent growths per day,
 * at least 0 (common practice, no source). The straight line is `lengthAsThisWeek`.
 * Errors: as for `predictionOffer`, and `too-far` when the day lies more than 3 days after the
 * newest reading before it.
 * @example
 * predictionBand({ investigation: { quantity: 'plant-height' }, points: [0, 2, 4, 6, 8].map((day) => ({ day: addDays('2026-03-02', day), exact: day * 10000000, unit: 'cm', mark: '1 cm' })) }, '2026-03-11').value // => { lastDay: '2026-03-10', lastExact: 80000000, gapDays: 1, lowExact: 80000000, highExact: 100000000, straightExact: 90000000 }
 */
export const predictionBand = (
  series: Series,
  forDay: CivilDay,
): Result<PredictionBand, PredictionBandError> => {
  const { quantity } = series.investigation;
  if (!predictableQuantities.includes(quantity)) {
    return failed({ kind: 'not-this-quantity', quantity });
  }
  const points = lengthPointsUntil(series, addDays(forDay, -1));
  const span = spanOf(points);
  if (!span.ok) return span;
  const inOrder = onePointPerDay(points);
  const last = inOrder.at(-1) as SeriesPoint;
  const gapDays = daysBetween(last.day, forDay);
  if (gapDays > longestLookAheadDays) {
    return failed({ kind: 'too-far', gapDays, most: longestLookAheadDays });
  }
  return ok({
    lastDay: last.day,
    lastExact: last.exact,
    gapDays,
    lowExact: last.exact,
    highExact: last.exact + Math.round(2 * gapDays * growthOfLate(inOrder)),
    straightExact: lengthAsThisWeek(inOrder, forDay),
  });
};

/** In nanometres per day, not below 0. Five days read have four changes. */
const growthOfLate = (inOrder: readonly SeriesPoint[]): number => {
  const changes = changesBetween(inOrder).slice(-3);
  const middle = median(changes.map((change) => change.exact / change.gapDays));
  if (!middle.ok) throw new Error('No growth of late in a log that is long enough');
  return Math.max(0, middle.value);
};

export type PredictionBandError =
  | { readonly kind: 'not-this-quantity'; readonly quantity: Quantity }
  | TooLittleToPredict
  | { readonly kind: 'too-far'; readonly gapDays: number; readonly most: 3 };
