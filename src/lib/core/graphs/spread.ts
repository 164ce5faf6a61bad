/**
 * How much sizes differ: the largest less the smallest, as a part of the middle one, so that
 * wobbles of a careful hand stay small and one size that stands out does not set the measure.
 * Fewer than two sizes do not differ; sizes round a middle of 0 differ beyond every limit.
 * @example
 * spreadOf([1, 1, 1.25]) // => 0.25
 * spreadOf([2]) // => 0
 * spreadOf([0, 0, 1]) // => Infinity
 */
export const spreadOf = (sizes: readonly number[]): number => {
  if (sizes.length < 2) return 0;
  const difference = Math.max(...sizes) - Math.min(...sizes);
  return difference === 0 ? 0 : difference / Math.abs(middleOf(sizes));
};

/**
 * The middle of the sizes in order (of an even number, the lower of the two in the middle, so
 * that it is always one that was drawn); 0 where there are none.
 * @example
 * middleOf([3, 1, 2]) // => 2
 * middleOf([1, 2]) // => 1
 */
export const middleOf = (sizes: readonly number[]): number =>
  [...sizes].sort((one, other) => one - other)[Math.floor((sizes.length - 1) / 2)] ?? 0;
