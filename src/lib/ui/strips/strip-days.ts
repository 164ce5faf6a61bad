import { formatDay, type CivilDay } from '#core/calendar';
import { formatMeasured } from '#core/measure';
import { dayAmount, type Series, type SeriesDay } from '#core/series';
import type { StripDay } from './strip-day';

/**
 * A series as places in a strip row: a strip for every day, from the first thing written to the
 * last. A day shows its one amount (`dayAmount`); a shadow, which is read many
 * times a day, gets a strip for each reading.
 */
export function stripDaysOf(series: Series): readonly StripDay[] {
  const written = series.days.filter((each) => each.state !== 'blank');
  const [first, last] = [written[0]?.day, written.at(-1)?.day];
  const days = series.days.filter(({ day }) => first && last && day >= first && day <= last);
  const isShadow = series.investigation.quantity === 'shadow';
  const strips = days.flatMap((day): Omit<StripDay, 'isNewest'>[] => {
    if (day.readings.length === 0) {
      return [{ ...placeWords(day.day, first), state: stateOf(day), exact: null, text: '' }];
    }
    const counted = dayAmount(series, day);
    const shown = isShadow || !counted ? day.readings : [{ counted, time: undefined }];
    return shown.map(({ counted, time }) => ({
      ...placeWords(day.day, first, time),
      ...{ state: 'number', exact: counted.exact, text: formatMeasured(counted) },
      spanDays: day.readings[0]?.spanDays ?? 1,
    }));
  });
  const newest = strips.findLastIndex((each) => each.state === 'number');
  return strips.map((each, index) => ({ ...each, isNewest: index === newest }));
}

const stateOf = ({ state }: SeriesDay): StripDay['state'] =>
  state === 'number' || state === 'word' ? 'blank' : state;

/**
 * A place is as narrow as its strip: it names the weekday and the day, and the month only where
 * the row or a month begins; a shadow's place names the weekday and the time.
 */
function placeWords(
  day: CivilDay,
  first: CivilDay | undefined,
  time?: string,
): Pick<StripDay, 'day' | 'dayInFull'> {
  const inFull = formatDay(day, 'short');
  const [weekday, dayOfMonth] = inFull.split(' ');
  if (time !== undefined) return { day: `${weekday} ${time}`, dayInFull: `${inFull} ${time}` };
  const beginsMonth = day === first || day.endsWith('-01');
  return { day: beginsMonth ? inFull : `${weekday} ${dayOfMonth}`, dayInFull: inFull };
}
