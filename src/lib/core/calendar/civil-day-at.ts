import { civilDay, firstYear, lastYear, type CivilDay } from './civil-day';
import { dayNumberOf } from './day-number';

/**
 * The day on the wall calendar of a zone at a moment. This is the only door from clock time to
 * days; both the moment (milliseconds since 1970-01-01T00:00Z) and the zone (an IANA name such as
 * `America/Chicago`) are given by the caller. Throws a RangeError for a zone that the platform
 * does not know, and for a moment outside the years 1900 to 2199.
 * @example
 * civilDayAt(1710115200000, 'UTC') // => '2024-03-11'
 * civilDayAt(1710115200000, 'America/New_York') // => '2024-03-10'
 */
export const civilDayAt = (epochMs: number, timeZone: string): CivilDay => {
  if (!(epochMs >= earliestMs && epochMs < latestMs)) {
    throw new RangeError(`${epochMs} is not a moment in the years ${firstYear} to ${lastYear}`);
  }
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(epochMs);
  const written = (['year', 'month', 'day'] as const).map(
    (type) => parts.find((part) => part.type === type)?.value,
  );
  return civilDay(written.join('-'));
};

/** A zone can be a day away from UTC; what then falls outside the years is refused by `civilDay`. */
const msPerDay = 86_400_000;
const earliestMs = (dayNumberOf(firstYear, 1, 1) - 1) * msPerDay;
const latestMs = (dayNumberOf(lastYear + 1, 1, 1) + 1) * msPerDay;
