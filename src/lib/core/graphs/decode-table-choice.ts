import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { fieldSchemas } from '#core/journal';
import { markById, systemOf } from '#core/measure';
import { tableSources, type TableChoice } from './table-choice';

/**
 * Looks at unknown data (what a journal kept, a file, another device) and says which choice of a
 * table it is. Parts that a later program added are left out; anything missing or of another
 * shape, a span that ends before it begins and a mark that no ruler of the unit has are an error
 * that names the part.
 * @example
 * decodeTableChoice({ source: 'tea-leaves' }).error // => { kind: 'not-a-choice', part: 'source' }
 * decodeTableChoice('a table').error // => { kind: 'not-a-choice', part: '' }
 */
export const decodeTableChoice = (data: unknown): Result<TableChoice, ChoiceError> => {
  const read = v.safeParse(choiceSchema, data);
  if (!read.success) return notAChoice(v.getDotPath(read.issues[0]) ?? '');
  const choice = read.output;
  return choice.from > choice.to ? notAChoice('to') : ok(choice);
};

/** Which part of the data is no part of a choice; empty for the whole. */
export interface ChoiceError {
  readonly kind: 'not-a-choice';
  readonly part: string;
}

const notAChoice = (part: string): Result<never, ChoiceError> =>
  failed({ kind: 'not-a-choice', part });

const mostSpecimens = 100;

const { day, mark, unit, investigationId, specimenId } = fieldSchemas;

const told = v.pipe(
  v.object({ unit: unit, mark, converts: v.boolean() }),
  v.check(
    (each) => systemOf(markById(each.mark).unit) === systemOf(each.unit),
    'a mark of another ruler',
  ),
);

const choiceSchema = v.object({
  source: v.picklist(tableSources),
  investigation: investigationId,
  specimens: v.pipe(v.array(specimenId), v.minLength(1), v.maxLength(mostSpecimens)),
  from: day,
  to: day,
  told: v.nullable(told),
  mostKinds: v.nullable(v.pipe(v.number(), v.integer(), v.minValue(2), v.maxValue(12))),
  givenSteps: v.exactOptional(v.literal(true)),
});
