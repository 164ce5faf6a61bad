import { seededRandom } from '#core/base';
import type { CivilDay } from '#core/calendar';
import { isBeingDrawn } from '#core/graphs';
import type { Notebook, PersonId, Stage } from '#core/journal';
import { schoolWeekdaysOf } from './review-days';
import { decodeReviewItem } from './review-decode';
import type { ReviewItem, ReviewTask } from './review-item';
import { logSumsOf } from './review-log-sums';
import { isQuestionStanding } from './review-question';
import { reviewSeed } from './review-seed';
import { dueReviews } from './review-spacing';
import { sumName } from './review-sum';
import type { UnitFamily } from './starter';

export interface ReviewOptions {
  readonly stage: Stage;
  /** For rulers and made-up sums; the log's own numbers keep their units. */
  readonly family: UnitFamily;
  /** The school days, 1 being Monday; those of the notebook where it is left out. */
  readonly schoolWeekdays?: readonly number[];
}

/** What a page of the review is made from. Not part of the public door. */
export interface ReviewDesk {
  readonly notebook: Notebook;
  readonly person: PersonId | null;
  readonly today: CivilDay;
  readonly options: ReviewOptions;
  readonly weekdays: readonly number[];
  /** What comes again today and still holds, the missed ones first. */
  readonly due: readonly (ReviewItem & { readonly wasMissed: boolean })[];
  /** Names that were asked already: they come when they are due. */
  readonly avoid: readonly string[];
}

/** What comes again for a person on a day, and what is not new any more. Not in the door. */
export const deskOf = (
  notebook: Notebook,
  person: PersonId | null,
  today: CivilDay,
  options: ReviewOptions,
): ReviewDesk => {
  const weekdays = options.schoolWeekdays ?? schoolWeekdaysOf(notebook);
  const before = answeredBy(notebook, person).filter(({ day }) => day < today);
  const done = before.map(({ day, item, outcome }) => ({ name: item.name, day, outcome }));
  const itemByName = new Map(before.map(({ item }) => [item.name, item]));
  const due = dueReviews(done, today, weekdays).flatMap(({ name, last }) => {
    const item = itemByName.get(name) as ReviewItem;
    const holds = isStanding(notebook, item.task, today);
    return holds ? [{ ...item, wasMissed: last === 'again' }] : [];
  });
  return {
    ...{ notebook, person, today, options, weekdays, due },
    avoid: [...itemByName.keys()],
  };
};

/** What a person answered that this program can read, in the order it was written. Not in the door. */
export const answeredBy = ({ reviews }: Pick<Notebook, 'reviews'>, person: PersonId | null) =>
  reviews.flatMap(({ author, takenBack, item, day, outcome }) => {
    if (author !== person || takenBack) return [];
    const decoded = decodeReviewItem(item);
    return decoded.ok ? [{ day, outcome, item: decoded.value }] : [];
  });

/**
 * Whether an item still says what the log says, and may be shown: no graph of a log that is just
 * being drawn. Made-up ones always do.
 */
const isStanding = (notebook: Notebook, task: ReviewTask, today: CivilDay): boolean => {
  if (task.of === 'ruler') return true;
  if (task.of === 'question') {
    const { about } = task;
    const isHidden = about.kind === 'log' && isBeingDrawn(notebook, about.choice);
    return !isHidden && isQuestionStanding(notebook, task);
  }
  if (task.sum.isPractice) return true;
  const name = sumName(task.sum);
  return logSumsOf(notebook, 'grade-3', today).some((sum) => sumName(sum) === name);
};

/** Chance of its own for each place of a page. Not part of the public door. */
export const randomOf = ({ person, today }: ReviewDesk, salt: string) =>
  seededRandom(reviewSeed(person, today, salt));
