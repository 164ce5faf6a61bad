import { failed, ok, type Result } from '#core/base';
import { civilDayOf, type CivilDay } from './civil-day';
import { weekdayOf } from './weekday';
import { writtenDayOf } from './written-day';

/** Which number comes first where a day is written in numbers with the year last. */
export type DayOrder = 'day-first' | 'month-first';

/**
 * Reads a day as people type it and as tables carry it: `2026-03-09`, `2026/3/9`, `20260309`,
 * `9 Mar 2026`, `Monday 9 March 2026`, `March 9, 2026`, `9.3.2026`, `3/9/2026`. A time after the
 * day is let go, and so is its zone: the day is the one that was written. English names only.
 *
 * Nothing is guessed. Errors:
 * `ambiguous-order` - both orders give a day, and no order was given; both days are offered;
 * `no-such-day` - 31 April, or a day only the other order has (then offered in `otherOrder`);
 * `two-digit-year`; `year-out-of-range` (before 1900 or after 2199);
 * `wrong-weekday` - the weekday written beside it is another one; `not-a-day` - anything else.
 * @example
 * readDayText('March 9, 2026') // => { ok: true, value: '2026-03-09' }
 * readDayText('3/9/2026', 'month-first') // => { ok: true, value: '2026-03-09' }
 * readDayText('13/9/2026') // => { ok: true, value: '2026-09-13' }
 * readDayText('3/9/26') // => { ok: false, error: { kind: 'two-digit-year', text: '3/9/26' } }
 */
export const readDayText = (text: string, order?: DayOrder): Result<CivilDay, DayTextError> => {
  const written = writtenDayOf(text);
  if (!written) return failed({ kind: 'not-a-day', text });
  if (written.form === 'two-digit-year') return failed({ kind: 'two-digit-year', text });
  if (written.form === 'plain') {
    const made = civilDayOf(written.year, written.month, written.dayOfMonth);
    if (!made.ok) return failed({ kind: made.error.kind, text });
    return written.weekdayIndex === undefined || written.weekdayIndex + 1 === weekdayOf(made.value)
      ? made
      : failed({ kind: 'wrong-weekday', text, day: made.value });
  }

  const { first, second, year } = written;
  const dayFirst = civilDayOf(year, second, first);
  const monthFirst = civilDayOf(year, first, second);
  if (order) {
    const [asked, other] = order === 'day-first' ? [dayFirst, monthFirst] : [monthFirst, dayFirst];
    if (asked.ok) return asked;
    return failed({
      kind: asked.error.kind,
      text,
      ...(other.ok ? { otherOrder: other.value } : {}),
    });
  }
  if (dayFirst.ok && monthFirst.ok) {
    return dayFirst.value === monthFirst.value
      ? dayFirst
      : failed({
          kind: 'ambiguous-order',
          text,
          dayFirst: dayFirst.value,
          monthFirst: monthFirst.value,
        });
  }
  if (dayFirst.ok) return ok(dayFirst.value);
  return monthFirst.ok ? monthFirst : failed({ kind: monthFirst.error.kind, text });
};

export type DayTextError =
  | { readonly kind: 'not-a-day' | 'two-digit-year'; readonly text: string }
  | {
      readonly kind: 'no-such-day' | 'year-out-of-range';
      readonly text: string;
      /** The day it would be if the two numbers were taken in the other order. */
      readonly otherOrder?: CivilDay;
    }
  | { readonly kind: 'wrong-weekday'; readonly text: string; readonly day: CivilDay }
  | {
      readonly kind: 'ambiguous-order';
      readonly text: string;
      readonly dayFirst: CivilDay;
      readonly monthFirst: CivilDay;
    };
