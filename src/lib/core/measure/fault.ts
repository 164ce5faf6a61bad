import type { ParseError, ParseErrorKind } from './parse-error';

/** A change to the text, from `start` to `end`, that would make it a reading. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly replacement: string;
  /** Offered in inches, feet and yards only: nobody means a quarter of a centimetre. */
  readonly customaryOnly?: boolean;
}

/** A parse error on its way out: what is offered is still a change to the text. */
export interface Fault {
  readonly kind: ParseErrorKind;
  readonly start: number;
  readonly end: number;
  readonly expected?: ParseError['expected'];
  readonly edits?: readonly Edit[];
}

export const edited = (text: string, { start, end, replacement }: Edit): string =>
  text.slice(0, start) + replacement + text.slice(end);
