/**
 * The rows whose values were exchanged: the drawn values of the rows that do not fit are the
 * right values of those same rows in another order. Null where that is not so, or where fewer
 * than two rows do not fit.
 * @param wrong the rows that do not fit
 * @param fits whether what was drawn for one row would be right for another
 * @example
 * swappedValues([0, 1], (drawn, row) => [3, 5][drawn] === [5, 3][row]) // => [0, 1]
 * swappedValues([0, 1], (drawn, row) => [3, 6][drawn] === [5, 3][row]) // => null
 */
export const swappedValues = (
  wrong: readonly number[],
  fits: (drawn: number, row: number) => boolean,
): readonly number[] | null => {
  if (wrong.length < 2) return null;
  const partnerOf = new Map<number, number>();
  // Every drawn value looks for a row of its own; one that is taken makes its owner move on.
  const settle = (drawn: number, seen: Set<number>): boolean =>
    wrong.some((row) => {
      if (row === drawn || seen.has(row) || !fits(drawn, row)) return false;
      seen.add(row);
      const owner = partnerOf.get(row);
      if (owner !== undefined && !settle(owner, seen)) return false;
      partnerOf.set(row, drawn);
      return true;
    });
  return wrong.every((drawn) => settle(drawn, new Set())) ? wrong : null;
};
