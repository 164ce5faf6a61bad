/**
 * Why a figure does not exist. It is never answered with 0, NaN or a guess.
 * `too-few`: it needs more values. `no-spread`: all values it would have to tell apart are equal.
 * `not-finite`: the value at `index` is no number. `beyond-numbers`: the values are so large, or so
 * close together, that the answer does not fit a double.
 */
export type UndefinedStatistic =
  | { readonly kind: 'too-few'; readonly have: number; readonly need: number }
  | { readonly kind: 'no-spread' }
  | { readonly kind: 'not-finite'; readonly index: number }
  | { readonly kind: 'beyond-numbers' };

/** What stands in the way of fitting a line, if anything does. Not part of the public door. */
export const lineObstacle = (
  xs: readonly number[],
  ys: readonly number[],
): UndefinedStatistic | undefined => {
  if (xs.length !== ys.length) throw new Error(`${xs.length} xs cannot go with ${ys.length} ys`);
  if (xs.length < 2) return { kind: 'too-few', have: xs.length, need: 2 };
  const index = xs.findIndex((x, at) => !Number.isFinite(x) || !Number.isFinite(ys[at]));
  if (index >= 0) return { kind: 'not-finite', index };
  return hasSpread(xs) ? undefined : { kind: 'no-spread' };
};

/** Whether at least two of the values differ. Not part of the public door. */
export const hasSpread = (values: readonly number[]): boolean =>
  values.some((value) => value !== values[0]);
