import type { Separator } from './separator';

/** One record of a table file. */
export interface CsvRow {
  readonly fields: readonly string[];
  /** Which record of the file it is, the first being 1, heading and blank records included. */
  readonly row: number;
  /** Which line of the file it begins on, the first being 1: a field may hold line breaks. */
  readonly line: number;
  /** What is odd about the record, or null. Its fields were read all the same. */
  readonly problem: RowProblem | null;
}

export type RowProblem =
  /** More or fewer fields than the first record has. */
  | { readonly kind: 'ragged'; readonly expected: number; readonly found: number }
  /** A quote in the middle of a field that does not begin with one: kept as it stands. */
  | { readonly kind: 'quote-inside'; readonly field: number }
  /** Text between a closing quote and the next separator: joined to the field. */
  | { readonly kind: 'text-after-quote'; readonly field: number };

export interface CsvTable {
  readonly rows: readonly CsvRow[];
  readonly separator: Separator;
}

export type CsvError =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-many-rows'; readonly most: number }
  /** A quote that is never closed. `row` and `line` are where it was opened. */
  | { readonly kind: 'open-quote'; readonly row: number; readonly line: number };
