import {
  addDays,
  civilDay,
  daysBetween,
  formatDay,
  mondayOf,
  monthOf,
  weekdayName,
  yearOf,
  type CivilDay,
} from '#core/calendar';
import type { AxisTick } from './line-graph';

/**
 * Ticks on a true calendar: days, every other day, weeks from Monday, months or years, whichever
 * is the finest that needs no more labels than there is room for. `at` counts days from `origin`,
 * so that unequal months stay unequal. Up to ten weeks every day has a grid line of its own.
 * Throws when the last day is before the first.
 *
 * @param most how many labels there is room for, 4 or more (fewer could leave no label at all)
 * @example
 * calendarTicks('2026-03-02', '2026-03-04', '2026-03-02', 9).map((tick) => tick.label.join(' ')) // => ['Mon 2 Mar', 'Tue 3', 'Wed 4']
 * calendarTicks('2026-01-20', '2026-04-10', '2026-01-20', 4).map((tick) => tick.at) // => [12, 40, 71]
 */
export const calendarTicks = (
  first: CivilDay,
  last: CivilDay,
  origin: CivilDay,
  most: number,
): readonly AxisTick[] => {
  if (daysBetween(first, last) < 0) throw new RangeError(`${last} is before ${first}`);
  if (!(most >= 4)) throw new RangeError(`${most} is no room for labels`);
  const { days, words } = rhythmFor(first, last, most);
  const labelled = days.map((day, index) => ({
    at: daysBetween(origin, day),
    label: words(day, days[index - 1]),
  }));
  return daysBetween(first, last) > everyDayUpTo
    ? labelled
    : withEveryDay(labelled, daysBetween(origin, first), daysBetween(origin, last));
};

const everyDayUpTo = 70;

interface Rhythm {
  readonly days: readonly CivilDay[];
  readonly words: (day: CivilDay, before: CivilDay | undefined) => readonly string[];
}

const rhythmFor = (first: CivilDay, last: CivilDay, most: number): Rhythm => {
  const spanDays = daysBetween(first, last) + 1;
  for (const step of [1, 2]) {
    if (spanDays <= step * most) return { days: everyFew(first, last, step), words: dayWords };
  }
  for (const step of [7, 14]) {
    const monday = mondayOf(addDays(first, 6));
    if (spanDays <= step * most) return { days: everyFew(monday, last, step), words: weekWords };
  }
  for (const step of [1, 2, 3, 6]) {
    if (spanDays <= step * 31 * most) return { days: months(first, last, step), words: monthWords };
  }
  const step = [1, 2, 5, 10, 20, 50, 100].find((years) => spanDays <= years * 365 * most) ?? 200;
  return { days: months(first, last, step * 12), words: (day) => [String(yearOf(day))] };
};

const everyFew = (first: CivilDay, last: CivilDay, step: number): readonly CivilDay[] =>
  Array.from({ length: Math.max(0, Math.floor(daysBetween(first, last) / step) + 1) }, (_, index) =>
    addDays(first, index * step),
  );

/** The firsts of months that lie on whole steps from a January; for years, on whole steps from 0. */
const months = (first: CivilDay, last: CivilDay, step: number): readonly CivilDay[] => {
  const found: CivilDay[] = [];
  const start = yearOf(first) * 12 + Number(first.slice(5, 7)) - 1;
  for (let month = Math.ceil(start / step) * step; ; month += step) {
    const [year, inYear] = [Math.floor(month / 12), (month % 12) + 1];
    const text = `${year}-${String(inYear).padStart(2, '0')}-01`;
    if (text > last) return found;
    if (text >= first) found.push(civilDay(text));
  }
};

const dayWords: Rhythm['words'] = (day, before) => {
  const [weekday, ...dayAndMonth] = formatDay(day, 'short').split(' ') as [string, string, string];
  const isNewMonth = !before || monthOf(before) !== monthOf(day);
  return [weekday, isNewMonth ? dayAndMonth.join(' ') : dayAndMonth[0]];
};

const weekWords: Rhythm['words'] = (day, before) => [
  weekdayName(day, 'short'),
  ...yearBelow(day, before ?? day, dayAndMonthOf(day)),
];

const monthWords: Rhythm['words'] = (day, before) =>
  yearBelow(day, before, formatDay(day, 'short').split(' ')[2] as string);

const dayAndMonthOf = (day: CivilDay): string =>
  formatDay(day, 'short').split(' ').slice(1).join(' ');

/** With the year where it is a new one. */
const yearBelow = (day: CivilDay, before: CivilDay | undefined, text: string): readonly string[] =>
  before && yearOf(before) === yearOf(day) ? [text] : [text, String(yearOf(day))];

const withEveryDay = (
  labelled: readonly AxisTick[],
  from: number,
  to: number,
): readonly AxisTick[] => {
  const tickAt = new Map(labelled.map((tick) => [tick.at, tick]));
  return Array.from(
    { length: to - from + 1 },
    (_, index) => tickAt.get(from + index) ?? { at: from + index, label: [] },
  );
};
