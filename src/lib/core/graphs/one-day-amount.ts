import type { Reading } from '#core/journal';
import type { Measured } from '#core/measure';
import { dayAmount, type Series, type SeriesDay } from '#core/series';

/**
 * The amount of one day by itself, or null: for a day without a number, and for one whose number is
 * a total of several days (rain that nobody read over a weekend). Such a total is no day's amount,
 * and nothing of a single day may be drawn of it. Not part of the public door.
 */
export const oneDayAmount = (series: Series, day: SeriesDay): Measured | null =>
  day.readings.every(isOfOneDay) ? dayAmount(series, day) : null;

/** Whether a reading is of its own day alone. Not part of the public door. */
export const isOfOneDay = ({ spanDays }: Pick<Reading, 'spanDays'>): boolean => spanDays === 1;
