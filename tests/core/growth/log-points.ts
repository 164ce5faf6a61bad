import { addDays, civilDay, type CivilDay } from '#core/calendar';
import type { GrowthPoint } from '#core/growth';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';
import growth from '../../reference/growth.json';
import logs from '../../reference/logs.json';

/** A reading of a log: a day, a plain number and its unit, read to the mark. */
export const point = (day: string, value: number, unit: Unit, mark: MarkId): GrowthPoint =>
  Object.freeze({
    day: civilDay(day),
    // The nearest whole exact number: 6.35 cm is 63 500 000 nm, though 6.35 is no double.
    exact: Math.round(value * exactPerUnit(unit)),
    unit,
    mark,
  });

/** Readings on the days so long after the first one. */
export const pointsOn = (
  days: readonly number[],
  values: readonly number[],
  unit: Unit = 'cm',
  mark: MarkId = '1 cm',
  first: CivilDay = civilDay('2026-03-02'),
): readonly GrowthPoint[] =>
  Object.freeze(
    days.map((day, index) => point(addDays(first, day), values[index] as number, unit, mark)),
  );

/** The small logs of tests/reference/logs.json: exact rational arithmetic, checked with R's lm. */
export const smallLogs = logs.logs.map((log) => ({
  name: log.name,
  unit: log.result_unit as Unit,
  xs: log.days_since_first,
  ys: log.values.map(Number),
  points: Object.freeze(
    log['rows (date,value,unit)'].map(([day = '', text = '', unit]) =>
      point(day, readNumber(text), unit as Unit, unit === 'in' ? '1/4 in' : '0.1 mm'),
    ),
  ),
  expected: log,
}));

export const smallLog = (name: string) => {
  const log = smallLogs.find((each) => each.name === name);
  if (!log) throw new Error(`There is no log called ${name}`);
  return log;
};

/**
 * The real series of tests/reference/growth.json, each with its primary source there; figures in
 * exact rational arithmetic, agreeing with R's lm and scipy.
 */
export const realSeries = growth.series.map((series) => ({
  label: series.label,
  xs: series.x.map(Number),
  ys: series.y.map(Number),
  expected: series,
}));

const unitByText: Readonly<Record<string, Unit>> = {
  cm: 'cm',
  mm: 'mm',
  'mm (trunk circumference)': 'mm',
  ft: 'ft',
  g: 'count',
};

/**
 * The real series that lie on whole steps of time, laid out on the calendar with a day for a step
 * (a year of the pines and the children stands as a day here, and a gram as a thing).
 */
export const realLogs = realSeries
  .filter(({ xs }) => xs.every(Number.isInteger))
  .map((series) => {
    const unit = unitByText[series.expected.y_unit];
    if (!unit) throw new Error(`${series.expected.y_unit} is not known`);
    return {
      ...series,
      unit,
      points: pointsOn(
        series.xs,
        series.ys,
        unit,
        unit === 'count' ? '1' : '0.1 mm',
        civilDay('1968-12-31'),
      ),
    };
  });

export const sunflower = realLogs.find(({ label }) => label.startsWith('Sunflower'))!;

function readNumber(text: string): number {
  return text
    .split(' ')
    .map((part) => part.split('/').map(Number) as [number, number?])
    .reduce((sum, [top, bottom = 1]) => sum + top / bottom, 0);
}
