import { formatDay } from '#core/calendar';
import { middleReading } from '#core/journal';
import { formatMeasured } from '#core/measure';
import type { Series } from '#core/series';
import type { StripDay } from './strip-day';

/**
 * A series as places in a strip row: a strip for every day, from the first thing written to the
 * last. A day that was read several times shows its middle reading; a shadow, which is read many
 * times a day, gets a strip for each reading.
 */
export function stripDaysOf(series: Series): readonly StripDay[] {
  const written = series.days.filter((each) => each.state !== 'blank');
  const [first, last] = [written[0]?.day, written.at(-1)?.day];
  const shown = series.days.filter(({ day }) => first && last && day >= first && day <= last);
  const strips = shown.flatMap((day): Omit<StripDay, 'isNewest'>[] => {
    const label = formatDay(day.day, 'short');
    const [reading, ...more] = day.readings;
    if (!reading) {
      const state = day.state === 'number' || day.state === 'word' ? 'blank' : day.state;
      return [{ day: label, state, exact: null, text: '' }];
    }
    const strip = (measured: typeof reading.counted, time?: string) => ({
      day: time ? `${label} ${time}` : label,
      state: 'number' as const,
      exact: measured.exact,
      text: formatMeasured(measured),
      spanDays: reading.spanDays,
    });
    if (series.investigation.quantity === 'shadow') {
      return day.readings.map((each) => strip(each.counted, each.time));
    }
    return [strip(middleReading([reading.counted, ...more.map((each) => each.counted)]))];
  });
  const newest = strips.findLastIndex((each) => each.state === 'number');
  return strips.map((each, index) => ({ ...each, isNewest: index === newest }));
}
