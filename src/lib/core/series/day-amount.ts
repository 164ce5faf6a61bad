import { middleReading } from '#core/journal';
import type { Measured } from '#core/measure';
import { formatExactNumber } from '#core/measure';
import type { Series, SeriesDay } from './series';

/**
 * The one amount that stands for a day: the middle reading where a thing was read several times;
 * the sum where rain was, because the gauge is emptied at each reading (in the unit and mark of
 * the first). Null for a day without a number.
 * @example
 * dayAmount({ investigation: { quantity: 'rain' } }, { readings: [] }) // => null
 */
export function dayAmount(
  series: Pick<Series, 'investigation'>,
  day: Pick<SeriesDay, 'readings'>,
): Measured | null {
  const [first, ...more] = day.readings.map((reading) => reading.counted);
  if (!first) return null;
  if (series.investigation.quantity !== 'rain' || more.length === 0) {
    return middleReading([first, ...more]);
  }
  const exact = more.reduce((sum, reading) => sum + reading.exact, first.exact);
  return { ...first, exact, text: formatExactNumber(exact, first.unit, first.mark) };
}
