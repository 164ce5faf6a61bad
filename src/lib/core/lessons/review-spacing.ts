import type { CivilDay } from '#core/calendar';
import type { ReviewOutcome } from '#core/journal';
import { schoolDayAfter } from './review-days';

/** An item that was answered, by the name it is asked again by. */
export interface ReviewDone {
  readonly name: string;
  readonly day: CivilDay;
  readonly outcome: ReviewOutcome;
}

/** When an item comes again, or null when it rests for good. */
export interface NextReview {
  readonly name: string;
  readonly dueOn: CivilDay | null;
  /** How the last day it was asked on went. */
  readonly last: ReviewOutcome;
}

/**
 * After how many school days a right item comes again: the first time, the second, the third.
 * Then it rests for good. (The steps are common practice; that coming back after weeks helps has
 * moderate evidence: Pashler et al. 2007, Institute of Education Sciences practice guide.)
 */
export const restSchoolDays = [2, 5, 10] as const;

/**
 * When each answered item comes again. One that was missed on a day comes on the next school day,
 * also when it was right later on that same day; a right one after 2, 5, then 10 school days. To
 * be right before it was due moves the day but not the step. Answers dated after today (a clock
 * was set back) do not count before their day. The order of the answers does not matter.
 *
 * @param today the day it is where the family is
 * @param weekdays the school days of the week, 1 being Monday
 * @example
 * nextReviews([{ name: 'a', day: '2026-03-05', outcome: 'again' }], '2026-03-05', [1, 2, 3, 4]) // => [{ name: 'a', dueOn: '2026-03-09', last: 'again' }]
 * nextReviews([{ name: 'a', day: '2026-03-02', outcome: 'rest' }, { name: 'a', day: '2026-03-04', outcome: 'rest' }], '2026-03-04', [1, 2, 3, 4]) // => [{ name: 'a', dueOn: '2026-03-12', last: 'rest' }]
 */
export const nextReviews = (
  done: readonly ReviewDone[],
  today: CivilDay,
  weekdays: readonly number[],
): readonly NextReview[] => {
  const daysByName = new Map<string, Map<CivilDay, ReviewOutcome>>();
  for (const { name, day, outcome } of done) {
    if (day > today) continue;
    const days = daysByName.get(name) ?? new Map<CivilDay, ReviewOutcome>();
    days.set(day, days.get(day) === 'again' ? 'again' : outcome);
    daysByName.set(name, days);
  }
  return [...daysByName]
    .map(([name, days]) => ({ name, ...nextOf(days, weekdays) }))
    .toSorted((one, other) => (one.name < other.name ? -1 : 1));
};

/**
 * The items that are due today: the missed ones first, then by the day they were due, then by name.
 * @example
 * dueReviews([{ name: 'a', day: '2026-03-05', outcome: 'again' }], '2026-03-08', [1, 2, 3, 4]) // => []
 * dueReviews([{ name: 'a', day: '2026-03-05', outcome: 'again' }], '2026-03-09', [1, 2, 3, 4]) // => [{ name: 'a', dueOn: '2026-03-09', last: 'again' }]
 */
export const dueReviews = (
  done: readonly ReviewDone[],
  today: CivilDay,
  weekdays: readonly number[],
): readonly (NextReview & { readonly dueOn: CivilDay })[] =>
  nextReviews(done, today, weekdays)
    .flatMap(({ name, dueOn, last }) =>
      dueOn !== null && dueOn <= today ? [{ name, dueOn, last }] : [],
    )
    .toSorted((one, other) =>
      one.last !== other.last
        ? one.last === 'again'
          ? -1
          : 1
        : one.dueOn < other.dueOn || (one.dueOn === other.dueOn && one.name < other.name)
          ? -1
          : 1,
    );

const nextOf = (
  outcomeByDay: ReadonlyMap<CivilDay, ReviewOutcome>,
  weekdays: readonly number[],
): Pick<NextReview, 'dueOn' | 'last'> => {
  let steps = 0;
  let next: Pick<NextReview, 'dueOn' | 'last'> = { dueOn: null, last: 'rest' };
  const days = [...outcomeByDay.keys()].toSorted();
  days.forEach((day, index) => {
    const last = outcomeByDay.get(day) as ReviewOutcome;
    if (last === 'again') {
      steps = 0;
      next = { dueOn: schoolDayAfter(day, 1, weekdays), last };
      return;
    }
    const isDue =
      index === 0 || next.last === 'again' || (next.dueOn !== null && day >= next.dueOn);
    if (isDue || steps === 0) steps += 1;
    const wait = restSchoolDays[steps - 1];
    next = { dueOn: wait === undefined ? null : schoolDayAfter(day, wait, weekdays), last };
  });
  return next;
};
