import { civilDayAt, type CivilDay } from '#core/calendar';
import { momentOfStamp, type Stamp } from '#core/journal';

/**
 * The day a line was written on, where the family is; null for a stamp from a device whose clock
 * stands in another century.
 */
export function writtenDay(stamp: Stamp, timeZone: string): CivilDay | null {
  const year = Number(stamp.slice(0, 4));
  if (year < 1970 || year >= 2199) return null;
  return civilDayAt(momentOfStamp(stamp), timeZone);
}
