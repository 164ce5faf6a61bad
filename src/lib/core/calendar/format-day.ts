import type { CivilDay } from './civil-day';
import { monthNames, yearOf } from './month';
import { weekdayName } from './weekday';

/**
 * A day in English words, the day before the month. The short form leaves the year out.
 * @example
 * formatDay('2026-03-03', 'short') // => 'Tue 3 Mar'
 * formatDay('2026-03-03', 'long') // => 'Tuesday 3 March 2026'
 */
export const formatDay = (day: CivilDay, form: 'short' | 'long'): string => {
  const month = monthNames[Number(day.slice(5, 7)) - 1] as string;
  const dayOfMonth = String(Number(day.slice(8, 10)));
  return form === 'short'
    ? [weekdayName(day, form), dayOfMonth, month.slice(0, 3)].join(' ')
    : [weekdayName(day, form), dayOfMonth, month, String(yearOf(day))].join(' ');
};
