import { civilDayOf, type CivilDay } from './civil-day';
import { datePartsOf, dayNumberOf } from './day-number';

/**
 * How many days after `from` the day `to` is: negative when it is before. Counted on the calendar,
 * so a day that was 23 hours long, or that a zone skipped, is still one day.
 * @example
 * daysBetween('2024-02-28', '2024-03-01') // => 2
 * daysBetween('2025-05-10', '2025-05-03') // => -7
 */
export const daysBetween = (from: CivilDay, to: CivilDay): number =>
  dayNumber(to) - dayNumber(from);

/**
 * The day this many whole days later (earlier when negative). Throws for a part of a day and for
 * days outside the years 1900 to 2199.
 * @example
 * addDays('2024-02-28', 2) // => '2024-03-01'
 * addDays('2025-01-01', -1) // => '2024-12-31'
 */
export const addDays = (day: CivilDay, days: number): CivilDay => {
  if (!Number.isInteger(days)) throw new RangeError(`${days} is not a whole number of days`);
  const { year, month, dayOfMonth } = datePartsOf(dayNumber(day) + days);
  const made = civilDayOf(year, month, dayOfMonth);
  if (!made.ok) throw new RangeError(`${day} and ${days} days is outside the years 1900 to 2199`);
  return made.value;
};

/**
 * The order of two days for sorting: -1, 0 or 1.
 * @example
 * compareDays('2026-03-09', '2026-03-10') // => -1
 */
export const compareDays = (one: CivilDay, other: CivilDay): -1 | 0 | 1 => {
  if (one === other) return 0;
  return one < other ? -1 : 1;
};

/**
 * Every day from the first through the last, both included, in order. There are none when the last
 * is before the first.
 * @example
 * daysFrom('2024-02-28', '2024-03-01') // => ['2024-02-28', '2024-02-29', '2024-03-01']
 */
export const daysFrom = (first: CivilDay, last: CivilDay): readonly CivilDay[] =>
  Array.from({ length: Math.max(0, daysBetween(first, last) + 1) }, (_, index) =>
    addDays(first, index),
  );

/** The day as a whole number, 0 for 1970-01-01. Not part of the public door. */
export const dayNumber = (day: CivilDay): number =>
  dayNumberOf(Number(day.slice(0, 4)), Number(day.slice(5, 7)), Number(day.slice(8, 10)));
