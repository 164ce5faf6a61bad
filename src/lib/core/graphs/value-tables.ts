import { rainTotals } from '#core/growth';
import { dayAmount, type Series, type SeriesDay } from '#core/series';
import type { ValueRow, ValueTable } from './graph-table';
import { isOfOneDay } from './one-day-amount';
import { dayLabels, weekLabel } from './place-labels';
import type { ToldIn } from './table-choice';
import { measuredWords } from './table-words';
import { hourTimeTable } from './time-tables';
import { toldValue } from './told-value';

/**
 * One row for each calendar day of a log that is cut to its days, measured or not. A total of
 * several days' rain is no day's rain: its row says so in words and has no number to draw. Not
 * part of the public door.
 */
export const dayValueTable = (series: Series, told: ToldIn): ValueTable => {
  const labels = dayLabels(series.days.map(({ day }) => day));
  return {
    ...tableHead(series, told),
    rows: series.days.map((day, index) => ({
      ...{ label: labels[index] as string, day: day.day },
      ...valueOfDay(series, day, told),
    })),
  };
};

/** What stands in a day's row. Not part of the public door. */
export type DayValue = Pick<ValueRow, 'exact' | 'unit' | 'text' | 'state'>;

export const valueOfDay = (series: Series, day: SeriesDay, told: ToldIn): DayValue => {
  const amount = dayAmount(series, day);
  if (!amount) {
    const state = day.state === 'word' ? 'blank' : day.state;
    return { exact: null, unit: told.unit, text: '', state };
  }
  const value = toldValue(amount, told);
  if (day.readings.every(isOfOneDay)) return { ...value, state: 'number' };
  const spanDays = Math.max(...day.readings.map((reading) => reading.spanDays));
  return { ...value, exact: null, text: `${value.text} in ${spanDays} days`, state: 'number' };
};

/**
 * Rain added up by the week, Monday to Sunday; the label says of a week how many of its days are
 * accounted for, when not all. A week that holds a total begun in the week before has no number
 * to draw: nobody knows how much of it fell here. Not part of the public door.
 */
export const weekValueTable = (series: Series, told: ToldIn): ValueTable => ({
  ...tableHead(series, told),
  rows: rainTotals(series, 'week').map((week) => {
    const reading = week.readings[0] ?? { unit: told.unit, mark: told.mark };
    const value = toldValue({ ...reading, exact: week.exact }, told);
    const label = `week of ${weekLabel(week.firstDay)}`;
    const known = daysKnown(series, week);
    const row = {
      label: known === 7 ? label : `${label} (${known} of 7 days)`,
      day: week.firstDay,
    };
    if (known === 0) return { ...row, exact: null, unit: told.unit, text: '', state: 'blank' };
    if (week.fromBefore.length === 0) return { ...row, ...value, state: 'number' };
    const text = `${value.text}, some of it from the week before`;
    return { ...row, ...value, exact: null, text, state: 'number' };
  }),
});

const daysKnown = (
  { days }: Series,
  { firstDay, lastDay, daysWithout }: ReturnType<typeof rainTotals>[number],
): number => {
  const written = days.filter(({ state }) => state !== 'blank').map(({ day }) => day);
  const [first, last] = [written.at(0), written.at(-1)];
  const inLog = days.filter(
    ({ day }) => first && last && day >= first && day <= last && day >= firstDay && day <= lastDay,
  );
  return inLog.length - daysWithout;
};

/**
 * One row for each place of a day's times, evenly spaced: a number, a state, or blank. Not part of
 * the public door.
 */
export const hourValueTable = (series: Series, told: ToldIn): ValueTable => {
  const { places, rows } = hourTimeTable(series, told);
  const rowOf = new Map(rows.map((row) => [row.place, row]));
  const day = series.days[0]?.day ?? null;
  return {
    ...tableHead(series, told),
    rows: places.map((label, place) => {
      const { exact, unit, text, state } = rowOf.get(place) ?? blankRow(told);
      return { label, day, exact, unit, text, state };
    }),
  };
};

const blankRow = ({ unit }: ToldIn): DayValue => ({ exact: null, unit, text: '', state: 'blank' });

/** What a table of values is of. Not part of the public door. */
export const tableHead = (
  { investigation }: Series,
  { unit, mark }: ToldIn,
): Omit<ValueTable, 'rows'> => ({
  ...{ form: 'values', measured: measuredWords[investigation.quantity], unit, mark },
});
