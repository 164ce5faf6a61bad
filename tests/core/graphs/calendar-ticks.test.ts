import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay, daysBetween, weekdayOf } from '#core/calendar';
import { calendarTicks } from '#core/graphs';

const ticks = (first: string, last: string, most: number) =>
  calendarTicks(civilDay(first), civilDay(last), civilDay(first), most);
const labelled = (...how: Parameters<typeof ticks>) =>
  ticks(...how).filter((tick) => tick.label.length > 0);
const words = (...how: Parameters<typeof ticks>) =>
  labelled(...how).map((tick) => tick.label.join(' '));

describe('ticks on the calendar', () => {
  it('name every day, the weekend too, while there is room', () => {
    expect(words('2026-02-26', '2026-03-04', 9)).toEqual([
      ...['Thu 26 Feb', 'Fri 27', 'Sat 28', 'Sun 1 Mar', 'Mon 2', 'Tue 3', 'Wed 4'],
    ]);
  });

  it('name every other day where there is room for half of them', () => {
    expect(words('2026-03-02', '2026-03-09', 4)).toEqual(['Mon 2 Mar', 'Wed 4', 'Fri 6', 'Sun 8']);
  });

  it('name Mondays for weeks, and keep a line for every day', () => {
    expect(words('2026-03-04', '2026-04-01', 6)).toEqual([
      ...['Mon 9 Mar', 'Mon 16 Mar', 'Mon 23 Mar', 'Mon 30 Mar'],
    ]);
    expect(ticks('2026-03-04', '2026-04-01', 6).map((tick) => tick.at)).toEqual(
      Array.from({ length: 29 }, (_, index) => index),
    );
  });

  it('stand at the true firsts of months, which are 31, 28 and 31 days apart', () => {
    const found = labelled('2026-01-01', '2026-06-20', 8);
    expect(found.map((tick) => tick.label.join(' '))).toEqual([
      ...['Jan 2026', 'Feb', 'Mar', 'Apr', 'May', 'Jun'],
    ]);
    expect(found.map((tick) => tick.at)).toEqual([0, 31, 59, 90, 120, 151]);
  });

  it('name the year where it is a new one', () => {
    expect(words('2025-11-15', '2026-02-20', 4)).toEqual(['Dec 2025', 'Jan 2026', 'Feb']);
    expect(words('2012-01-01', '2014-12-31', 6)).toEqual([
      ...['Jan 2012', 'Jul', 'Jan 2013', 'Jul', 'Jan 2014', 'Jul'],
    ]);
  });

  it('go by years for a log of nineteen years', () => {
    expect(words('2007-05-01', '2026-07-01', 6)).toEqual(['2010', '2015', '2020', '2025']);
  });

  it('never have more labels than there is room for, and always one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40_000 }),
        fc.integer({ min: 0, max: 20_000 }),
        fc.integer({ min: 4, max: 20 }),
        (start, span, most) => {
          const first = addDays(civilDay('1980-01-01'), start);
          const last = addDays(first, span);
          const found = calendarTicks(first, last, first, most);
          const named = found.filter((tick) => tick.label.length > 0);
          // Months and years are not all of one length: one more label may just fit in.
          expect(named.length).toBeLessThanOrEqual(most + 1);
          expect(named.length).toBeGreaterThanOrEqual(1);
          expect(found.every(({ at }) => at >= 0 && at <= daysBetween(first, last))).toBe(true);
        },
      ),
      { seed: 20260302, numRuns: 400 },
    );
  });

  it('put week labels on Mondays only', () => {
    const first = civilDay('2026-03-05');
    const found = calendarTicks(first, addDays(first, 40), first, 8);
    const mondays = found.filter((tick) => tick.label.length > 0);
    expect(mondays.map(({ at }) => weekdayOf(addDays(first, at)))).toEqual(mondays.map(() => 1));
  });

  it('refuse a last day before the first, and no room', () => {
    expect(() => ticks('2026-03-05', '2026-03-04', 8)).toThrow(RangeError);
    expect(() => ticks('2026-03-05', '2026-03-09', 3)).toThrow(RangeError);
  });
});
