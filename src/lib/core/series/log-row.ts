import type { CivilDay } from '#core/calendar';
import type { CrossedOut, DayMark, KindNote, Note, Reading } from '#core/journal';

/**
 * One line of a log as it is read on a page: every line ever written, crossed out or not, and
 * the days nothing was written for.
 */
export type LogRow = ReadingRow | MarkRow | WordRow | NoteRow | MovedAwayRow | BlankRow | BlanksRow;

/** Why a line stands with a pencil line through it; null when it counts. */
export type Struck = 'taken-back' | 'overtaken' | null;

interface RowPlace {
  /** Stays the same while the line is on its day; no spaces, so that it can name the row. */
  readonly key: string;
  readonly day: CivilDay;
  /** Whether the plan asks for a reading on this day of the week. */
  readonly planned: boolean;
  /** Whether this is the first row of its day: the one that names it. */
  readonly opensDay: boolean;
}

export interface ReadingRow extends RowPlace {
  readonly kind: 'reading';
  readonly line: Reading;
  /** Days since the day of the number before; null for the first number and for a second one. */
  readonly gapDays: number | null;
  readonly struck: Struck;
}

export interface MarkRow extends RowPlace {
  readonly kind: 'mark';
  readonly line: DayMark;
  readonly struck: Struck;
}

export interface WordRow extends RowPlace {
  readonly kind: 'word';
  readonly line: KindNote;
  readonly struck: Struck;
}

export interface NoteRow extends RowPlace {
  readonly kind: 'note';
  readonly line: Note;
  readonly struck: Struck;
}

/** What is left on a day whose reading a correction moved to another day. */
export interface MovedAwayRow extends RowPlace {
  readonly kind: 'moved-away';
  readonly reading: Reading;
  readonly was: CrossedOut;
}

/** A day without a reading, a word or a mark that counts. */
export interface BlankRow extends RowPlace {
  readonly kind: 'blank';
  /** Whether there is no other row for the day, not even a crossed-out one. */
  readonly alone: boolean;
}

/** A long blank stretch as one row; `day` is its first day. */
export interface BlanksRow extends RowPlace {
  readonly kind: 'blanks';
  readonly lastDay: CivilDay;
  readonly dayCount: number;
  /** Whether it is short enough to be laid out day by day. */
  readonly canOpen: boolean;
}
