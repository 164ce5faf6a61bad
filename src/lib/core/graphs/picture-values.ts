import type { DrawnSymbol } from './drawing';
import { keyIsRight } from './picture-key';
import { picturesIn, type RowsOfPictures } from './picture-rows';
import { swappedValues } from './swapped-values';

/** What the pictures say beside the table, as indexes of rows of the table. */
export interface PictureValues {
  /** One picture for each thing, though the key says more: P7. */
  readonly oneForEach: readonly number[];
  /** As many pictures as things times the key: P8. */
  readonly multiplied: readonly number[];
  readonly swapped: readonly number[];
  /** Half a picture too many or too few: P9. */
  readonly byHalf: readonly number[];
  /** Counts that the key cannot show, drawn as nearly as it can. */
  readonly beyondKey: readonly number[];
  readonly off: readonly number[];
  /** Rows with a name and without any picture so far. */
  readonly empty: readonly number[];
}

/**
 * Compares the pictures of each row with its count by the key the child wrote. Without a number in
 * the key, the number that fits most rows is taken, ours first. One cause behind all rows is told
 * before each row is one of its own. Not part of the public door.
 */
export const pictureValues = (
  { rows }: RowsOfPictures,
  symbols: readonly DrawnSymbol[],
  keyValue: number | null,
  ourKey: number,
): PictureValues => {
  const drawn = rows.map((row) => picturesIn(row, symbols));
  const fits = (from: number, row: number, key: number): boolean =>
    Math.abs(drawn[from]! - rows[row]!.count / key) < 1e-9;
  const wrongBy = (key: number): readonly number[] =>
    rows.flatMap((_, row) => (fits(row, row, key) ? [] : [row]));
  const key = keyValue ?? fewest([ourKey, 1, 2, 5, 10], (one) => wrongBy(one).length);

  const wrong = wrongBy(key);
  const swapped = exchanged(wrong, (from, row) => fits(from, row, key));
  const isEmpty = (row: number): boolean => rows[row]!.symbols.length === 0;
  const rest = wrong.filter((row) => !swapped.includes(row) && !isEmpty(row));
  const tall = rows.flatMap(({ count }, row) => (count > 0 && !isEmpty(row) ? [row] : []));
  const offBy = (row: number): number => Math.abs(drawn[row]! - rows[row]!.count / key);
  const isByHalf = (row: number): boolean => Math.abs(offBy(row) - 0.5) < 1e-9;
  // Some rows alone may just be slips, and halves made whole are a cause of their own.
  const isEveryRow =
    rest.length > 0 && (rest.length === tall.length || (rest.length > 1 && !rest.every(isByHalf)));
  const isAll = (times: number): boolean =>
    key > 1 && isEveryRow && rest.every((row) => drawn[row] === rows[row]!.count * times);
  const hasCause = isAll(1) || isAll(key);
  const single = hasCause ? [] : rest;
  const byHalf = single.filter(isByHalf);
  const beyondKey = single.filter(
    (row) => offBy(row) < 1 && !keyIsRight([rows[row]!.count], key) && !byHalf.includes(row),
  );
  return {
    oneForEach: isAll(1) ? rest : [],
    multiplied: isAll(key) ? rest : [],
    ...{ swapped, byHalf, beyondKey },
    off: single.filter((row) => !byHalf.includes(row) && !beyondKey.includes(row)),
    empty: wrong.filter(
      (row) => isEmpty(row) && !swapped.includes(row) && rows[row]!.place !== null,
    ),
  };
};

const fewest = (keys: readonly number[], wrongOf: (key: number) => number): number =>
  keys.reduce((best, key) => (wrongOf(key) < wrongOf(best) ? key : best));

/** All of them in another order, or else each two that carry each other's values. */
const exchanged = (
  wrong: readonly number[],
  fits: (drawn: number, row: number) => boolean,
): readonly number[] =>
  swappedValues(wrong, fits) ??
  wrong.filter((one) =>
    wrong.some((other) => other !== one && fits(one, other) && fits(other, one)),
  );
