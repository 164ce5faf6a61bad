import { quickselect } from 'simple-statistics';
import { failed, ok, type Result } from '#core/base';
import type { UndefinedStatistic } from './undefined-statistic';

/**
 * The median: the middle value by size, or the point halfway between the two middle ones when
 * their number is even. Undefined for no values.
 * @example
 * median([3, 1, 2]) // => { ok: true, value: 2 }
 * median([4, 1, 2, 3]) // => { ok: true, value: 2.5 }
 * median([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 1 } }
 */
export const median = (values: readonly number[]): Result<number, UndefinedStatistic> => {
  if (values.length === 0) return failed({ kind: 'too-few', have: 0, need: 1 });
  const index = values.findIndex((value) => !Number.isFinite(value));
  if (index >= 0) return failed({ kind: 'not-finite', index });
  return ok(medianInPlace(Float64Array.from(values)));
};

/**
 * The median of one or more finite values, which are left in another order: selection takes about
 * 3 ms for the half million slopes of 1 000 readings, where sorting takes about 50. Not part of
 * the public door.
 */
export const medianInPlace = (values: Float64Array): number => {
  const upperIndex = Math.floor(values.length / 2);
  // Typed narrower than it works: it only reads, compares and swaps by index.
  quickselect(values as unknown as number[], upperIndex);
  const upper = values[upperIndex] as number;
  if (values.length % 2 === 1) return upper + 0;
  const lower = values.subarray(0, upperIndex).reduce((most, value) => Math.max(most, value));
  // Halved before adding, so that no sum leaves the range of a double.
  return lower / 2 + upper / 2 + 0;
};
