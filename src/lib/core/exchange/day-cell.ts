import { failed, ok, type Result } from '#core/base';
import {
  addDays,
  civilDay,
  daysBetween,
  parseClockTime,
  readDayText,
  type CivilDay,
  type ClockTime,
} from '#core/calendar';
import type { Cell } from './import-cell';
import type { DayAnchor, ImportMapping } from './import-mapping';
import type { Refusal } from './row-content';

export interface Moment {
  readonly day: CivilDay;
  readonly time?: ClockTime;
}

/**
 * The day of a row, and the time where there is one: in a column of its own, or behind the date.
 * Midnight with seconds (00:00:00) is how spreadsheets write a date without a time.
 */
export function readMoment(cell: Cell, { days }: ImportMapping): Result<Moment, Refusal> {
  const read = cell('day');
  if (read === '') return failed({ kind: 'no-day' });
  const ownTime = cell('time');
  const time = ownTime === '' ? null : parseClockTime(ownTime);
  if (time && !time.ok) return failed({ kind: 'time', read: ownTime, error: time.error });
  if (days.as === 'number') {
    const day = dayOfNumber(read, days.anchor);
    return day.ok ? ok({ day: day.value, ...(time ? { time: time.value } : {}) }) : day;
  }
  const day = readDayText(read, days.order ?? undefined);
  if (!day.ok) return failed({ kind: 'day', read, error: day.error });
  const told = time?.value ?? timeBehind(read);
  return ok({ day: day.value, ...(told ? { time: told } : {}) });
}

/** A day's number is whole, may be written "day 7", and must lead to a day of the calendar. */
function dayOfNumber(read: string, anchor: DayAnchor | null): Result<CivilDay, Refusal> {
  const digits = /^(?:days?\s*)?(-?\d{1,6})(?:\.0*)?$/i.exec(read)?.[1];
  if (digits === undefined || anchor === null) return failed({ kind: 'day-number', read });
  const shift = Number(digits) - anchor.number;
  const isInCalendar =
    shift >= daysBetween(anchor.day, civilDay('1900-01-01')) &&
    shift <= daysBetween(anchor.day, civilDay('2199-12-31'));
  return isInCalendar ? ok(addDays(anchor.day, shift)) : failed({ kind: 'day-number', read });
}

const clockBehind =
  /[T\s](\d{1,2}[:.]\d{2}(?::\d{2})?(?:\s*[ap]\.?\s?m\.?)?)(?:[.,]\d+)?\s*(?:Z|[+-]\d{2}(?::?\d{2})?)?$/i;

function timeBehind(read: string): ClockTime | null {
  const written = clockBehind.exec(read)?.[1];
  if (written === undefined || written === '00:00:00') return null;
  const time = parseClockTime(written);
  return time.ok ? time.value : null;
}
