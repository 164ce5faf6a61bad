import type { CivilDay } from './civil-day';
import { addDays, dayNumber } from './days-between';

/** Monday 1 to Sunday 7 (ISO 8601-1:2019). */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7;

/**
 * The day of the week: Monday 1 to Sunday 7 (ISO 8601-1:2019).
 * @example
 * weekdayOf('2026-03-09') // => 1
 */
export const weekdayOf = (day: CivilDay): Weekday => {
  // Day 0, 1970-01-01, was a Thursday.
  const daysSinceAMonday = (((dayNumber(day) + 3) % 7) + 7) % 7;
  return (daysSinceAMonday + 1) as Weekday;
};

/**
 * The Monday of the day's week; a Monday is its own.
 * @example
 * mondayOf('2026-03-15') // => '2026-03-09'
 */
export const mondayOf = (day: CivilDay): CivilDay => addDays(day, 1 - weekdayOf(day));

/**
 * The name of the day's weekday in English.
 * @example
 * weekdayName('2026-03-09', 'short') // => 'Mon'
 * weekdayName('2026-03-09', 'long') // => 'Monday'
 */
export const weekdayName = (day: CivilDay, form: 'short' | 'long'): string => {
  const name = weekdayNames[weekdayOf(day) - 1] as string;
  return form === 'short' ? name.slice(0, 3) : name;
};

/** English weekday names from Monday. */
export const weekdayNames: readonly string[] = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
];
