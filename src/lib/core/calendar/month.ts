import type { CivilDay } from './civil-day';

/**
 * The year of a day.
 * @example
 * yearOf('2026-03-09') // => 2026
 */
export const yearOf = (day: CivilDay): number => Number(day.slice(0, 4));

/**
 * The month of a day, written `YYYY-MM`, so that months sort as text.
 * @example
 * monthOf('2026-03-09') // => '2026-03'
 */
export const monthOf = (day: CivilDay): string => day.slice(0, 7);

/** English month names from January. */
export const monthNames: readonly string[] = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
