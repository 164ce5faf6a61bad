import { minutesIntoDay, type ClockTime } from '#core/calendar';
import { toUnit, type Unit } from '#core/measure';
import type { Series, SeriesPoint } from '#core/series';
import type { AxisTick, GraphPoint, LineGraph } from './line-graph';
import { toldMark, valueAxis } from './value-axis';

/**
 * The line graph of one day's readings by the time on the clock: along the bottom, 0 is midnight
 * and 1 is a minute. Readings without a time have no place on it. A gap longer than twice the
 * usual one of that day is `across-a-gap`, because a reading was left out there. Null when fewer
 * than one reading has a time.
 * @example
 * clockGraphOf({ specimen: { id: 'x', name: 'Stick' }, days: [], points: [] }, [], { unit: 'cm', mostTimeLabels: 8, valueSteps: 5 }) // => null
 */
export const clockGraphOf = (
  series: Series,
  readings: readonly SeriesPoint[],
  options: ClockGraphOptions,
): LineGraph | null => {
  const { unit } = options;
  const points = readings
    .flatMap((reading) => pointAt(reading, unit))
    .sort((one, other) => one.x - other.x);
  const [first] = points;
  if (!first) return null;
  const firstHour = Math.floor(first.x / hour);
  const lastHour = Math.max(Math.ceil((points.at(-1) as GraphPoint).x / hour), firstHour + 2);
  const largest = points.reduce((most, { y }) => Math.max(most, y), 0);
  return {
    along: {
      ...{ from: firstHour * hour, to: lastHour * hour },
      ticks: hourTicks(firstHour, lastHour, options.mostTimeLabels),
    },
    up: valueAxis(largest, unit, toldMark(first.reading, unit), options.valueSteps),
    lines: [
      {
        ...{ specimen: series.specimen.id, name: series.specimen.name, points },
        joins: joinsOf(points),
        ...{ extra: [], marks: [] },
      },
    ],
    ...{ trends: [], weekends: [] },
  };
};

export interface ClockGraphOptions {
  readonly unit: Unit;
  /** How many labels there is room for along the bottom, and steps up the side. */
  readonly mostTimeLabels: number;
  readonly valueSteps: number;
}

const hour = 60;

const pointAt = (reading: SeriesPoint, unit: Unit): readonly GraphPoint[] =>
  reading.time === undefined
    ? []
    : [{ x: minutesIntoDay(reading.time), y: toUnit(reading.exact, unit), reading }];

const joinsOf = (points: readonly GraphPoint[]): GraphLineJoins => {
  const gaps = points.slice(1).map(({ x }, index) => x - (points[index] as GraphPoint).x);
  const usual = [...gaps].sort((one, other) => one - other)[Math.floor((gaps.length - 1) / 2)] ?? 0;
  return gaps.map((gap) => (gap > 2 * usual ? 'across-a-gap' : 'measured'));
};

type GraphLineJoins = LineGraph['lines'][number]['joins'];

const hourTicks = (from: number, to: number, most: number): readonly AxisTick[] => {
  const step = [1, 2, 3, 4, 6].find((hours) => (to - from) / hours + 1 <= most) ?? 12;
  return Array.from({ length: to - from + 1 }, (_, index) => {
    const text = `${String(from + index).padStart(2, '0')}:00` as ClockTime;
    return { at: (from + index) * hour, label: (from + index) % step === 0 ? [text] : [] };
  });
};
