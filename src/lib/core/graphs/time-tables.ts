import { minutesIntoDay, type ClockTime } from '#core/calendar';
import { middleReading } from '#core/journal';
import type { Measured } from '#core/measure';
import type { Series } from '#core/series';
import { clockPlaces } from './clock-places';
import type { TimeTable } from './graph-table';
import { isOfOneDay, oneDayAmount } from './one-day-amount';
import { dayLabels } from './place-labels';
import type { ToldIn } from './table-choice';
import { measuredWords } from './table-words';
import { namesOf } from './tally-tables';
import { toldValue } from './told-value';

type TimeRow = TimeTable['rows'][number];

/**
 * Heights over the days: every calendar day has its place, and every day with a number, a state
 * or a plan has its row; a free day nobody wrote for has none, and breaks no line. Where a day has
 * several readings, the middle one counts. Not part of the public door.
 */
export const dayTimeTable = (logs: readonly Series[], told: ToldIn): TimeTable => {
  const days = [...new Set(logs.flatMap((series) => series.days.map(({ day }) => day)))].sort();
  const placeOf = new Map(days.map((day, place) => [day, place]));
  return {
    ...tableHead(logs, told),
    places: dayLabels(days),
    rows: logs.flatMap((series, index) => {
      // A log without a plan has no rhythm: every day of it without a number is a gap.
      const hasPlan = series.days.some(({ planned }) => planned);
      return series.days.flatMap((day): readonly TimeRow[] => {
        const where = { place: placeOf.get(day.day) as number, series: index };
        const amount = oneDayAmount(series, day);
        if (amount) return [{ ...where, ...toldValue(amount, told), state: 'number' }];
        if (day.state === 'blank' && hasPlan && !day.planned) return [];
        return [{ ...where, ...noNumber(told), state: stateWithoutNumber(day.state) }];
      });
    }),
  };
};

/**
 * A shadow over the hours of one day: as many places as keep every reading on one (hours, halves,
 * quarters of an hour and finer), and a row for each reading and each state with a time. Where a
 * reading of the day's rhythm was left out, its place has a blank row. Readings without a time
 * have no place. Not part of the public door.
 */
export const hourTimeTable = (series: Series, told: ToldIn): TimeTable => {
  const read = oneReadingPerTime(series);
  const isRead = new Set(read.map(({ time }) => time));
  const marked = series.days.flatMap(({ marks }) =>
    marks.flatMap(({ time, state }) => (time && !isRead.has(time) ? [{ time, state }] : [])),
  );
  const { labels, first, step, skipped } = clockPlaces(
    read.map(({ time }) => minutesIntoDay(time)),
    marked.map(({ time }) => minutesIntoDay(time)),
  );
  const whereIs = (time: ClockTime) => ({
    ...{ place: (minutesIntoDay(time) - first) / step, series: 0 },
  });
  const rows: readonly TimeRow[] = [
    ...read.map(({ time, counted }): TimeRow => ({
      ...{ ...whereIs(time), ...toldValue(counted, told) },
      state: 'number',
    })),
    ...marked.map(({ time, state }) => ({ ...whereIs(time), ...noNumber(told), state })),
    ...skipped.map((place): TimeRow => ({
      ...{ place, series: 0, ...noNumber(told), state: 'blank' },
    })),
  ];
  return {
    ...tableHead([series], told),
    places: labels,
    rows: rows.toSorted((one, other) => one.place - other.place),
  };
};

/** The middle one, where a time has several. */
const oneReadingPerTime = (series: Series) => {
  const readsByTime = new Map<ClockTime, [Measured, ...Measured[]]>();
  for (const { time, counted } of series.days.flatMap(({ readings }) =>
    readings.filter(isOfOneDay),
  )) {
    const reads = time && readsByTime.get(time);
    if (reads) reads.push(counted);
    else if (time) readsByTime.set(time, [counted]);
  }
  return [...readsByTime].map(([time, reads]) => ({ time, counted: middleReading(reads) }));
};

const noNumber = ({ unit }: ToldIn) => ({ exact: null, unit, text: '' });

const stateWithoutNumber = (state: Series['days'][number]['state']): TimeRow['state'] =>
  state === 'word' || state === 'number' ? 'blank' : state;

const tableHead = (
  logs: readonly Series[],
  { unit, mark }: ToldIn,
): Omit<TimeTable, 'places' | 'rows'> => ({
  ...{ form: 'times', unit, mark, seriesNames: namesOf(logs) },
  measured: logs[0] ? measuredWords[logs[0].investigation.quantity] : '',
  specimens: logs.map(({ specimen }) => specimen.id),
});
