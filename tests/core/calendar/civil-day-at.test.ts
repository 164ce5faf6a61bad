import { describe, expect, it } from 'vitest';
import { addDays, civilDay, civilDayAt } from '#core/calendar';
import dates from '../../reference/dates.json';

const momentAt = (text: string): number => {
  const epochMs = Date.parse(text);
  if (Number.isNaN(epochMs)) throw new Error(`${text} is not a moment`);
  return epochMs;
};

/** Offsets from UTC at the first local midnight of each case (tz database). */
const offsetByZoneAndDay: Record<string, string> = {
  'America/New_York 2024-03-10': '-05:00',
  'America/New_York 2024-11-03': '-04:00',
  'America/Chicago 2024-03-09': '-06:00',
  'America/Los_Angeles 2024-11-02': '-07:00',
  'Europe/London 2025-03-30': '+00:00',
  'Australia/Lord_Howe 2024-10-06': '+10:30',
  'America/Phoenix 2024-07-01': '-07:00',
};

describe('the civil day at a moment', () => {
  it.each(dates.dst)('turns at midnight in $zone on $from and again on $to', (given) => {
    const offset = offsetByZoneAndDay[`${given.zone} ${given.from}`];
    const begins = momentAt(`${given.from}T00:00:00${offset}`);
    // Hours between the two local midnights: dates.json, from Python's zoneinfo.
    const ends = begins + given.elapsed_hours_local_midnights * 3_600_000;
    expect(civilDayAt(begins, given.zone)).toBe(given.from);
    expect(civilDayAt(begins - 1, given.zone)).toBe(addDays(civilDay(given.from), -1));
    expect(civilDayAt(ends, given.zone)).toBe(given.to);
    expect(civilDayAt(ends - 1, given.zone)).toBe(addDays(civilDay(given.to), -1));
  });

  it.each(dates.midnight_missing)('begins $date at one o’clock in $zone', (given) => {
    const begins = momentAt(given['round_trip_of_00:00']);
    expect(civilDayAt(begins, given.zone)).toBe(given.date);
    expect(civilDayAt(begins - 1, given.zone)).toBe(addDays(civilDay(given.date), -1));
  });

  it.each([
    // tz database: Samoa went from UTC-10 to UTC+14 at the end of 29 December 2011.
    ['Pacific/Apia', '2011-12-30T10:00:00Z', '2011-12-29', '2011-12-31'],
    // tz database: the Line Islands went from UTC-10 to UTC+14 at the end of 30 December 1994.
    ['Pacific/Kiritimati', '1994-12-31T10:00:00Z', '1994-12-30', '1995-01-01'],
  ])('skips a day where %s crossed the date line', (zone, moment, before, after) => {
    expect(civilDayAt(momentAt(moment) - 1, zone)).toBe(before);
    expect(civilDayAt(momentAt(moment), zone)).toBe(after);
  });

  it('is today in New York on an evening that is tomorrow in UTC', () => {
    // The trap of cutting the day out of an ISO string, listed in dates.json.
    const evening = momentAt('2024-03-10T20:00:00-04:00');
    expect(civilDayAt(evening, 'America/New_York')).toBe('2024-03-10');
    expect(civilDayAt(evening, 'UTC')).toBe('2024-03-11');
    expect(civilDayAt(evening, 'Pacific/Kiritimati')).toBe('2024-03-11');
  });

  it('is given in the years 1900 to 2199 only, as the zone writes them', () => {
    expect(civilDayAt(momentAt('1900-01-01T00:00:00Z'), 'UTC')).toBe('1900-01-01');
    expect(civilDayAt(momentAt('2199-12-31T23:59:59.999Z'), 'UTC')).toBe('2199-12-31');
    expect(() => civilDayAt(momentAt('2200-01-01T00:00:00Z'), 'UTC')).toThrow();
    expect(() => civilDayAt(momentAt('1899-12-31T23:59:59Z'), 'UTC')).toThrow();
    // Year 1950 before our era is written 1950 too, without its era.
    expect(() => civilDayAt(momentAt('-001949-06-01T00:00:00Z'), 'UTC')).toThrow(RangeError);
    expect(() => civilDayAt(NaN, 'UTC')).toThrow(RangeError);
    expect(() => civilDayAt(Infinity, 'UTC')).toThrow(RangeError);
  });

  it('refuses a zone that the platform does not know', () => {
    expect(() => civilDayAt(0, 'Nowhere/At_All')).toThrow(RangeError);
  });
});
