import { oneOf } from '#core/base';
import { betweenMarksTask } from './between-marks-task';
import { offZeroTask } from './off-zero-task';
import { schoolDayNumber } from './review-days';
import { randomOf, type ReviewDesk } from './review-desk';
import { questionsThrough } from './review-graphs';
import { rulerName, type ReviewPick, type ReviewTask } from './review-item';
import { logSumsOf } from './review-log-sums';
import { dayBefore, daysThrough } from './review-own-numbers';
import { practiceSum } from './review-practice-sum';
import { practiceQuestion, questionName, type ReviewQuestion } from './review-question';
import { isRegrouped, sumName, sumUnknowns, type Sum } from './review-sum';

/** Something new to try, of the kind that is wanted. Not part of the public door. */
export const newTask = (desk: ReviewDesk, pick: ReviewPick, salt: string): ReviewTask => {
  if (pick === 'ruler') return rulerTaskOf(desk, salt, isOffZeroDay(desk) !== salt.endsWith('1'));
  return pick === 'sum' ? newSum(desk, salt) : newQuestion(desk, salt);
};

/** Off zero every other school day: at least one a week. Not part of the public door. */
export const isOffZeroDay = ({ today, weekdays }: ReviewDesk): boolean =>
  schoolDayNumber(today, weekdays) % 2 === 0;

/** A ruler to read that was not asked yet, where there is one. Not part of the public door. */
export const rulerTaskOf = (desk: ReviewDesk, salt: string, isOffZero: boolean): ReviewTask => {
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
const newSum = (desk: ReviewDesk, salt: string): ReviewTask => {
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

const newQuestion = (desk: ReviewDesk, salt: string): ReviewTask => {
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

/** Whether a question is not asked yet. Not part of the public door. */
export const isNewQuestion =
  (avoid: readonly string[]) =>
  (asked: ReviewQuestion): boolean =>
    !avoid.includes(questionName(asked));

/** Not part of the public door. */
export const questionTask = (asked: ReviewQuestion): ReviewTask => ({ of: 'question', ...asked });

/** What a task is asked again by. Not part of the public door. */
export const nameOf = (task: ReviewTask): string => {
  if (task.of === 'ruler') return rulerName(task.ruler);
  return task.of === 'sum' ? sumName(task.sum) : questionName(task);
};

/** So many of the newest sums of a log are chosen from. */
const mostRecent = 12;
