import type { BarRow } from './bar-rows';
import type { Drawing } from './drawing';
import type { FoundMistake } from './found-mistake';
import type { GraphTable } from './graph-table';
import { inReadingOrder } from './mirrored-across';
import { middleOf } from './spread';

export interface MissingDays {
  readonly mistakes: readonly FoundMistake[];
  /** Rows of days without a number whose place may still be written: not told as a mistake yet. */
  readonly toCome: readonly number[];
  /** There are days without a number, and each has its place without a bar. */
  readonly hasGaps: boolean;
}

/**
 * Days without a number in a graph of values: each keeps its place and has no bar. A bar there, or
 * a place left out so that its neighbours touch, is B15. A space left free without a name shows
 * the gap too. Places at an end, or beside others that are not written yet, are waited for until
 * all days with numbers have theirs. Not part of the public door.
 */
export const missingDays = (
  table: GraphTable,
  drawing: Drawing,
  rows: readonly BarRow[],
): MissingDays => {
  const { places } = inReadingOrder(drawing);
  if (table.form !== 'values') return { mistakes: [], toCome: [], hasGaps: false };
  const blank = rows.flatMap(({ exact }, row) => (exact === null ? [row] : []));
  const bars = blank.flatMap((row) => rows[row]!.bar ?? []);
  const placeless = blank.filter((row) => rows[row]!.place === null && !isFree(row, rows, places));
  const isDone = rows.every(({ exact, place }) => exact === null || place !== null);
  const dropped = placeless.filter((row) => isDone || neighbours(row, rows).length === 2);
  const beside = dropped.flatMap((row) => neighbours(row, rows).map((each) => each.place!));
  const touching: FoundMistake = {
    ...{ id: 'B15', isSoft: false },
    lookAt: { part: 'places', indexes: [...new Set(beside)].sort((one, other) => one - other) },
  };
  const drawn: FoundMistake = { ...touching, lookAt: { part: 'bars', indexes: bars } };
  return {
    mistakes: [...(bars.length > 0 ? [drawn] : []), ...(dropped.length > 0 ? [touching] : [])],
    toCome: placeless.filter((row) => !dropped.includes(row)),
    hasGaps: blank.length > 0 && placeless.length === 0 && bars.length === 0,
  };
};

/** The nearest named row before and after a row. */
const neighbours = (row: number, rows: readonly BarRow[]): readonly BarRow[] => {
  const before = rows.slice(0, row).findLast(({ place }) => place !== null);
  const after = rows.slice(row + 1).find(({ place }) => place !== null);
  return [before, after].filter((each) => each !== undefined);
};

/** Whether the paper has room between the neighbours of a row for every day between them. */
const isFree = (row: number, rows: readonly BarRow[], places: Drawing['places']): boolean => {
  const [before, after] = neighbours(row, rows);
  if (!before || !after) return false;
  const atOf = ({ place }: BarRow): number => places[place!]!.at;
  const named = rows.flatMap((each, index) => (each.place === null ? [] : [{ each, index }]));
  const usual = middleOf(
    named.slice(1).flatMap(({ each, index }, earlier) => {
      const last = named[earlier]!;
      return index - last.index === 1 ? [atOf(each) - atOf(last.each)] : [];
    }),
  );
  const days = rows.indexOf(after) - rows.indexOf(before);
  return usual > 0 && atOf(after) - atOf(before) >= (days - 0.5) * usual;
};
