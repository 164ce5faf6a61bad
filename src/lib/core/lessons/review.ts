import { oneOf, seededRandom } from '#core/base';
import { weekdayOf, type CivilDay } from '#core/calendar';
import { isBeingDrawn } from '#core/graphs';
import type { Notebook, PersonId, Stage } from '#core/journal';
import { seriesOf } from '#core/series';
import { betweenMarksTask } from './between-marks-task';
import { offZeroTask } from './off-zero-task';
import { decodeReviewItem } from './review-decode';
import { schoolDayBefore, schoolDayNumber, schoolWeekdaysOf } from './review-days';
import { questionsFromBefore, questionsThrough } from './review-graphs';
import {
  rulerName,
  type ReviewItem,
  type ReviewKind,
  type ReviewPick,
  type ReviewPlace,
  type ReviewTask,
} from './review-item';
import { logSumsOf } from './review-log-sums';
import { dayBefore, daysThrough } from './review-own-numbers';
import { practiceSum } from './review-practice-sum';
import {
  isQuestionStanding,
  practiceQuestion,
  questionName,
  type ReviewQuestion,
} from './review-question';
import { reviewSeed } from './review-seed';
import { dueReviews } from './review-spacing';
import { isRegrouped, sumName, sumUnknowns, type Sum } from './review-sum';
import type { UnitFamily } from './starter';

export interface ReviewOptions {
  readonly stage: Stage;
  /** For rulers and made-up sums; the log's own numbers keep their units. */
  readonly family: UnitFamily;
  /** The school days, 1 being Monday; those of the notebook where it is left out. */
  readonly schoolWeekdays?: readonly number[];
}

/**
 * The daily review of a person: today's measure, a graph to read, a ruler, a sum, something from
 * before, and one the child chooses; mixed, in a fixed order, never two of one sort side by side
 * where it can be helped. Everything comes from what was written for the days before today, so
 * that one day has one page, whatever is measured on it. What is due comes first in its place:
 * items that were missed, then those whose rest is over. Items the log does not bear out any more
 * are not asked again. Where the log is too young, made-up numbers are used and say so. Without a
 * running log that wants a reading today the first place is left out; where nothing is from before,
 * a second ruler takes its place.
 *
 * @param person whose answers count; null is whoever wrote without a name
 * @param today the day it is where the family is
 * @example
 * reviewFor(foldEntries([]), null, '2026-03-09', { stage: 'grade-2', family: 'inches' }).map(({ kind }) => kind) // => ['graph-read', 'ruler', 'sum', 'ruler', 'choice']
 */
export const reviewFor = (
  notebook: Notebook,
  person: PersonId | null,
  today: CivilDay,
  options: ReviewOptions,
): readonly ReviewPlace[] => {
  const desk = deskOf(notebook, person, today, options);
  const graph = placed(desk, 'graph-read', 'question');
  const ruler = placed(desk, 'ruler', 'ruler');
  const sum = placed(desk, 'sum', 'sum');
  const used = [graph, ruler, sum].map(({ name }) => name);
  const before = fromBefore(desk, used) ?? otherRuler(desk);
  const middle = before.task.of === 'sum' ? [graph, sum, ruler] : [graph, ruler, sum];
  const logs = logsToday(notebook, today);
  return [
    ...(logs.length > 0 ? [{ kind: 'measure-today', logs } as const] : []),
    ...[...middle, before],
    { kind: 'choice' },
  ];
};

/**
 * An item of the kind a child chose: what is due of it first, then a new one, each `round` another.
 * @param round how many were chosen on this day before
 * @example
 * chosenItem(foldEntries([]), null, '2026-03-09', { stage: 'grade-2', family: 'inches' }, 'sum', 0).task.sum.isPractice // => true
 */
