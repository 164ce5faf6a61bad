import type { ImportTotals } from './import-totals';
import type { AlreadyThere, PassedOver, Refusal, RowContent } from './row-content';

/** What bringing in a table would do, row by row, before anything is written. */
export interface ImportPreview {
  readonly rows: readonly PreviewRow[];
  readonly countByOutcome: Readonly<Record<Outcome, number>>;
  /** Of every number in the table, new or there already; refused rows are not in it. */
  readonly totals: ImportTotals;
}

/** A row's outcome; the first four would each become one entry. */
export type Outcome =
  | RowContent['kind']
  /** The log says the same already: it changes nothing. */
  | 'already-there'
  /** A heading, a blank row, another specimen's row, a line that was struck out. */
  | 'passed-over'
  /** It cannot be read, and `why` says where. */
  | 'refused';

export type PreviewRow = {
  /** Which record of the file it is, the first being 1. */
  readonly row: number;
  /** Which line of the file it begins on. */
  readonly line: number;
} & (
  | NewRow
  | { readonly outcome: 'already-there'; readonly what: RowContent; readonly why: AlreadyThere }
  | { readonly outcome: 'passed-over'; readonly what: null; readonly why: PassedOver }
  | { readonly outcome: 'refused'; readonly what: null; readonly why: Refusal }
);

/** A row that would become an entry: its outcome names the kind of its content. */
type NewRow = {
  [Kind in RowContent['kind']]: {
    readonly outcome: Kind;
    readonly what: Extract<RowContent, { readonly kind: Kind }>;
    readonly why: null;
  };
}[RowContent['kind']];

export interface ImportProgress {
  readonly rowsDone: number;
  readonly rowsInAll: number;
}
