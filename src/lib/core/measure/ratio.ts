/** A number as two whole numbers, so that thirds and hundredths are both exact. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export const ratio = (over: bigint, under = 1n): Ratio => ({ over, under });

export const plus = (one: Ratio, other: Ratio): Ratio =>
  ratio(one.over * other.under + other.over * one.under, one.under * other.under);

export const times = (one: Ratio, factor: number): Ratio =>
  ratio(one.over * BigInt(factor), one.under);

export const isOver = (one: Ratio, limit: number): boolean => one.over > BigInt(limit) * one.under;

/** How many whole steps fit, and whether nothing is left over. */
export const stepsIn = (
  one: Ratio,
  step: number,
): { readonly whole: number; readonly fits: boolean } => {
  const size = one.under * BigInt(step);
  return { whole: Number(one.over / size), fits: one.over % size === 0n };
};
