import type { CivilDay } from '#core/calendar';
import type { Reading, WeatherWord } from '#core/journal';
import { isLengthUnit } from '#core/measure';
import type { Series, SeriesPoint } from './series';

/** The lengths of a log day by day, made once so that many readings can be judged against them. */
export interface NumberHistory {
  /** In order of days; counts are left out, they cannot be held against lengths. */
  readonly days: readonly DayOfNumbers[];
}

export interface DayOfNumbers {
  readonly day: CivilDay;
  /** Every number of the day, by the time of day. */
  readonly points: readonly SeriesPoint[];
  /** The middle one by size; of an even number, the lower of the two in the middle. */
  readonly middle: SeriesPoint;
  /** The words for the weather that were written with them. */
  readonly weather: readonly WeatherWord[];
}

export function numberHistory({ points, days: written }: Series): NumberHistory {
  const byDay = new Map<CivilDay, SeriesPoint[]>();
  for (const point of points) {
    if (!isLengthUnit(point.unit)) continue;
    const known = byDay.get(point.day);
    if (known) known.push(point);
    else byDay.set(point.day, [point]);
  }
  const weatherByDay = new Map(written.map(({ day, readings }) => [day, weatherOf(readings)]));
  const days = [...byDay].map(([day, ofDay]): DayOfNumbers => {
    const weather = weatherByDay.get(day) ?? [];
    return { day, points: ofDay, middle: middleOf(ofDay), weather };
  });
  return { days: days.sort((left, right) => (left.day < right.day ? -1 : 1)) };
}

/** No rule of doubt looks further back than this many days with a number. */
const lookedBack = 6;

/** The last few days with a number before a day, the latest last. */
export const daysBefore = (history: NumberHistory, day: CivilDay): readonly DayOfNumbers[] => {
  const from = placeOf(history, day);
  return history.days.slice(Math.max(0, from - lookedBack), from);
};

/** The numbers of one day; none where it has none. */
export const numbersOn = (history: NumberHistory, day: CivilDay): readonly SeriesPoint[] => {
  const found = history.days[placeOf(history, day)];
  return found?.day === day ? found.points : [];
};

/** The place of the first day that is not before the one given, found by halving. */
function placeOf({ days }: NumberHistory, day: CivilDay): number {
  let low = 0;
  let high = days.length;
  while (low < high) {
    const between = (low + high) >> 1;
    if (days[between]!.day < day) low = between + 1;
    else high = between;
  }
  return low;
}

const middleOf = (points: readonly SeriesPoint[]): SeriesPoint => {
  const inOrder = [...points].sort((left, right) => left.exact - right.exact);
  return inOrder[Math.floor((inOrder.length - 1) / 2)]!;
};

const weatherOf = (readings: readonly Reading[]): readonly WeatherWord[] =>
  readings.flatMap(({ weather }) => (weather === undefined ? [] : [weather]));
