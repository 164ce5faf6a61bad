import type { CivilDay } from '#core/calendar';
import type { SeriesPoint } from '#core/series';

/** One day of a shadow's log. */
export interface ShadowDay {
  readonly day: CivilDay;
  /** In order of time, those without a time last. */
  readonly readings: readonly SeriesPoint[];
  /** The shortest, more than one when they are equal; none while there are fewer than three. */
  readonly shortest: readonly SeriesPoint[];
}

/**
 * A shadow's readings day by day, in order. Each day stands alone: a shadow is compared through
 * the hours of one day, not over days. The shortest is named from three readings with a time on,
 * because two cannot show "long, short, long" (common practice, no source).
 * @example
 * shadowDays([{ day: '2026-06-01', time: '09:00', exact: 9 }, { day: '2026-06-01', time: '12:00', exact: 4 }, { day: '2026-06-01', time: '15:00', exact: 8 }])[0].shortest // => [{ day: '2026-06-01', time: '12:00', exact: 4 }]
 */
export const shadowDays = (points: readonly SeriesPoint[]): readonly ShadowDay[] => {
  const byDay = new Map<CivilDay, SeriesPoint[]>();
  for (const point of points) byDay.set(point.day, [...(byDay.get(point.day) ?? []), point]);
  return [...byDay]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([day, readings]) => ({
      day,
      readings: readings.sort(byTime),
      shortest: shortestOf(readings),
    }));
};

const shortestOf = (readings: readonly SeriesPoint[]): readonly SeriesPoint[] => {
  const timed = readings.filter(({ time }) => time !== undefined);
  if (timed.length < 3) return [];
  const least = Math.min(...timed.map(({ exact }) => exact));
  return timed.filter(({ exact }) => exact === least);
};

const byTime = (one: SeriesPoint, other: SeriesPoint): number => {
  if (one.time === other.time) return 0;
  return (one.time ?? '99:99') < (other.time ?? '99:99') ? -1 : 1;
};
