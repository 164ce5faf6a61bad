import { exactPerUnit } from '#core/measure';
import type { Drawing } from './drawing';
import type { GraphTable } from './graph-table';
import { matchingPlaces, placeAt } from './matching-places';
import { inReadingOrder } from './mirrored-across';

/** One row of the table, and what was drawn for it. */
export interface BarRow {
  readonly label: string;
  /** What its bar should say; null for a day without a number. */
  readonly exact: number | null;
  /** Where the reading is in another unit than the graph: its bare number, in the graph's unit. */
  readonly bare: number | null;
  /** Index of the place that has its name, or null. */
  readonly place: number | null;
  /** Index of its bar, or null. */
  readonly bar: number | null;
}

export interface RowsOfBars {
  readonly rows: readonly BarRow[];
  /** Bars beside no name of the table. */
  readonly strayBars: readonly number[];
  /** Bars that stand where another one stands already. */
  readonly doubledBars: readonly { readonly bar: number; readonly row: number }[];
}

/**
 * Which bar was drawn for which row of the table: the bar that stands at the row's name. Bars
 * without a name are taken in order for the rows without one, when there are as many.
 * A table that makes no bars throws. Not part of the public door.
 */
export const rowsOfBars = (table: GraphTable, drawing: Drawing): RowsOfBars => {
  const plain = plainRows(table);
  const { places, bars } = inReadingOrder(drawing);
  const placeOfRow = matchingPlaces(
    places,
    plain.map(({ label }) => label),
  );
  const inOrder = bars
    .map((_, index) => index)
    .sort((one, other) => bars[one]!.at - bars[other]!.at);
  const positions = bars.map(({ at }) => at);
  const placeOf = bars.map(({ at }) => placeAt(at, places, positions));
  const barsAt = (place: number): readonly number[] =>
    inOrder.filter((index) => placeOf[index] === place);
  const owned = placeOfRow.map((place) => (place === null ? [] : barsAt(place)));
  const taken = new Set(owned.flat());
  const strays = inOrder.filter((index) => !taken.has(index));
  const nameless = plain.flatMap((_, row) => (placeOfRow[row] === null ? [row] : []));
  const waiting = [nameless, nameless.filter((row) => plain[row]!.exact)].find(
    (list) => list.length === strays.length,
  );
  const rows = plain.map((row, index): BarRow => {
    const stray = waiting?.includes(index) ? strays[waiting.indexOf(index)] : undefined;
    return { ...row, place: placeOfRow[index]!, bar: owned[index]![0] ?? stray ?? null };
  });
  const doubledBars = owned.flatMap((indexes, row) =>
    indexes.slice(1).map((bar) => ({ bar, row })),
  );
  return { rows, strayBars: strays, doubledBars };
};

type PlainRow = Pick<BarRow, 'label' | 'exact' | 'bare'>;

const plainRows = (table: GraphTable): readonly PlainRow[] => {
  if (table.form === 'counts') {
    return table.rows.map(({ label, count }) => ({ label, exact: count, bare: null }));
  }
  if (table.form !== 'values') throw new Error(`No bars are drawn from a table of ${table.form}`);
  const perUnit = exactPerUnit(table.unit);
  return table.rows.map(({ label, exact, unit }) => ({
    ...{ label, exact },
    bare: exact === null || unit === table.unit ? null : (exact / exactPerUnit(unit)) * perUnit,
  }));
};
