import { daysBetween, type CivilDay } from '#core/calendar';
import type { EntryId } from '#core/journal';
import type { Series, SeriesDay } from './series';

/**
 * The series as it would be without some of its readings, so that a grown-up can be told a trend
 * "with and without Tuesday". Nothing of the log changes; a day left without a number is what its
 * other lines make it.
 *
 * @example
 * withoutReadings({ days: [], points: [{ reading: 'a' }, { reading: 'b' }] }, new Set(['a'])).points // => [{ reading: 'b' }]
 */
export function withoutReadings(series: Series, ids: ReadonlySet<EntryId>): Series {
  if (ids.size === 0) return series;
  let lastNumberDay: CivilDay | null = null;
  const days = series.days.map((day): SeriesDay => {
    const readings = day.readings.filter((reading) => !ids.has(reading.id));
    const state = day.state === 'number' && readings.length === 0 ? stateWithout(day) : day.state;
    const isNumber = state === 'number';
    const gapDays = isNumber && lastNumberDay ? daysBetween(lastNumberDay, day.day) : null;
    if (isNumber) lastNumberDay = day.day;
    return { ...day, readings, state, gapDays };
  });
  return { ...series, days, points: series.points.filter((point) => !ids.has(point.reading)) };
}

const stateWithout = ({ words, marks }: SeriesDay): SeriesDay['state'] =>
  words.length > 0 ? 'word' : (marks.at(-1)?.state ?? 'blank');
