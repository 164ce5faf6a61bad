import { oneOf } from '#core/base';
import { weekdayOf, type CivilDay } from '#core/calendar';
import type { Notebook, PersonId } from '#core/journal';
import { seriesOf } from '#core/series';
import {
  isNewQuestion,
  isOffZeroDay,
  nameOf,
  newTask,
  questionTask,
  rulerTaskOf,
} from './new-review-task';
import { schoolDayBefore } from './review-days';
import { answeredBy, deskOf, randomOf, type ReviewDesk, type ReviewOptions } from './review-desk';
import { questionsFromBefore } from './review-graphs';
import type { ReviewItem, ReviewKind, ReviewPick, ReviewPlace } from './review-item';

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

type PlacedItem = Extract<ReviewPlace, ReviewItem>;

/** What is due of a sort, else a new one. */
const placed = (desk: ReviewDesk, kind: PlacedItem['kind'], pick: ReviewPick): PlacedItem => {
  const due = desk.due.find(({ task }) => task.of === pick);
  const task = due?.task ?? newTask(desk, pick, kind);
  return { kind, name: nameOf(task), task };
};

/** Another thing that is due, else a question about the data of ten school days ago. */
const fromBefore = (desk: ReviewDesk, used: readonly string[]): PlacedItem | null => {
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

const otherRuler = (desk: ReviewDesk): PlacedItem => {
  const task = rulerTaskOf(desk, 'other ruler', !isOffZeroDay(desk));
  return { kind: 'ruler', name: nameOf(task), task };
};

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
