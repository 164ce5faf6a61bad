import { failed, ok, type Result } from '#core/base';
import { daysBetween, type CivilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import { isLengthUnit, type Measured } from '#core/measure';
import { dayAmount, type Series } from '#core/series';
import { predictableQuantities } from './prediction-offer';

/** The readings on both sides of a day without one: for words, never for the log or a graph. */
export interface BetweenNeighbours {
  readonly before: Neighbour;
  readonly after: Neighbour;
  /** Days from the one to the other: 2 or 3. */
  readonly gapDays: number;
  /** The band between them in whole nanometres; one may equal the other. */
  readonly lowExact: number;
  readonly highExact: number;
  /** The two were read in different units, so a child cannot name the band in one. */
  readonly unitsMixed: boolean;
}

export interface Neighbour {
  readonly day: CivilDay;
  readonly measured: Measured;
}

/**
 * "We do not know; it was probably between Monday's and Wednesday's": the two neighbours of a day
 * that was not measured, for heights and lengths, when they lie 2 or 3 days apart (common practice,
 * no source). Over a longer gap nothing is said.
 * Errors: `not-this-quantity`; `measured`, the day has a number; `no-neighbour` on one side or
 * both; `too-far` apart; `nothing-to-measure`, the plant was not up yet or was marked lost on that day, so
 * that there was nothing to measure.
 * @example
 * betweenNeighbours({ investigation: { quantity: 'rain' }, days: [] }, '2026-03-10') // => { ok: false, error: { kind: 'not-this-quantity', quantity: 'rain' } }
 * betweenNeighbours({ investigation: { quantity: 'length' }, days: [] }, '2026-03-10') // => { ok: false, error: { kind: 'no-neighbour' } }
 */
export const betweenNeighbours = (
  series: Series,
  day: CivilDay,
): Result<BetweenNeighbours, BetweenNeighboursError> => {
  const { quantity } = series.investigation;
  if (!predictableQuantities.includes(quantity)) {
    return failed({ kind: 'not-this-quantity', quantity });
  }
  const here = series.days.find((each) => each.day === day);
  if (here?.state === 'number') return failed({ kind: 'measured' });
  if (here?.state === 'lost' || here?.state === 'not-up-yet') {
    return failed({ kind: 'nothing-to-measure' });
  }
  const neighbours = series.days.flatMap((each): Neighbour[] => {
    const measured = dayAmount(series, each);
    return measured && isLengthUnit(measured.unit) ? [{ day: each.day, measured }] : [];
  });
  const before = neighbours.findLast((each) => each.day < day);
  const after = neighbours.find((each) => each.day > day);
  if (!before || !after) return failed({ kind: 'no-neighbour' });
  const gapDays = daysBetween(before.day, after.day);
  if (gapDays > longestGapDays) return failed({ kind: 'too-far', gapDays, most: longestGapDays });
  const exacts = [before.measured.exact, after.measured.exact];
  return ok({
    ...{ before, after, gapDays },
    lowExact: Math.min(...exacts),
    highExact: Math.max(...exacts),
    unitsMixed: before.measured.unit !== after.measured.unit,
  });
};

const longestGapDays = 3;

export type BetweenNeighboursError =
  | { readonly kind: 'not-this-quantity'; readonly quantity: Quantity }
  | { readonly kind: 'measured' }
  | { readonly kind: 'nothing-to-measure' }
  | { readonly kind: 'no-neighbour' }
  | { readonly kind: 'too-far'; readonly gapDays: number; readonly most: 3 };
