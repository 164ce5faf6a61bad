import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { fieldSchemas } from '#core/journal';
import { markById, systemOf } from '#core/measure';
import { formOf } from './question-form';
import { levels, numberRanges, questionIds, type AskedQuestion, type Told } from './question';
import { slipIds } from './slip-id';

/**
 * Looks at unknown data (what a journal kept of an answered question) and says which question it
 * is. Parts that a later program added are left out; anything missing or of another shape is an
 * error that names the part: `blanks` where they, or the answer, are of no form of its template.
 * @example
 * decodeQuestion({ template: 'Z1' }).error // => { kind: 'not-a-question', part: 'template' }
 * decodeQuestion('how tall?').error // => { kind: 'not-a-question', part: '' }
 */
export const decodeQuestion = (sheet: unknown): Result<AskedQuestion, QuestionError> => {
  const read = v.safeParse(questionSchema, sheet);
  if (!read.success) {
    return failed({ kind: 'not-a-question', part: v.getDotPath(read.issues[0]) ?? '' });
  }
  return formOf(read.output) === null
    ? failed({ kind: 'not-a-question', part: 'blanks' })
    : ok(read.output);
};

/**
 * Looks at unknown data and says which told thing it is, as an answer that was kept.
 * @example
 * decodeTold({ kind: 'count', count: 3, of: 'days' }).value // => { kind: 'count', count: 3, of: 'days' }
 * decodeTold({ kind: 'count' }).error // => { kind: 'not-a-question', part: 'count' }
 */
export const decodeTold = (data: unknown): Result<Told, QuestionError> => {
  const read = v.safeParse(toldSchema, data);
  if (read.success) return ok(read.output);
  return failed({ kind: 'not-a-question', part: v.getDotPath(read.issues[0]) ?? '' });
};

/** Which part of the data is no part of a question; empty for the whole. */
export interface QuestionError {
  readonly kind: 'not-a-question';
  readonly part: string;
}

const { day, time, mark, unit } = fieldSchemas;
const text = v.pipe(v.string(), v.maxLength(200));
const number = v.pipe(v.number(), v.finite());
const mostThings = 100;

const length = v.pipe(
  v.object({
    ...{ kind: v.literal('length'), exact: v.pipe(v.number(), v.safeInteger()) },
    ...{ unit, mark },
  }),
  v.check(
    (each) => systemOf(markById(each.mark).unit) === systemOf(each.unit),
    'a mark of another ruler',
  ),
);

/** What an order or a span is made of: nothing that holds others again. */
const single = [
  length,
  v.object({ kind: v.literal('count'), count: number, of: text }),
  v.object({ kind: v.literal('day'), day }),
  v.object({ kind: v.literal('days'), days: v.pipe(v.array(day), v.maxLength(mostThings)) }),
  v.object({ kind: v.literal('time'), time }),
  v.object({ kind: v.literal('word'), word: text }),
  v.object({ kind: v.literal('interval'), from: day, to: day, gapDays: number }),
  v.object({ kind: v.literal('idea'), idea: text }),
] as const;
const singleSchema = v.variant('kind', [...single]);

const toldSchema: v.GenericSchema<unknown, Told> = v.variant('kind', [
  ...single,
  v.object({
    kind: v.literal('order'),
    things: v.pipe(v.array(singleSchema), v.maxLength(mostThings)),
  }),
  v.object({
    ...{ kind: v.literal('between'), low: singleSchema, high: singleSchema },
    hasLeftOver: v.optional(v.literal(true)),
  }),
]);

const questionSchema = v.object({
  template: v.picklist(questionIds),
  level: v.picklist(levels),
  range: v.picklist(numberRanges),
  blanks: v.record(text, toldSchema),
  answer: toldSchema,
  slips: v.pipe(
    v.array(v.object({ told: toldSchema, shows: v.picklist(slipIds) })),
    v.maxLength(mostThings),
  ),
  wholeSet: v.boolean(),
});