export const chosenItem = (
  notebook: Notebook,
  person: PersonId | null,
  today: CivilDay,
  options: ReviewOptions,
  pick: ReviewPick,
  round: number,
): ReviewItem => {
  const desk = deskOf(notebook, person, today, options);
  const page = reviewFor(notebook, person, today, options).flatMap((place) =>
    'name' in place ? [place.name] : [],
  );
  const taken = [...page, ...answeredOn(notebook, person, today).map(({ name }) => name)];
  const due = desk.due.find(({ task, name }) => task.of === pick && !taken.includes(name));
  const task =
    due?.task ?? newTask({ ...desk, avoid: [...desk.avoid, ...taken] }, pick, `choice ${round}`);
  return { kind: 'choice', name: nameOf(task), task };
};

/**
 * The names of the items that a person answered on a day.
 * @example
 * answeredOn(foldEntries([]), null, '2026-03-09') // => []
 */
export const answeredOn = (
  notebook: Pick<Notebook, 'reviews'>,
  person: PersonId | null,
  day: CivilDay,
): readonly { readonly name: string; readonly kind: ReviewKind }[] =>
  answeredBy(notebook, person).flatMap((each) =>
    each.day === day ? [{ name: each.item.name, kind: each.item.kind }] : [],
  );

/** What a page is made from. */
interface Desk {
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

const deskOf = (
  notebook: Notebook,
  person: PersonId | null,
  today: CivilDay,
  options: ReviewOptions,
): Desk => {
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

const answeredBy = ({ reviews }: Pick<Notebook, 'reviews'>, person: PersonId | null) =>
  reviews.flatMap(({ author, takenBack, item, day, outcome }) => {
    if (author !== person || takenBack) return [];
    const decoded = decodeReviewItem(item);
    return decoded.ok ? [{ day, outcome, item: decoded.value }] : [];
  });

type PlacedItem = Extract<ReviewPlace, ReviewItem>;

/** What is due of a sort, else a new one. */
const placed = (desk: Desk, kind: PlacedItem['kind'], pick: ReviewPick): PlacedItem => {
  const due = desk.due.find(({ task }) => task.of === pick);
  const task = due?.task ?? newTask(desk, pick, kind);
  return { kind, name: nameOf(task), task };
};

/** Another thing that is due, else a question about the data of ten school days ago. */
const fromBefore = (desk: Desk, used: readonly string[]): PlacedItem | null => {
  const kind = 'from-before';
  const due = desk.due.find(({ name }) => !used.includes(name));
  if (due) return { kind, name: due.name, task: due.task };
  const { notebook, today, options, weekdays } = desk;
  const target = schoolDayBefore(today, schoolDaysBack, weekdays);
  const isNew = isNewQuestion([...desk.avoid, ...used]);
  const random = randomOf(desk, kind);
  const found = questionsFromBefore(notebook, options.stage, target, isNew, random);
  if (found.length === 0) return null;
  const task = questionTask(oneOf(found, random));
  return { kind, name: nameOf(task), task };
};

const otherRuler = (desk: Desk): PlacedItem => {
  const task = rulerTaskOf(desk, 'other ruler', !isOffZeroDay(desk));
  return { kind: 'ruler', name: nameOf(task), task };
};

const newTask = (desk: Desk, pick: ReviewPick, salt: string): ReviewTask => {
  if (pick === 'ruler') return rulerTaskOf(desk, salt, isOffZeroDay(desk) !== salt.endsWith('1'));
  return pick === 'sum' ? newSum(desk, salt) : newQuestion(desk, salt);
};

/** Off zero every other school day: at least one a week. */
const isOffZeroDay = ({ today, weekdays }: Desk): boolean =>
  schoolDayNumber(today, weekdays) % 2 === 0;

const rulerTaskOf = (desk: Desk, salt: string, isOffZero: boolean): ReviewTask => {
  const { stage, family } = desk.options;
  const make = isOffZero ? offZeroTask : betweenMarksTask;
  const random = randomOf(desk, salt);
  const tries = Array.from({ length: 20 }, () => make(stage, family, random));
  const ruler = tries.find((each) => !desk.avoid.includes(rulerName(each))) ?? tries[0]!;
  return { of: 'ruler', ruler };
};

/**
 * Of the numbers of the newest days of a running log, else of any; with and without regrouping on
 * alternate school days, and the unknown in another place each day, where the log has such a sum.
 */
const newSum = (desk: Desk, salt: string): ReviewTask => {
  const { notebook, today, options, weekdays } = desk;
  const random = randomOf(desk, salt);
  const schoolDay = schoolDayNumber(today, weekdays);
  const unknown = sumUnknowns[(schoolDay + Math.floor(random() * 2)) % 3]!;
  const wish = { unknown, isRegrouped: schoolDay % 2 === 1 };
  const last = dayBefore(today);
  const own = logSumsOf(daysThrough(notebook, last), options.stage, last).filter(
    (sum) => !desk.avoid.includes(sumName(sum)),
  );
  if (own.length === 0) {
    return { of: 'sum', sum: practiceSum(options.stage, options.family, wish, random) };
  }
  const wanted: readonly ((sum: Sum) => boolean)[] = [
    (sum) => isRegrouped(sum) === wish.isRegrouped,
    (sum) => sum.unknown === wish.unknown,
  ];
  const left = wanted.reduce((kept, holds) => {
    const such = kept.filter(holds);
    return such.length > 0 ? such : kept;
  }, own);
  // One log after the other, so that the oldest and longest does not always win.
  const specimen = oneOf([...new Set(left.map((sum) => sum.specimen))], random);
  const ofLog = left.filter((sum) => sum.specimen === specimen);
  return { of: 'sum', sum: oneOf(ofLog.slice(-mostRecent), random) };
};

const newQuestion = (desk: Desk, salt: string): ReviewTask => {
  const { notebook, today, options } = desk;
  const random = randomOf(desk, salt);
  const isNew = isNewQuestion(desk.avoid);
  const wanted = (asked: ReviewQuestion): boolean =>
    asked.question.level === 'read' && isNew(asked);
  const found = questionsThrough(notebook, options.stage, dayBefore(today), wanted, random);
  if (found.length > 0) {
    // Templates first: one has a question for each day, another a single one.
    const template = oneOf([...new Set(found.map(({ question }) => question.template))], random);
    return questionTask(
      oneOf(
        found.filter((each) => each.question.template === template),
        random,
      ),
    );
  }
  const seed = Math.floor(random() * 1000);
  return questionTask(practiceQuestion(notebook, options.stage, seed, random));
};

const isNewQuestion =
  (avoid: readonly string[]) =>
  (asked: ReviewQuestion): boolean =>
    !avoid.includes(questionName(asked));

const questionTask = (asked: ReviewQuestion): ReviewTask => ({ of: 'question', ...asked });

const nameOf = (task: ReviewTask): string => {
  if (task.of === 'ruler') return rulerName(task.ruler);
  return task.of === 'sum' ? sumName(task.sum) : questionName(task);
};

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

const randomOf = ({ person, today }: Desk, salt: string) =>
  seededRandom(reviewSeed(person, today, salt));

const logsToday = (notebook: Notebook, today: CivilDay) =>
  [...notebook.specimens.values()].flatMap(({ id, ended }) => {
    const series = seriesOf(notebook, id, today);
    if (!series || ended !== null || series.investigation.ended !== null) return [];
    if (!notebook.investigations.has(series.investigation.id)) return [];
    if (!series.investigation.weekdays.includes(weekdayOf(today))) return [];
    if (series.specimen.startedOn > today) return [];
    const state = series.days.find(({ day }) => day === today)?.state ?? 'blank';
    return [{ specimen: id, isTaken: state !== 'blank' }];
  });

/** "Two weeks ago" in school days. */
const schoolDaysBack = 10;
/** So many of the newest sums of a log are chosen from. */
const mostRecent = 12;
