import { failed, ok, type Brand, type Result } from '#core/base';

/**
 * A time of day on a wall clock, written `07:30`, midnight `00:00` to `23:59`. It says nothing
 * about a zone. Times sort as text.
 */
export type ClockTime = Brand<string, 'ClockTime'>;

/**
 * Reads a time of day as people write it: `7:30`, `7.30`, `07:30:15` (the seconds are read and let
 * go), `19:05`, `7:30 am`, `7.30 p.m.`, `7 pm`. Without am or pm the 24-hour clock is meant. A
 * number alone (`7`) is not a time. 12 am is midnight and 12 pm is noon, by common practice.
 * Errors: `not-a-time` (not written so), `no-such-time` (25:00, 13:30 pm).
 * @example
 * parseClockTime('7:30') // => { ok: true, value: '07:30' }
 * parseClockTime('7:30 pm') // => { ok: true, value: '19:30' }
 * parseClockTime('25:00') // => { ok: false, error: { kind: 'no-such-time', text: '25:00' } }
 */
export const parseClockTime = (text: string): Result<ClockTime, ClockTimeError> => {
  const read = clockPattern.exec(text.trim());
  const half = read?.[4]?.toLowerCase();
  if (!read || (read[2] === undefined && half === undefined)) {
    return failed({ kind: 'not-a-time', text });
  }
  const hour = Number(read[1]);
  const minute = Number(read[2] ?? '0');
  const second = Number(read[3] ?? '0');
  const hourExists = half === undefined ? hour <= 23 : hour >= 1 && hour <= 12;
  if (!hourExists || minute > 59 || second > 59) return failed({ kind: 'no-such-time', text });
  const hourOfDay = half === undefined ? hour : (hour % 12) + (half === 'p' ? 12 : 0);
  return ok([hourOfDay, minute].map(twoDigits).join(':') as ClockTime);
};

/**
 * Whether unknown text is a time of day written strictly `HH:MM`.
 * @example
 * isClockTime('07:30') // => true
 * isClockTime('7:30') // => false
 */
export const isClockTime = (text: string): text is ClockTime =>
  /^([01]\d|2[0-3]):[0-5]\d$/.test(text);

/**
 * Whole minutes from midnight to the time on the clock face, 0 to 1439.
 * @example
 * minutesIntoDay('07:30') // => 450
 */
export const minutesIntoDay = (time: ClockTime): number =>
  60 * Number(time.slice(0, 2)) + Number(time.slice(3, 5));

const clockPattern = /^(\d{1,2})(?:[:.](\d{2})(?::(\d{2}))?)?(?:\s*([ap])(?:m|\.\s?m\.))?$/i;

const twoDigits = (value: number): string => String(value).padStart(2, '0');

export interface ClockTimeError {
  readonly kind: 'not-a-time' | 'no-such-time';
  readonly text: string;
}
