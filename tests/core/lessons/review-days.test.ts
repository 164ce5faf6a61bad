import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay, weekdayOf } from '#core/calendar';
import {
  schoolDayAfter,
  schoolDayBefore,
  schoolDayNumber,
  schoolWeekdaysOf,
  usualSchoolWeekdays,
} from '#core/lessons';

const mondayToThursday = [1, 2, 3, 4];
const mondayToFriday = [1, 2, 3, 4, 5];

// Worked on a wall calendar of March 2026, in which the 2nd is a Monday.
describe('school days counted on the calendar of March 2026', () => {
  it.each([
    ['Monday', '2026-03-02', 1, mondayToThursday, '2026-03-03'],
    ['Monday', '2026-03-02', 2, mondayToThursday, '2026-03-04'],
    ['Thursday, over a long weekend', '2026-03-05', 1, mondayToThursday, '2026-03-09'],
    ['Thursday, over two days more', '2026-03-05', 2, mondayToThursday, '2026-03-10'],
    ['Friday, no school day', '2026-03-06', 1, mondayToThursday, '2026-03-09'],
    ['Sunday, no school day', '2026-03-08', 1, mondayToThursday, '2026-03-09'],
    ['Tuesday, five days of four a week', '2026-03-03', 5, mondayToThursday, '2026-03-11'],
    ['Wednesday, ten days of four a week', '2026-03-04', 10, mondayToThursday, '2026-03-23'],
    ['Friday, five days a week', '2026-03-06', 1, mondayToFriday, '2026-03-09'],
    ['Friday, ten days of five a week', '2026-03-06', 10, mondayToFriday, '2026-03-20'],
    ['Saturday, only Saturdays', '2026-03-07', 2, [6], '2026-03-21'],
    ['the last of the month', '2026-03-31', 1, mondayToThursday, '2026-04-01'],
  ])('after a %s', (_, day, count, weekdays, expected) => {
    expect(schoolDayAfter(civilDay(day), count, weekdays)).toBe(expected);
  });

  it.each([
    ['2026-03-09', 1, mondayToThursday, '2026-03-05'],
    ['2026-03-08', 1, mondayToThursday, '2026-03-05'],
    ['2026-03-23', 10, mondayToThursday, '2026-03-04'],
    ['2026-03-16', 10, mondayToFriday, '2026-03-02'],
  ])('back from %s by %i', (day, count, weekdays, expected) => {
    expect(schoolDayBefore(civilDay(day), count, weekdays)).toBe(expected);
  });

  it('over a night in which the clock moves, as over any other', () => {
    // 8 March 2026 has 23 hours in New York; 25 October 2026 has 25 in Paris.
    expect(schoolDayAfter(civilDay('2026-03-07'), 1, [7])).toBe('2026-03-08');
    expect(schoolDayAfter(civilDay('2026-10-24'), 2, mondayToFriday)).toBe('2026-10-27');
  });

  it('never in a week without school, and never by half a day: that is our mistake', () => {
    expect(() => schoolDayAfter(civilDay('2026-03-02'), 1, [])).toThrow(RangeError);
    expect(() => schoolDayAfter(civilDay('2026-03-02'), 0, [1])).toThrow(RangeError);
    expect(() => schoolDayAfter(civilDay('2026-03-02'), 1.5, [1])).toThrow(RangeError);
  });
});

const someDay = fc
  .integer({ min: -20_000, max: 20_000 })
  .map((days) => addDays(civilDay('2026-03-02'), days));
const someWeekdays = fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 });

describe('school days', () => {
  it('lie on school days, and between them there are just as many as were counted', () => {
    fc.assert(
      fc.property(
        someDay,
        someWeekdays,
        fc.integer({ min: 1, max: 30 }),
        (day, weekdays, count) => {
          const found = schoolDayAfter(day, count, weekdays);
          let passed = 0;
          for (let at = addDays(day, 1); at <= found; at = addDays(at, 1))
            if (weekdays.includes(weekdayOf(at))) passed += 1;
          expect(passed).toBe(count);
          expect(weekdays).toContain(weekdayOf(found));
          expect(schoolDayNumber(found, weekdays) - schoolDayNumber(day, weekdays)).toBe(count);
        },
      ),
      { seed: 1 },
    );
  });

  it('counted back from where they led come to the day again, from a school day', () => {
    fc.assert(
      fc.property(
        someDay,
        someWeekdays,
        fc.integer({ min: 1, max: 30 }),
        (day, weekdays, count) => {
          const from = schoolDayAfter(day, 1, weekdays);
          const there = schoolDayAfter(from, count, weekdays);
          expect(schoolDayBefore(there, count, weekdays)).toBe(from);
        },
      ),
      { seed: 2 },
    );
  });
});

describe('which days are school days', () => {
  const plan = (weekdays: number[], ended: boolean) => ({
    weekdays,
    ended: ended ? { day: civilDay('2026-03-09') } : null,
  });
  const of = (...plans: ReturnType<typeof plan>[]) =>
    schoolWeekdaysOf({ investigations: new Map(plans.map((each, index) => [index, each])) });

  it('are Monday to Thursday where nothing says otherwise', () => {
    expect(usualSchoolWeekdays).toEqual([1, 2, 3, 4]);
    expect(of()).toEqual([1, 2, 3, 4]);
    expect(of(plan([1, 2, 3, 4, 5, 6, 7], false))).toEqual([1, 2, 3, 4]);
    expect(of(plan([], false))).toEqual([1, 2, 3, 4]);
  });

  it('are those the running investigations plan, all together', () => {
    expect(of(plan([5, 1, 3], false), plan([2, 3], false))).toEqual([1, 2, 3, 5]);
    expect(of(plan([6], true), plan([1, 5], false))).toEqual([1, 5]);
  });
});
