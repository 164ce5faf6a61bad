import { daysBetween, formatDay, type CivilDay } from '#core/calendar';

/**
 * Short names for the days of a table, each different: the day of the week and of the month; in
 * four weeks or more that would come twice, so there the month stands too.
 * @example
 * dayLabels(['2026-03-03', '2026-03-04']) // => ['Tue 3', 'Wed 4']
 * dayLabels(['2026-02-03', '2026-03-03']) // => ['Tue 3 Feb', 'Tue 3 Mar']
 */
export const dayLabels = (days: readonly CivilDay[]): readonly string[] => {
  const inOrder = [...days].sort();
  const [first, last] = [inOrder.at(0), inOrder.at(-1)];
  const needsMonth = first && last && daysBetween(first, last) >= shortestMonthDays;
  return days.map((day) => {
    const written = formatDay(day, 'short');
    return needsMonth ? written : written.split(' ').slice(0, 2).join(' ');
  });
};

/** A day without its weekday, for a week that begins on it. Not part of the public door. */
export const weekLabel = (monday: CivilDay): string =>
  formatDay(monday, 'short').split(' ').slice(1).join(' ');

const shortestMonthDays = 28;
