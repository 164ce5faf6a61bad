import { failed, ok, type Result } from '#core/base';
import { addDays, daysBetween, weekdayOf, type CivilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import { isLengthUnit } from '#core/measure';
import type { Series, SeriesPoint } from '#core/series';
import { trendNeeds } from './trend';

/** What can be predicted by a child: lengths that grow. Rain and shadows do not. */
export const predictableQuantities: readonly Quantity[] = ['plant-height', 'length'];

/** Straight guesses miss more the farther they look, and plants slow down: see the tests. */
export const longestLookAheadDays = 3;

export interface PredictionDay {
  readonly day: CivilDay;
  /** Days after today: 1 to 3. */
  readonly daysAhead: number;
  /** Whether the plan asks for a reading on that day of the week. */
  readonly planned: boolean;
}

/**
 * The days that may be predicted today, in order, at least one: 1 to 3 days ahead of today and of
 * the newest reading both, from a log of a height or a length with 5 days read over 7 days or more
 * (common practice, no source). Days still to come are not counted as read.
 * Errors, the first that holds: `not-this-quantity`; `ended`, also when the plant was lost;
 * `too-few` days read; `too-short` a time; `measure-first`, when the newest reading is so old that
 * no day to come is within three days of it.
 * @example
 * predictionOffer({ specimen: { ended: null }, investigation: { quantity: 'rain', ended: null }, days: [], points: [] }, '2026-03-09') // => { ok: false, error: { kind: 'not-this-quantity', quantity: 'rain' } }
 * predictionOffer({ specimen: { ended: null }, investigation: { quantity: 'plant-height', ended: null }, days: [], points: [] }, '2026-03-09') // => { ok: false, error: { kind: 'too-few', have: 0, need: 5 } }
 */
export const predictionOffer = (
  series: Series,
  today: CivilDay,
): Result<readonly PredictionDay[], PredictionOfferError> => {
  const { investigation, specimen } = series;
  const { quantity } = investigation;
  if (!predictableQuantities.includes(quantity)) {
    return failed({ kind: 'not-this-quantity', quantity });
  }
  const points = lengthPointsUntil(series, today);
  if (specimen.ended || investigation.ended || isLost(series, points, today)) {
    return failed({ kind: 'ended' });
  }
  const span = spanOf(points);
  if (!span.ok) return span;
  const { lastDay } = span.value;
  const days = [1, 2, 3]
    .map((daysAhead) => ({ daysAhead, day: addDays(today, daysAhead) }))
    .filter(({ day }) => daysBetween(lastDay, day) <= longestLookAheadDays)
    .map(({ daysAhead, day }) => {
      return { day, daysAhead, planned: investigation.weekdays.includes(weekdayOf(day)) };
    });
  return days.length > 0 ? ok(days) : failed({ kind: 'measure-first', lastDay });
};

/** The lengths read until a day, that day included. Not part of the public door. */
export const lengthPointsUntil = (series: Series, day: CivilDay): readonly SeriesPoint[] =>
  series.points.filter((point) => point.day <= day && isLengthUnit(point.unit));

/** The last day of a log that is long enough to look ahead from. Not part of the public door. */
export const spanOf = (
  points: readonly SeriesPoint[],
): Result<{ readonly lastDay: CivilDay }, TooLittleToPredict> => {
  const days = [...new Set(points.map(({ day }) => day))].sort();
  const firstDay = days.at(0);
  const lastDay = days.at(-1);
  if (!firstDay || !lastDay || days.length < trendNeeds.readings) {
    return failed({ kind: 'too-few', have: days.length, need: trendNeeds.readings });
  }
  const spanDays = daysBetween(firstDay, lastDay);
  return spanDays < trendNeeds.days
    ? failed({ kind: 'too-short', days: spanDays, need: trendNeeds.days })
    : ok({ lastDay });
};

/** Marked as lost, on the day of the newest reading or after it. */
const isLost = (series: Series, points: readonly SeriesPoint[], today: CivilDay): boolean => {
  const lastDay = points.at(-1)?.day;
  return series.days.some(
    ({ day, marks }) =>
      day <= today &&
      (lastDay === undefined || day >= lastDay) &&
      marks.some(({ state }) => state === 'lost'),
  );
};

export type TooLittleToPredict =
  | { readonly kind: 'too-few'; readonly have: number; readonly need: 5 }
  | { readonly kind: 'too-short'; readonly days: number; readonly need: 7 };

export type PredictionOfferError =
  | { readonly kind: 'not-this-quantity'; readonly quantity: Quantity }
  | { readonly kind: 'ended' }
  | TooLittleToPredict
  | { readonly kind: 'measure-first'; readonly lastDay: CivilDay };
