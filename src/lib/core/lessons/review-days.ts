import { addDays, daysBetween, mondayOf, weekdayOf, type CivilDay } from '#core/calendar';
import type { Investigation } from '#core/journal';

/** Monday to Thursday: what a family is taken to mean when its plan does not say (our choice). */
export const usualSchoolWeekdays: readonly number[] = [1, 2, 3, 4];

/**
 * The days of the week that are school days in a notebook, 1 being Monday: those that its running
 * investigations plan readings for, Monday to Thursday where none says. A plan of all seven days
 * says nothing about school: a plant is read on Sundays too. (Our choice.)
 * @example
 * schoolWeekdaysOf({ investigations: new Map() }) // => [1, 2, 3, 4]
 * schoolWeekdaysOf({ investigations: new Map([['a', { weekdays: [1, 3, 5], ended: null }], ['b', { weekdays: [1, 2, 3, 4, 5, 6, 7], ended: null }]]) }) // => [1, 3, 5]
 */
export const schoolWeekdaysOf = ({
  investigations,
}: {
  readonly investigations: ReadonlyMap<unknown, Pick<Investigation, 'weekdays' | 'ended'>>;
}): readonly number[] => {
  const planned = [...investigations.values()].filter(
    ({ weekdays, ended }) => ended === null && weekdays.length > 0 && weekdays.length < 7,
  );
  if (planned.length === 0) return usualSchoolWeekdays;
  return [...new Set(planned.flatMap(({ weekdays }) => weekdays))].toSorted((a, b) => a - b);
};

/**
 * The day that lies so many school days after a day, which itself need not be one. Holidays are
 * not known here: they only make a review come later. No weekdays, or a count below 1, is our own
 * mistake and throws.
 * @param count how many school days, 1 for the next one
 * @param weekdays which days of the week are school days, 1 being Monday
 * @example
 * schoolDayAfter('2026-03-05', 1, [1, 2, 3, 4]) // => '2026-03-09'
 * schoolDayAfter('2026-03-07', 5, [1, 2, 3, 4]) // => '2026-03-16'
 */
export const schoolDayAfter = (
  day: CivilDay,
  count: number,
  weekdays: readonly number[],
): CivilDay => stepped(day, count, weekdays, 1);

/**
 * The same, back in time.
 * @example
 * schoolDayBefore('2026-03-16', 10, [1, 2, 3, 4, 5]) // => '2026-03-02'
 */
export const schoolDayBefore = (
  day: CivilDay,
  count: number,
  weekdays: readonly number[],
): CivilDay => stepped(day, count, weekdays, -1);

/**
 * How many school days there were from a Monday long ago through this day: what comes every other
 * school day goes by whether it is even.
 * @example
 * schoolDayNumber('2026-03-03', [1, 2, 3, 4]) - schoolDayNumber('2026-03-02', [1, 2, 3, 4]) // => 1
 * schoolDayNumber('2026-03-08', [1, 2, 3, 4]) - schoolDayNumber('2026-03-05', [1, 2, 3, 4]) // => 0
 */
export const schoolDayNumber = (day: CivilDay, weekdays: readonly number[]): number => {
  const inWeek = sound(weekdays);
  const weeks = daysBetween(firstMonday, mondayOf(day)) / 7;
  return weeks * inWeek.length + inWeek.filter((each) => each <= weekdayOf(day)).length;
};

const stepped = (
  day: CivilDay,
  count: number,
  weekdays: readonly number[],
  direction: 1 | -1,
): CivilDay => {
  if (!Number.isInteger(count) || count < 1) throw new RangeError(`${count} is no count of days`);
  const inWeek = sound(weekdays);
  let at = addDays(day, direction * 7 * Math.floor((count - 1) / inWeek.length));
  for (let left = ((count - 1) % inWeek.length) + 1; left > 0;) {
    at = addDays(at, direction);
    if (inWeek.includes(weekdayOf(at))) left -= 1;
  }
  return at;
};

const sound = (weekdays: readonly number[]): readonly number[] => {
  const inWeek = [1, 2, 3, 4, 5, 6, 7].filter((each) => weekdays.includes(each));
  if (inWeek.length === 0) throw new RangeError('No day of the week is a school day');
  return inWeek;
};

const firstMonday = '2001-01-01' as CivilDay;
