import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  civilDay,
  compareDays,
  daysBetween,
  daysFrom,
  formatDay,
  isCivilDay,
  mondayOf,
  monthOf,
  parseCivilDay,
  readDayText,
  weekdayName,
  weekdayOf,
  yearOf,
  type CivilDay,
} from '#core/calendar';
import dates from '../../reference/dates.json';
import { someDay } from './some-day';

/** Reference days: tests/reference/dates.json, made with Python's datetime and zoneinfo. */
describe('civil days on the wall calendar', () => {
  it.each(dates.civil)('counts $civil_days days from $from to $to', (given) => {
    expect(daysBetween(civilDay(given.from), civilDay(given.to))).toBe(given.civil_days);
    expect(addDays(civilDay(given.from), given.civil_days)).toBe(given.to);
  });

  it.each(dates.dst)(
    'counts $civil_days days from $from to $to, though $zone had $elapsed_hours_local_midnights hours',
    (given) => {
      expect(daysBetween(civilDay(given.from), civilDay(given.to))).toBe(given.civil_days);
    },
  );

  it.each(Object.entries(dates.leap).filter(([year]) => Number(year) >= 1900))(
    'knows whether %s has a leap day: %s',
    (year, isLeap) => {
      expect(isCivilDay(`${year}-02-29`)).toBe(isLeap);
      expect(daysBetween(civilDay(`${year}-02-28`), civilDay(`${year}-03-01`))).toBe(
        isLeap ? 2 : 1,
      );
    },
  );

  it.each(Object.entries(dates.day_of_year))('finds that %s is day %i of its year', (day, nth) => {
    expect(addDays(civilDay(`${day.slice(0, 4)}-01-01`), nth - 1)).toBe(day);
  });

  it.each(Object.entries(dates.iso_week))('places %s in week and weekday %s', (text, expected) => {
    const day = civilDay(text);
    // ISO 8601: a week belongs to the year that holds its Thursday.
    const thursday = addDays(mondayOf(day), 3);
    const dayOfYear = daysBetween(civilDay(`${yearOf(thursday)}-01-01`), thursday);
    const week = String(Math.floor(dayOfYear / 7) + 1).padStart(2, '0');
    expect(`${yearOf(thursday)}-W${week}-${weekdayOf(day)}`).toBe(expected);
  });

  it.each(dates.midnight_missing)('keeps $date, which had no midnight in $zone', ({ date }) => {
    const day = civilDay(date);
    expect(daysFrom(addDays(day, -1), addDays(day, 1))).toHaveLength(3);
    expect(daysBetween(addDays(day, -1), addDays(day, 1))).toBe(2);
  });

  it('counts a day that a zone skipped, because the wall calendar of the world has it', () => {
    // Samoa had no 30 December 2011 (tz database, Pacific/Apia).
    expect(daysBetween(civilDay('2011-12-29'), civilDay('2011-12-31'))).toBe(2);
  });

  it('falls into none of the traps of a Date', () => {
    // The traps listed in dates.json: a month that overflows, and a day that lies in UTC.
    expect(isCivilDay('2024-02-30')).toBe(false);
    expect(addDays(civilDay('2024-02-29'), 1)).toBe('2024-03-01');
    expect(monthOf(civilDay('2024-03-10'))).toBe('2024-03');
    expect(yearOf(civilDay('2024-01-01'))).toBe(2024);
  });
});

describe('reading a civil day strictly', () => {
  it.each(dates.valid)('reads %s', (text) => {
    expect(parseCivilDay(text)).toEqual({ ok: true, value: text });
  });

  it.each(dates.invalid)('refuses %j', (text) => {
    expect(parseCivilDay(text).ok).toBe(false);
    expect(isCivilDay(text)).toBe(false);
    expect(() => civilDay(text)).toThrow('is not a civil day');
  });

  it.each([
    ['2023-02-29', 'no-such-day'],
    ['2024-13-01', 'no-such-day'],
    ['2024-00-10', 'no-such-day'],
    ['2024-06-00', 'no-such-day'],
    ['2024-3-5', 'not-a-day'],
    ['24-03-05', 'not-a-day'],
    ['', 'not-a-day'],
    [' 2024-03-05', 'not-a-day'],
    ['2024-03-05\n', 'not-a-day'],
    ['2024-03-05T07:30', 'not-a-day'],
    ['٢٠٢٤-٠٣-٠٥', 'not-a-day'],
    ['1899-12-31', 'year-out-of-range'],
    ['1600-02-29', 'year-out-of-range'],
    ['2200-01-01', 'year-out-of-range'],
  ])('says of %j that it is %s', (text, kind) => {
    expect(parseCivilDay(text)).toEqual({ ok: false, error: { kind, text } });
  });

  it.each(['1900-01-01', '2199-12-31'])('reads %s, at the edge of the years', (text) => {
    expect(parseCivilDay(text).ok).toBe(true);
  });
});

