import { addDays, daysBetween, weekdayOf, type CivilDay } from '#core/calendar';
import { onePointPerDay, type Trend } from '#core/growth';
import { toUnit, type Unit } from '#core/measure';
import type { Series, SeriesDay, SeriesPoint } from '#core/series';
import { calendarTicks } from './calendar-ticks';
import type {
  BaseMark,
  GraphJoin,
  GraphLine,
  GraphPoint,
  GraphTrend,
  LineGraph,
} from './line-graph';
import { toldMark, valueAxis } from './value-axis';

/** What a time graph is drawn of: a series, and which of its points are shown. */
export interface TimeGraphLine {
  readonly series: Series;
  /** All of one kind (lengths, or counts), as `comparablePoints` leaves them. */
  readonly points: readonly SeriesPoint[];
}

export interface TimeGraphOptions {
  readonly unit: Unit;
  /** How many labels there is room for along the bottom (4 or more) and up the side. */
  readonly mostDayLabels: number;
  readonly valueSteps: number;
  /** The trend whose lines are drawn, and which of them; of the first series. */
  readonly trend?: Trend;
  readonly trendKinds?: readonly GraphTrend['kind'][];
}

/**
 * The line graph of one log over the calendar, or of several in one. Days not measured keep their
 * place. One point is joined for each day (the middle one, where a day has several; the others are
 * `extra`). A join is `measured` where no planned day lies in between without a number and nothing
 * else was written there; over a missed or blank planned day it is `across-a-gap`. Trend lines
 * reach from the first reading to the last and no further.
 *
 * Along the bottom, 0 is the first day anything was written, and 1 is a day. A graph is at least
 * a week wide. Null when there is no point at all.
 * @example
 * timeGraphOf([], { unit: 'cm', mostDayLabels: 9, valueSteps: 5 }) // => null
 */
export const timeGraphOf = (
  lines: readonly TimeGraphLine[],
  options: TimeGraphOptions,
): LineGraph | null => {
  const shown = lines.filter(({ points }) => points.length > 0);
  const [chosen] = shown;
  if (!chosen) return null;
  const written = shown.flatMap(({ series, points }) => writtenDays(series, points)).sort();
  const origin = written[0] as CivilDay;
  const lastX = Math.max(daysBetween(origin, written.at(-1) as CivilDay), shortestSpanDays);
  const { unit } = options;
  const graphLines = shown.map((line) => lineOf(line, origin, unit));
  const trends = trendsOf(options, origin);
  const largest = Math.max(
    ...graphLines.map(({ points, extra }) => largestOf([...points, ...extra])),
    ...trends.flatMap(({ from, to }) => [from.y, to.y]),
  );
  const lastDay = addDays(origin, lastX);
  return {
    along: {
      ...{ from: -0.5, to: lastX + 0.5 },
      ticks: calendarTicks(origin, lastDay, origin, options.mostDayLabels),
    },
    up: valueAxis(
      largest,
      unit,
      toldMark(chosen.points.at(-1) as SeriesPoint, unit),
      options.valueSteps,
    ),
    ...{ lines: graphLines, trends, weekends: weekendsOf(origin, lastX) },
  };
};

const shortestSpanDays = 6;
const weekendsUpToDays = 70;

/** The days from the first line of the log to its last; not the blank ones after it. */
const writtenDays = ({ days }: Series, points: readonly SeriesPoint[]): readonly CivilDay[] => [
  ...days.filter((day) => day.state !== 'blank' && day.state !== 'word').map(({ day }) => day),
  ...points.map(({ day }) => day),
];

const lineOf = ({ series, points }: TimeGraphLine, origin: CivilDay, unit: Unit): GraphLine => {
  const joined = onePointPerDay(points);
  const isJoined = new Set(joined);
  const pointOf = (reading: SeriesPoint): GraphPoint => ({
    x: daysBetween(origin, reading.day),
    y: toUnit(reading.exact, unit),
    reading,
  });
  return {
    ...{ specimen: series.specimen.id, name: series.specimen.name },
    points: joined.map(pointOf),
    joins: joinsOf(joined, series.days),
    extra: points.filter((point) => !isJoined.has(point)).map(pointOf),
    marks: series.days.flatMap((day) => baseMarkOf(day, origin)),
  };
};

const joinsOf = (
  points: readonly SeriesPoint[],
  days: readonly SeriesDay[],
): readonly GraphJoin[] => {
  const [first] = days;
  const isMissed = missedDays(days);
  return points.slice(1).map((to, index) => {
    const from = points[index] as SeriesPoint;
    if (!first) return 'across-a-gap';
    const between = isMissed.slice(
      daysBetween(first.day, from.day) + 1,
      daysBetween(first.day, to.day),
    );
    return between.some(Boolean) ? 'across-a-gap' : 'measured';
  });
};

/** A day that was planned, or that something was written for, and that has no number. */
const missedDays = (days: readonly SeriesDay[]): readonly boolean[] => {
  // A log without a plan has no rhythm to fit a gap: every day without a number is one.
  const hasPlan = days.some((day) => day.planned);
  return days.map(
    (day) => day.state !== 'number' && (day.planned || !hasPlan || day.state !== 'blank'),
  );
};

const baseMarkOf = (day: SeriesDay, origin: CivilDay): readonly BaseMark[] => {
  if (day.state === 'number' || day.state === 'word' || day.state === 'blank') return [];
  return [{ x: daysBetween(origin, day.day), day: day.day, state: day.state }];
};

const trendsOf = (
  { trend, trendKinds = [] }: TimeGraphOptions,
  origin: CivilDay,
): readonly GraphTrend[] => {
  if (!trend) return [];
  const firstX = daysBetween(origin, trend.firstDay);
  return trendKinds.map((kind) => {
    const line = kind === 'least-squares' ? trend.leastSquares : trend.medianOfSlopes;
    return {
      kind,
      from: { x: firstX, y: line.onFirstDay },
      to: {
        x: firstX + trend.spanDays,
        y: line.onFirstDay + line.growthPerDay * trend.spanDays,
      },
    };
  });
};

const weekendsOf = (origin: CivilDay, lastX: number): LineGraph['weekends'] => {
  if (lastX > weekendsUpToDays) return [];
  const firstSaturday = 6 - weekdayOf(origin);
  const count = Math.floor((lastX - firstSaturday) / 7) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, week) => {
    const saturday = firstSaturday + 7 * week;
    return {
      from: Math.max(saturday - 0.5, -0.5),
      to: Math.min(saturday + 1.5, lastX + 0.5),
    };
  });
};

const largestOf = (points: readonly GraphPoint[]): number =>
  points.reduce((largest, { y }) => Math.max(largest, y), 0);
