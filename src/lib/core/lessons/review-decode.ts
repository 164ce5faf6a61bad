import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { decodeTableChoice, graphKinds } from '#core/graphs';
import { fieldSchemas, stages } from '#core/journal';
import { decodeQuestion, decodeTold, type Told } from '#core/questions';
import { reviewKinds, type ReviewItem, type ReviewTask } from './review-item';
import type { QuestionAbout } from './review-question';
import { sumStories, sumThings, sumUnknowns } from './review-sum';
import type { RulerSlip } from './ruler-task';

/**
 * Looks at unknown data (what a journal kept of an answered review) and says which item it is.
 * Parts that a later program added are left out; anything missing or of another shape, a sum that
 * does not add up and a ruler's answer that is not its length are an error that names the part.
 * @example
 * decodeReviewItem({ of: 'sum', kind: 'sum' }).error // => { kind: 'not-an-item', part: 'name' }
 * decodeReviewItem('a sum').error // => { kind: 'not-an-item', part: '' }
 */
export const decodeReviewItem = (sheet: unknown): Result<ReviewItem, ReviewItemError> => {
  const read = v.safeParse(itemSchema, sheet);
  if (!read.success) return notAnItem(v.getDotPath(read.issues[0]) ?? '');
  const { kind, name } = read.output;
  const task = taskOf(read.output);
  return task.ok ? ok({ kind, name, task: task.value }) : task;
};

/** Which part of the data is no part of an item; empty for the whole. */
export interface ReviewItemError {
  readonly kind: 'not-an-item';
  readonly part: string;
}

const notAnItem = (part: string): Result<never, ReviewItemError> =>
  failed({ kind: 'not-an-item', part });

const { day, mark, unit, specimenId: specimen } = fieldSchemas;
const text = v.pipe(v.string(), v.maxLength(2000));
const exact = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const number = v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(1000));
const told = v.pipe(
  v.unknown(),
  v.check((each) => decodeTold(each).ok, 'not told'),
  v.transform((each) => each as Told),
);

const rulerSlips = [
  ...(['read-the-end', 'counted-marks', 'counted-small-marks', 'small-for-whole'] as const),
  ...(['left-part-off', 'next-whole', 'counted-back', 'farther-whole'] as const),
] as const satisfies readonly RulerSlip[];

const ruler = v.pipe(
  v.object({
    ...{ kind: v.picklist(['off-zero', 'between-marks']), unit: v.picklist(['in', 'cm']), mark },
    ...{ rulerFromExact: exact, rulerToExact: exact, beginsExact: exact, endsExact: exact },
    answerExact: exact,
    slips: v.pipe(v.array(v.object({ slip: v.picklist(rulerSlips), exact })), v.maxLength(20)),
  }),
  v.check(
    (each) =>
      each.rulerFromExact <= each.beginsExact &&
      each.beginsExact < each.endsExact &&
      each.endsExact <= each.rulerToExact &&
      (each.kind === 'between-marks' || each.answerExact === each.endsExact - each.beginsExact),
    'does not lie so',
  ),
);

const sum = v.pipe(
  v.object({
    ...{ story: v.picklist(sumStories), thing: v.picklist(sumThings), of: text },
    ...{ specimen: v.nullable(specimen), unit, first: told, second: told },
    ...{ start: number, change: number, result: number, unknown: v.picklist(sumUnknowns) },
    isPractice: v.boolean(),
  }),
  v.check(({ start, change, result }) => start + change === result, 'does not add up'),
);

const about = v.variant('kind', [
  v.object({
    ...{ kind: v.literal('log'), choice: v.unknown(), graph: v.picklist(graphKinds) },
    ...{ stage: v.picklist(stages), through: day },
  }),
  v.object({
    ...{ kind: v.literal('practice'), stage: v.picklist(stages) },
    seed: v.pipe(v.number(), v.safeInteger()),
  }),
]);

const place = { kind: v.picklist(reviewKinds), name: text } as const;

const itemSchema = v.variant('of', [
  v.object({ ...place, of: v.literal('ruler'), task: ruler }),
  v.object({ ...place, of: v.literal('sum'), sum }),
  v.object({
    ...{ ...place, of: v.literal('question'), about, question: v.unknown() },
    choices: v.nullable(v.pipe(v.array(told), v.maxLength(20))),
  }),
]);

type RawQuestion = Extract<v.InferOutput<typeof itemSchema>, { of: 'question' }>;

const taskOf = (read: v.InferOutput<typeof itemSchema>): Result<ReviewTask, ReviewItemError> => {
  if (read.of === 'ruler') return ok({ of: 'ruler', ruler: read.task });
  return read.of === 'sum' ? ok({ of: 'sum', sum: read.sum }) : questionTask(read);
};

const questionTask = (raw: RawQuestion): Result<ReviewTask, ReviewItemError> => {
  const question = decodeQuestion(raw.question);
  if (!question.ok) return notAnItem(`question.${question.error.part}`);
  const choices = raw.choices?.flatMap((each) => {
    const decoded = decodeTold(each);
    return decoded.ok ? [decoded.value] : [];
  });
  const found = aboutOf(raw.about);
  if (!found.ok) return found;
  return ok({
    of: 'question',
    about: found.value,
    question: question.value,
    choices: choices ?? null,
  });
};

const aboutOf = (raw: RawQuestion['about']): Result<QuestionAbout, ReviewItemError> => {
  if (raw.kind === 'practice') return ok(raw);
  const choice = decodeTableChoice(raw.choice);
  return choice.ok
    ? ok({ ...raw, choice: choice.value })
    : notAnItem(`about.choice.${choice.error.part}`);
};
