import {
  addDays,
  civilDay,
  daysFrom,
  mondayOf,
  monthOf,
  yearOf,
  type CivilDay,
} from '#core/calendar';
import type { Series, SeriesPoint } from '#core/series';

export type RainPeriod = 'week' | 'month' | 'year';

/** What the gauge held in one week, month or year. */
export interface RainTotal {
  /** The whole period on the calendar, also where the log begins or ends inside it. */
  readonly firstDay: CivilDay;
  readonly lastDay: CivilDay;
  /** Whole nanometres, an exact sum; 0 also when there is no reading: see `readings`. */
  readonly exact: number;
  readonly readings: readonly SeriesPoint[];
  /** Those readings that hold several days' rain, counted once, where they end. */
  readonly severalDays: readonly SeriesPoint[];
  /** Those of them that began before this period: part of the rain may belong to the one before. */
  readonly fromBefore: readonly SeriesPoint[];
  /** Days that were wet but too little to measure: 0 in the sum, yet not dry. */
  readonly traceDays: number;
  /** Days of the log in this period that no reading, trace or several-day total accounts for. */
  readonly daysWithout: number;
}

/**
 * Rain by the week (Monday to Sunday), the month or the year, in order, without a gap from the
 * first thing written to the last. A reading belongs to the day it was taken on, as observers log
 * a total on the day it is read (US National Weather Service); two readings of one day add up,
 * because the gauge is emptied after each. None for an empty log.
 * @example
 * rainTotals({ days: [], points: [] }, 'week') // => []
 */
export const rainTotals = (
  { days, points }: Pick<Series, 'days' | 'points'>,
  period: RainPeriod,
): readonly RainTotal[] => {
  const written = days.filter(({ state }) => state !== 'blank').map(({ day }) => day);
  const [first, last] = [written.at(0), written.at(-1)];
  if (!first || !last) return [];
  const traces = new Set(days.filter(({ state }) => state === 'trace').map(({ day }) => day));
  const covered = new Set([...traces, ...points.flatMap(daysOfReading)]);
  const pointsByStart = groupBy(points, ({ day }) => startOf(day, period));
  const daysByStart = groupBy(daysFrom(first, last), (day) => startOf(day, period));
  return [...daysByStart].map(([start, daysOfLog]): RainTotal => {
    const readings = pointsByStart.get(start) ?? [];
    const severalDays = readings.filter(({ spanDays }) => spanDays > 1);
    return {
      ...{ firstDay: start, lastDay: addDays(nextStart(start, period), -1) },
      exact: readings.reduce((sum, { exact }) => sum + exact, 0),
      ...{ readings, severalDays },
      fromBefore: severalDays.filter((reading) => (daysOfReading(reading)[0] as CivilDay) < start),
      traceDays: daysOfLog.filter((day) => traces.has(day)).length,
      daysWithout: daysOfLog.filter((day) => !covered.has(day)).length,
    };
  });
};

/** The days a reading accounts for, the last being its own. Not part of the public door. */
export const daysOfReading = ({ day, spanDays }: SeriesPoint): readonly CivilDay[] =>
  daysFrom(addDays(day, 1 - spanDays), day);

const startOf = (day: CivilDay, period: RainPeriod): CivilDay => {
  if (period === 'week') return mondayOf(day);
  return civilDay(period === 'month' ? `${monthOf(day)}-01` : `${yearOf(day)}-01-01`);
};

/** A start and 31 days is always in the next month; and 366, in the next year. */
const nextStart = (start: CivilDay, period: RainPeriod): CivilDay => {
  if (period === 'week') return addDays(start, 7);
  return startOf(addDays(start, period === 'month' ? 31 : 366), period);
};

const groupBy = <Item>(
  items: readonly Item[],
  startOfItem: (item: Item) => CivilDay,
): ReadonlyMap<CivilDay, readonly Item[]> => {
  const groups = new Map<CivilDay, Item[]>();
  for (const item of items) {
    const start = startOfItem(item);
    const group = groups.get(start);
    if (group) group.push(item);
    else groups.set(start, [item]);
  }
  return groups;
};
