import type { CivilDay, ClockTime, ClockTimeError, DayTextError } from '#core/calendar';
import type { DayState, EntryId, WeatherWord } from '#core/journal';
import type { Measured, ParseError } from '#core/measure';
import type { LineWord } from './columns';
import type { RowProblem } from './csv-row';
import type { ImportField } from './import-mapping';

/** What one row of a table says, once it is understood. */
export type RowContent = ReadingRow | StateRow | WordRow | NoteRow;

export interface ReadingRow {
  readonly kind: 'reading';
  readonly day: CivilDay;
  readonly time?: ClockTime;
  readonly measured: Measured;
  /** Further readings of the same moment, where our own table lists them. */
  readonly again?: readonly Measured[];
  readonly spanDays?: number;
  readonly leaves?: number;
  readonly weather?: WeatherWord;
  readonly note?: string;
}

export interface StateRow {
  readonly kind: 'state';
  readonly day: CivilDay;
  readonly time?: ClockTime;
  readonly state: DayState;
  readonly why?: string;
}

export interface WordRow {
  readonly kind: 'kind-word';
  readonly day: CivilDay;
  readonly word: string;
}

export interface NoteRow {
  readonly kind: 'note';
  readonly day: CivilDay;
  readonly text: string;
}

/** Why a row changes nothing, though nothing is wrong with it. */
export type PassedOver =
  | { readonly kind: 'heading' | 'blank' | 'other-specimen' }
  /** A line of our own table that no longer counts. */
  | { readonly kind: Exclude<LineWord, 'counts'> };

/** The line of the log that says the same already. */
export interface AlreadyThere {
  readonly kind: 'already-there';
  readonly entry: EntryId;
  /** Whether that line counts, or was crossed out or taken back since. */
  readonly line: LineWord;
}

/** Why a row cannot be read. `read` is what stands in the cell. */
export type Refusal =
  | Exclude<RowProblem, { readonly kind: 'quote-inside' }>
  | { readonly kind: 'no-day' | 'no-unit' | 'no-word' }
  | { readonly kind: 'day'; readonly read: string; readonly error: DayTextError }
  /** A day number that is not whole, has no date, or leads out of the calendar. */
  | { readonly kind: 'day-number'; readonly read: string }
  | { readonly kind: 'time'; readonly read: string; readonly error: ClockTimeError }
  | { readonly kind: 'number'; readonly read: string; readonly error: ParseError }
  /** A word that names no state, or not for sure. */
  | { readonly kind: 'state'; readonly read: string }
  /** A number beside a state that says there is none. */
  | { readonly kind: 'state-beside-number'; readonly read: string; readonly state: DayState }
  | {
      readonly kind: 'unit' | 'mark' | 'span-days' | 'leaves' | 'line' | 'all-readings';
      readonly read: string;
    }
  /** Our own table says one length in the reading and another in the exact column beside it. */
  | { readonly kind: 'disagrees'; readonly read: string; readonly exactly: string }
  | { readonly kind: 'too-long'; readonly field: ImportField; readonly most: number };