describe('stepping through days', () => {
  it('refuses to step past the years it knows, or by a part of a day', () => {
    expect(() => addDays(civilDay('2199-12-31'), 1)).toThrow(RangeError);
    expect(() => addDays(civilDay('1900-01-01'), -1)).toThrow(RangeError);
    expect(() => addDays(civilDay('2026-03-09'), 0.5)).toThrow(RangeError);
    expect(() => addDays(civilDay('2026-03-09'), NaN)).toThrow(RangeError);
  });

  it('lists one day for the same first and last, and none backwards', () => {
    const day = civilDay('2026-03-09');
    expect(daysFrom(day, day)).toEqual([day]);
    expect(daysFrom(day, addDays(day, -1))).toEqual([]);
  });

  it('visits every day from 1900 to 2199 once, in order, as the platform counts them in UTC', () => {
    const all = daysFrom(civilDay('1900-01-01'), civilDay('2199-12-31'));
    const utc: string[] = [];
    for (let ms = Date.UTC(1900, 0, 1); ms <= Date.UTC(2199, 11, 31); ms += 86_400_000) {
      utc.push(new Date(ms).toISOString().slice(0, 10));
    }
    expect(all).toEqual(utc);
    const weekdaysInUtc = utc.map((day) => new Date(`${day}T00:00Z`).getUTCDay() || 7);
    expect(all.map(weekdayOf)).toEqual(weekdaysInUtc);
  });

  it('adds back what it counted, and sorts as it counts', () => {
    fc.assert(
      fc.property(someDay, someDay, (one, other) => {
        const days = daysBetween(one, other);
        expect(addDays(one, days)).toBe(other);
        expect(daysBetween(other, one) + days).toBe(0);
        expect(compareDays(other, one)).toBe(Math.sign(days));
        expect([one, other].sort()).toEqual([one, other].sort(compareDays));
      }),
      { seed: 20260309 },
    );
  });

  it('finds a Monday at most six days back', () => {
    fc.assert(
      fc.property(someDay, (day) => {
        const monday = mondayOf(day);
        expect(weekdayOf(monday)).toBe(1);
        expect(daysBetween(monday, day)).toBe(weekdayOf(day) - 1);
      }),
      { seed: 20260309 },
    );
  });
});

describe('days in English words', () => {
  it('names the days of a week', () => {
    const week = daysFrom(civilDay('2026-03-09'), civilDay('2026-03-15'));
    expect(week.map((day) => weekdayName(day, 'short')).join(' ')).toBe(
      'Mon Tue Wed Thu Fri Sat Sun',
    );
    expect(week.map((day) => weekdayName(day, 'long')).join(' ')).toBe(
      'Monday Tuesday Wednesday Thursday Friday Saturday Sunday',
    );
  });

  it('writes the day before the month, with and without the year', () => {
    expect(formatDay(civilDay('2026-03-03'), 'short')).toBe('Tue 3 Mar');
    expect(formatDay(civilDay('2026-03-03'), 'long')).toBe('Tuesday 3 March 2026');
    expect(formatDay(civilDay('2026-09-30'), 'short')).toBe('Wed 30 Sep');
  });

  it('agrees with the platform for every day of a leap year', () => {
    const days = daysFrom(civilDay('2024-01-01'), civilDay('2024-12-31'));
    const words = new Intl.DateTimeFormat('en-GB', {
      timeZone: 'UTC',
      weekday: 'long',
      day: 'numeric',
      month: 'long',
      year: 'numeric',
    });
    const said = (day: CivilDay) => words.format(new Date(`${day}T00:00Z`)).replace(',', '');
    expect(days.map((day) => formatDay(day, 'long'))).toEqual(days.map(said));
  });

  it('reads back what it wrote', () => {
    fc.assert(
      fc.property(someDay, (day) => {
        expect(readDayText(formatDay(day, 'long'))).toEqual({ ok: true, value: day });
      }),
      { seed: 20260309 },
    );
  });
});
