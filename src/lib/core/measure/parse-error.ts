import type { Measured } from './measured';

/** Why a text is not a reading. No words for people here: the face has those. */
export type ParseErrorKind =
  /** Nothing was written. */
  | 'empty'
  /** More characters than any reading has. */
  | 'too-long'
  /** Something that is no part of a number or a unit. */
  | 'not-a-number'
  /** A minus sign: nothing is shorter than nothing. */
  | 'negative'
  /** More than the largest length or count kept here. */
  | 'too-big'
  /** A word that is no unit known here. */
  | 'unknown-unit'
  /** It could mean more than one thing, or a sign that this notebook writes otherwise. */
  | 'ambiguous'
  /** A clear value that lies between the marks of its unit. */
  | 'off-every-mark'
  /** An unfinished fraction, a nought below the line, or a fraction that does not fit its whole. */
  | 'bad-fraction'
  /** Parts of `1 ft 15 in` that do not fit together. */
  | 'bad-part'
  /** Units that do not go together, or a length where things are counted. */
  | 'unit-mismatch';

export interface ParseError {
  readonly kind: ParseErrorKind;
  /** Where it went wrong: UTF-16 units from the start of the text as it was given. */
  readonly position: number;
  /** What stands there, at most 24 characters of it; empty at the end of the text. */
  readonly read: string;
  /** What would have fitted there. */
  readonly expected?: 'number' | 'denominator' | 'unit' | 'nothing-more';
  /** Readings that may have been meant, to choose from; never chosen here. */
  readonly choices?: readonly Measured[];
}
