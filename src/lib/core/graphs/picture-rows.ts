import type { Drawing, DrawnSymbol } from './drawing';
import type { CountTable } from './graph-table';
import { matchingPlaces, placeAt } from './matching-places';
import { inReadingOrder } from './mirrored-across';

/** One row of the table, and the pictures drawn for it. */
export interface PictureRow {
  readonly label: string;
  readonly count: number;
  /** Index of the place that has its name, or null. */
  readonly place: number | null;
  /** Indexes of its pictures, from the line they begin at. */
  readonly symbols: readonly number[];
}

export interface RowsOfPictures {
  readonly rows: readonly PictureRow[];
  /** Pictures beside no name of the table. */
  readonly straySymbols: readonly number[];
}

/**
 * Which pictures were drawn for which row of the table: those at the row's name. Rows of pictures
 * without a name are taken in order for the rows of the table without one, when there are as many.
 * Not part of the public door.
 */
export const rowsOfPictures = (table: CountTable, drawing: Drawing): RowsOfPictures => {
  const { places, symbols } = inReadingOrder(drawing);
  const placeOfRow = matchingPlaces(
    places,
    table.rows.map(({ label }) => label),
  );
  const inOrder = symbols
    .map((_, index) => index)
    .sort((one, other) => symbols[one]!.at - symbols[other]!.at);
  const across = symbols.map(({ row }) => row);
  const placeOf = inOrder.map((index) => placeAt(symbols[index]!.row, places, across));
  const owned = placeOfRow.map((place) =>
    place === null ? [] : inOrder.filter((_, order) => placeOf[order] === place),
  );
  const taken = new Set(owned.flat());
  const stray = inOrder.filter((index) => !taken.has(index));
  const strayRows = rowsWithoutName(stray, symbols);
  const nameless = table.rows.flatMap((_, row) => (placeOfRow[row] === null ? [row] : []));
  const waiting = [nameless, nameless.filter((row) => table.rows[row]!.count > 0)].find(
    (list) => list.length === strayRows.length,
  );
  const rows = table.rows.map(({ label, count }, row): PictureRow => {
    const own = waiting?.includes(row) ? strayRows[waiting.indexOf(row)] : undefined;
    return { label, count, place: placeOfRow[row]!, symbols: own ?? owned[row]! };
  });
  return { rows, straySymbols: stray };
};

/** How many pictures a row has: a half counts as half of one. */
export const picturesIn = (row: PictureRow, symbols: readonly DrawnSymbol[]): number =>
  row.symbols.reduce((sum, index) => sum + (symbols[index]!.part === 'half' ? 0.5 : 1), 0);

/** Pictures less than half a square apart across the rows are of one row. */
const rowsWithoutName = (
  indexes: readonly number[],
  symbols: readonly DrawnSymbol[],
): readonly (readonly number[])[] => {
  const rows: { readonly at: number; readonly indexes: number[] }[] = [];
  for (const index of indexes) {
    const at = symbols[index]!.row;
    const row = rows.find((each) => Math.abs(each.at - at) < 0.5);
    if (row) row.indexes.push(index);
    else rows.push({ at, indexes: [index] });
  }
  return rows.sort((one, other) => one.at - other.at).map((row) => row.indexes);
};
