import { failed, ok, type Brand, type Result } from '#core/base';
import { daysInMonth } from './day-number';

/**
 * A day on the wall calendar, written `2026-03-09`. It has no time zone and no length in hours:
 * a reading belongs to the day it was taken, wherever and whenever it is looked at later.
 * Invariant: a day that exists in the Gregorian calendar, in the years 1900 to 2199, so that days
 * sort as text.
 */
export type CivilDay = Brand<string, 'CivilDay'>;

export const firstYear = 1900;
export const lastYear = 2199;

/**
 * Reads a day written strictly as `YYYY-MM-DD` (ISO 8601-1:2019, calendar date, extended form).
 * Spaces, short forms and other orders are refused here; `readDayText` reads what people write.
 * Errors: `not-a-day` (not written so), `no-such-day` (31 April), `year-out-of-range`.
 * @example
 * parseCivilDay('2024-02-29') // => { ok: true, value: '2024-02-29' }
 * parseCivilDay('2023-02-29') // => { ok: false, error: { kind: 'no-such-day', text: '2023-02-29' } }
 * parseCivilDay('2024-3-5') // => { ok: false, error: { kind: 'not-a-day', text: '2024-3-5' } }
 */
export const parseCivilDay = (text: string): Result<CivilDay, CivilDayError> => {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return failed({ kind: 'not-a-day', text });
  const made = civilDayOf(
    Number(text.slice(0, 4)),
    Number(text.slice(5, 7)),
    Number(text.slice(8, 10)),
  );
  return made.ok ? made : failed({ kind: made.error.kind, text });
};

/**
 * Whether unknown text is a civil day written `YYYY-MM-DD`.
 * @example
 * isCivilDay('2026-03-09') // => true
 * isCivilDay('2026-02-30') // => false
 */
export const isCivilDay = (text: string): text is CivilDay => parseCivilDay(text).ok;

/**
 * A civil day from a literal of the program. Throws when it is not one: use `parseCivilDay` for
 * text from outside.
 * @example
 * civilDay('2026-03-09') // => '2026-03-09'
 */
export const civilDay = (text: string): CivilDay => {
  const parsed = parseCivilDay(text);
  if (!parsed.ok)
    throw new Error(`${JSON.stringify(text)} is not a civil day (${parsed.error.kind})`);
  return parsed.value;
};

/** The day of three whole numbers; months and days count from 1. Not part of the public door. */
export const civilDayOf = (
  year: number,
  month: number,
  dayOfMonth: number,
): Result<CivilDay, { readonly kind: 'no-such-day' | 'year-out-of-range' }> => {
  if (year < firstYear || year > lastYear) return failed({ kind: 'year-out-of-range' });
  if (month < 1 || month > 12) return failed({ kind: 'no-such-day' });
  if (dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) {
    return failed({ kind: 'no-such-day' });
  }
  const written = [String(year), twoDigits(month), twoDigits(dayOfMonth)].join('-');
  return ok(written as CivilDay);
};

const twoDigits = (value: number): string => String(value).padStart(2, '0');

export interface CivilDayError {
  readonly kind: 'not-a-day' | 'no-such-day' | 'year-out-of-range';
  readonly text: string;
}
