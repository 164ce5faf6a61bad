import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay, type CivilDay } from '#core/calendar';
import type { ReviewOutcome } from '#core/journal';
import { dueReviews, nextReviews, schoolDayAfter, type ReviewDone } from '#core/lessons';

const weekdays = [1, 2, 3, 4];

const story = (...days: readonly (readonly [string, ReviewOutcome])[]): readonly ReviewDone[] =>
  days.map(([day, outcome]) => ({ name: 'a', day: civilDay(day), outcome }));

const dueOn = (done: readonly ReviewDone[], today = '2030-01-01') =>
  nextReviews(done, civilDay(today), weekdays)[0]?.dueOn;

// Worked on a wall calendar of March 2026 (the 2nd is a Monday), school from Monday to Thursday:
// right answers come again after 2, 5 and 10 school days, missed ones on the next.
describe('when an item comes again', () => {
  it('missed on a Thursday: on Monday', () => {
    expect(dueOn(story(['2026-03-05', 'again']))).toBe('2026-03-09');
  });

  it('missed on a Saturday, when somebody liked to do one more: on Monday too', () => {
    expect(dueOn(story(['2026-03-07', 'again']))).toBe('2026-03-09');
  });

  it('right each time it was due: after 2, 5, 10 school days, then not any more', () => {
    const right = (...days: readonly string[]) =>
      story(...days.map((day) => [day, 'rest'] as const));
    expect(dueOn(right('2026-03-02'))).toBe('2026-03-04');
    expect(dueOn(right('2026-03-02', '2026-03-04'))).toBe('2026-03-12');
    expect(dueOn(right('2026-03-02', '2026-03-04', '2026-03-12'))).toBe('2026-03-31');
    expect(dueOn(right('2026-03-02', '2026-03-04', '2026-03-12', '2026-03-31'))).toBeNull();
  });

  it('after a week without any school: it just waited, and goes on from the day it was done', () => {
    const late = story(['2026-03-05', 'rest'], ['2026-03-18', 'rest']);
    expect(dueOn(late)).toBe('2026-03-26');
    expect(dueReviews(story(['2026-03-05', 'again']), civilDay('2026-03-18'), weekdays)).toEqual([
      { name: 'a', dueOn: '2026-03-09', last: 'again' },
    ]);
  });

  it('missed after it was right twice: it begins again', () => {
    const done = story(['2026-03-02', 'rest'], ['2026-03-04', 'rest'], ['2026-03-12', 'again']);
    expect(dueOn(done)).toBe('2026-03-16');
    expect(dueOn([...done, ...story(['2026-03-16', 'rest'])])).toBe('2026-03-18');
  });

  it('missed and right on one day: it was missed', () => {
    expect(dueOn(story(['2026-03-03', 'rest'], ['2026-03-03', 'again']))).toBe('2026-03-04');
    expect(dueOn(story(['2026-03-03', 'again'], ['2026-03-03', 'rest']))).toBe('2026-03-04');
  });

  it('right before it was due: later, but not a step further', () => {
    expect(dueOn(story(['2026-03-02', 'rest'], ['2026-03-03', 'rest']))).toBe('2026-03-05');
  });

  it('with the clock set back: what is dated after today waits for its day', () => {
    const done = story(['2026-03-02', 'again'], ['2026-03-24', 'rest']);
    expect(dueOn(done, '2026-03-03')).toBe('2026-03-03');
    expect(dueOn(done, '2026-03-24')).toBe('2026-03-26');
    expect(nextReviews(story(['2026-03-24', 'again']), civilDay('2026-03-03'), weekdays)).toEqual(
      [],
    );
  });

  it('tells the missed ones first, then those that waited longest', () => {
    const day = civilDay('2026-03-02');
    const done: readonly ReviewDone[] = [
      { name: 'right', day, outcome: 'rest' },
      { name: 'longer', day: civilDay('2026-02-26'), outcome: 'rest' },
      { name: 'missed', day: civilDay('2026-03-03'), outcome: 'again' },
    ];
    const due = dueReviews(done, civilDay('2026-03-04'), weekdays);
    expect(due.map(({ name }) => name)).toEqual(['missed', 'longer', 'right']);
  });
});

const someDone: fc.Arbitrary<readonly ReviewDone[]> = fc.array(
  fc.record({
    name: fc.constantFrom('a', 'b', 'c'),
    day: fc.integer({ min: 0, max: 60 }).map((days) => addDays(civilDay('2026-03-02'), days)),
    outcome: fc.constantFrom<ReviewOutcome>('rest', 'again'),
  }),
  { maxLength: 30 },
);
const someWeekdays = fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 });
const today: CivilDay = civilDay('2026-04-15');

describe('the law of spacing', () => {
  it('never brings an item before its rest is over, and a missed one on the next school day', () => {
    fc.assert(
      fc.property(someDone, someWeekdays, (done, inWeek) => {
        const next = nextReviews(done, today, inWeek);
        for (const name of new Set(done.map((each) => each.name))) {
          const own = done.filter((each) => each.name === name && each.day <= today);
          const found = next.find((each) => each.name === name);
          if (own.length === 0) {
            expect(found).toBeUndefined();
            continue;
          }
          const lastDay = own
            .map(({ day }) => day)
            .toSorted()
            .at(-1)!;
          const wasMissed = own.some(({ day, outcome }) => day === lastDay && outcome === 'again');
          expect(found?.last).toBe(wasMissed ? 'again' : 'rest');
          if (wasMissed) expect(found?.dueOn).toBe(schoolDayAfter(lastDay, 1, inWeek));
          else if (found?.dueOn != null)
            expect(found.dueOn >= schoolDayAfter(lastDay, 2, inWeek)).toBe(true);
        }
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it('does not ask in which order the answers came, or whether one came twice', () => {
    fc.assert(
      fc.property(someDone, someWeekdays, fc.infiniteStream(fc.nat()), (done, inWeek, chance) => {
        const keys = done.map((each) => ({ each, key: chance.next().value ?? 0 }));
        const mixed = keys.toSorted((one, other) => one.key - other.key).map(({ each }) => each);
        const expected = dueReviews(done, today, inWeek);
        expect(dueReviews([...mixed, ...done.slice(0, 3)], today, inWeek)).toEqual(expected);
      }),
      { seed: 4 },
    );
  });

  it('lets an item rest for good only after it was right on four days', () => {
    fc.assert(
      fc.property(someDone, someWeekdays, (done, inWeek) => {
        for (const { name, dueOn } of nextReviews(done, today, inWeek)) {
          if (dueOn !== null) continue;
          const right = done.filter((each) => each.name === name && each.outcome === 'rest');
          expect(new Set(right.map(({ day }) => day)).size).toBeGreaterThanOrEqual(4);
        }
      }),
      { seed: 5 },
    );
  });
});
