import { markById, type MarkId } from './mark';

/**
 * The nearest place on a mark, in exact steps (whole nanometres, or things). An exact half goes
 * up, away from zero, so that a change and the same change backwards differ only in sign.
 * Half up is the family's rule for reading a ruler (common practice, no source); NIST SP 811
 * B.7.1 rounds a half to the even digit instead. A number that is not finite throws.
 * @example
 * nearestOnMark(38_100_000, '1 in') // => 50800000
 * nearestOnMark(-38_100_000, '1 in') // => -50800000
 */
export const nearestOnMark = (exact: number, id: MarkId): number => {
  if (!Number.isFinite(exact)) throw new RangeError(`${exact} is no length`);
  const step = markById(id).exact;
  const size = Math.abs(exact);
  const below = Math.floor(size / step) * step;
  const nearest = (size - below) * 2 >= step ? below + step : below;
  return exact < 0 && nearest > 0 ? -nearest : nearest;
};

/**
 * Whether a value lies exactly on a division of the mark.
 * @example
 * liesOnMark(12_700_000, '1/2 in') // => true
 * liesOnMark(12_700_000, '1 cm') // => false
 */
export const liesOnMark = (exact: number, id: MarkId): boolean => exact % markById(id).exact === 0;

/**
 * Whether a reading is a right reading of a length known otherwise: no further from it than half
 * a step of the mark. At the exact half both neighbours are right.
 * Source of the half step: GUM (JCGM 100:2008) 4.3.7, from memory.
 * @example
 * readsRight(82_550_000, 83_000_000, '1/4 in') // => true
 * readsRight(88_900_000, 83_000_000, '1/4 in') // => false
 */
export const readsRight = (readExact: number, trueExact: number, id: MarkId): boolean =>
  Math.abs(readExact - trueExact) * 2 <= markById(id).exact;
