/** One jump on a number line. Its size is never below 1; it goes back where `to` is the smaller. */
export interface Jump {
  readonly from: number;
  readonly to: number;
  readonly size: number;
}

/**
 * The jumps from one whole number to another, forwards or back: first to the next ten, then all the
 * tens at once, then the ones that are left. None where there is no way to go. (2.MD.B.6 shows sums
 * as jumps on a number line; that it is done by tens is common practice, no source.)
 * @example
 * jumpsBetween(8, 25) // => [{ from: 8, to: 10, size: 2 }, { from: 10, to: 20, size: 10 }, { from: 20, to: 25, size: 5 }]
 * jumpsBetween(13, 8) // => [{ from: 13, to: 10, size: 3 }, { from: 10, to: 8, size: 2 }]
 * jumpsBetween(12, 15) // => [{ from: 12, to: 15, size: 3 }]
 */
export const jumpsBetween = (from: number, to: number): readonly Jump[] => {
  if (from === to) return [];
  const direction = from < to ? 1 : -1;
  const left = (at: number): number => (to - at) * direction;
  const toTen = direction === 1 ? (10 - (from % 10)) % 10 : from % 10;
  const firstSize = Math.min(toTen, left(from));
  const atTen = from + direction * firstSize;
  const tensSize = atTen % 10 === 0 ? Math.floor(left(atTen) / 10) * 10 : 0;
  const afterTens = atTen + direction * tensSize;
  return [
    { from, to: atTen, size: firstSize },
    { from: atTen, to: afterTens, size: tensSize },
    { from: afterTens, to, size: left(afterTens) },
  ].filter(({ size }) => size > 0);
};
