import { parseClockTime, type ClockTime } from './clock-time';

/**
 * The time of day on the wall clock of a zone at a moment, to the minute. Both the moment
 * (milliseconds since 1970-01-01T00:00Z) and the zone (an IANA name) are given by the caller.
 * Throws a RangeError for a zone that the platform does not know.
 * @example
 * clockTimeAt(1710115200000, 'UTC') // => '00:00'
 * clockTimeAt(1710115200000, 'Asia/Kathmandu') // => '05:45'
 */
export function clockTimeAt(epochMs: number, timeZone: string): ClockTime {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(epochMs);
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? '';
  const time = parseClockTime(`${part('hour')}:${part('minute')}`);
  if (!time.ok) throw new Error('The platform wrote a time of day in a form of its own');
  return time.value;
}
