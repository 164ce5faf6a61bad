import { expect } from 'vitest';
import type { Result } from '#core/base';

/** Expects a figure to agree within a share of the expected one, or of a scale when it is given. */
export const near = (
  actual: number,
  expected: string | number | null | undefined,
  share: number,
  scale?: number,
): void => {
  if (expected === null || expected === undefined) throw new Error('Nothing to compare with');
  const wanted = Number(expected);
  // Where 0 is expected, which has no share, the share is taken of 1.
  const allowed = share * (scale ?? (Math.abs(wanted) || 1));
  expect(Math.abs(actual - wanted), `${actual} against ${wanted}`).toBeLessThanOrEqual(allowed);
};

/** The value of an outcome that must be good. */
export const valueOf = <Value>(result: Result<Value, unknown>): Value => {
  if (!result.ok) throw new Error(`No value: ${JSON.stringify(result.error)}`);
  return result.value;
};
