import type { CivilDay } from '#core/calendar';
import type { EntryId, Notebook, PersonId, Reading } from '#core/journal';
import { systemOf, type Measured } from '#core/measure';
import { agreementWindow } from './agreement-window';
import type { Series } from './series';

/** One height read on both sides of one ruler, at one moment: two numbers, both true. */
export interface RulerPair {
  readonly reading: EntryId;
  readonly day: CivilDay;
  readonly author: PersonId | null;
  readonly metric: Measured;
  readonly customary: Measured;
  /** The metric side less the customary, in whole nanometres: exact, nothing is rounded. */
  readonly differenceExact: number;
  readonly windowExact: number;
  /** Whether they lie no further apart than two honest readings do. */
  readonly agrees: boolean;
}

/**
 * The readings whose other side was read too, one in centimetres and one in inches, in the order
 * of the log. Two numbers of the same side are no pair.
 *
 * @example
 * rulerPairs(foldEntries([]), { specimen: {}, investigation: {}, days: [], points: [] }) // => []
 */
export const rulerPairs = (
  { otherSides }: Pick<Notebook, 'otherSides'>,
  { days }: Pick<Series, 'days'>,
): readonly RulerPair[] =>
  days.flatMap(({ readings }) =>
    readings.flatMap((reading) => pairOf(reading, otherSides.get(reading.id)?.measured)),
  );

function pairOf({ id, day, author, counted }: Reading, other?: Measured): readonly RulerPair[] {
  const sides = other ? [counted, other] : [];
  const metric = sides.find(({ unit }) => systemOf(unit) === 'metric');
  const customary = sides.find(({ unit }) => systemOf(unit) === 'customary');
  if (!metric || !customary) return [];
  const differenceExact = metric.exact - customary.exact;
  const windowExact = agreementWindow(customary.mark, metric.mark);
  const agrees = Math.abs(differenceExact) <= windowExact;
  return [{ reading: id, day, author, metric, customary, differenceExact, windowExact, agrees }];
}
