import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { isCivilDay, type CivilDay } from '#core/calendar';
import { tallyUses, type ChildTally } from './child-tally';

/**
 * The tally that was kept last among the versions of a drawing: a version whose paper has a
 * `tally` beside (or instead of) what was drawn. Null where none was ever kept: the drawing is made
 * from the log's table.
 *
 * Errors: `not-a-tally` with the part, where the last one is damaged, of a later program, names a
 * kind it has no row for, or is drawn from before all of it is sorted.
 * @example
 * keptTally([{ paper: {} }]) // => { ok: true, value: null }
 * keptTally([{ paper: { tally: 'four and a bit' } }]).error // => { kind: 'not-a-tally', part: '' }
 */
export function keptTally(
  versions: readonly { readonly paper: Readonly<Record<string, unknown>> }[],
): Result<ChildTally | null, TallyError> {
  const paper = versions.findLast((version) => Object.hasOwn(version.paper, 'tally'))?.paper;
  return paper ? decodeTally(paper.tally) : ok(null);
}

/** Which part of the data is no part of a tally; empty for the whole. */
export interface TallyError {
  readonly kind: 'not-a-tally';
  readonly part: string;
}

const decodeTally = (data: unknown): Result<ChildTally, TallyError> => {
  const read = v.safeParse(tallySchema, data);
  if (!read.success) return notATally(v.getDotPath(read.issues[0]) ?? '');
  const { kinds, cards, use } = read.output;
  const isSorted = cards.every(({ picks }) => picks.length > 0);
  if (use === 'mine' && !isSorted) return notATally('use');
  const stranger = cards.findIndex(({ picks }) => picks.some((kind) => !kinds.includes(kind)));
  return stranger >= 0 ? notATally(`cards.${stranger}.picks`) : ok(read.output);
};

const notATally = (part: string): Result<never, TallyError> =>
  failed({ kind: 'not-a-tally', part });

/** More than a family sorts in years; more is damage or mischief. */
const mostCards = 4000;
const text = v.pipe(v.string(), v.maxLength(300));
const day = v.pipe(
  v.string(),
  v.check(isCivilDay, 'not a day'),
  v.transform((each) => each as CivilDay),
);

const tallySchema = v.object({
  kinds: v.pipe(v.array(text), v.minLength(1), v.maxLength(100)),
  cards: v.pipe(
    v.array(
      v.object({ thing: text, day, says: text, picks: v.pipe(v.array(text), v.maxLength(2)) }),
    ),
    v.maxLength(mostCards),
  ),
  use: v.picklist(tallyUses),
});
