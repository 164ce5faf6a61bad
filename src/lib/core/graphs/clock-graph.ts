import { minutesIntoDay, type CivilDay, type ClockTime } from '#core/calendar';
import { toUnit, type Unit } from '#core/measure';
import type { Series, SeriesPoint } from '#core/series';
import type { AxisTick, BaseMark, GraphJoin, GraphPoint, LineGraph } from './line-graph';
import { toldMark, valueAxis } from './value-axis';

/**
 * The line graph of one day's readings by the time on the clock: along the bottom, 0 is midnight
 * and 1 is a minute. Readings without a time have no place on it. A join is `across-a-gap` where a
 * state was written for a time in between (no sun), and where the gap is twice the usual one of
 * that day or more, because a reading was left out there; three gaps or more make one usual. Null
 * when no reading has a time.
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
  const marks = marksOf(series, first.reading.day);
  const places = [...points, ...marks].map(({ x }) => x);
  const firstHour = Math.floor(Math.min(...places) / hour);
  const lastHour = Math.max(Math.ceil(Math.max(...places) / hour), firstHour + 2);
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
        joins: joinsOf(points, marks),
        ...{ extra: [], marks },
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

/** What was written for a time of the day, without a number. */
const marksOf = ({ days }: Series, day: CivilDay): readonly BaseMark[] =>
  (days.find((each) => each.day === day)?.marks ?? []).flatMap(({ time, state }) =>
    time === undefined ? [] : [{ x: minutesIntoDay(time), day, state }],
  );

const joinsOf = (
  points: readonly GraphPoint[],
  marks: readonly BaseMark[],
): readonly GraphJoin[] => {
  const gaps = points.slice(1).map(({ x }, index) => x - (points[index] as GraphPoint).x);
  const middle = [...gaps].sort((one, other) => one - other)[Math.floor((gaps.length - 1) / 2)];
  const usual = middle !== undefined && gaps.length >= 3 ? middle : Infinity;
  return gaps.map((gap, index) => {
    const from = (points[index] as GraphPoint).x;
    const isMarked = marks.some(({ x }) => x > from && x < from + gap);
    return isMarked || gap >= 2 * usual ? 'across-a-gap' : 'measured';
  });
};

const hourTicks = (from: number, to: number, most: number): readonly AxisTick[] => {
  const step = [1, 2, 3, 4, 6].find((hours) => (to - from) / hours + 1 <= most) ?? 12;
  return Array.from({ length: to - from + 1 }, (_, index) => {
    const text = `${String(from + index).padStart(2, '0')}:00` as ClockTime;
    return { at: (from + index) * hour, label: (from + index) % step === 0 ? [text] : [] };
  });
};
