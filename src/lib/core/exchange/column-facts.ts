import { readDayText } from '#core/calendar';
import { headingWords, unitInHeading, unitOfText } from './unit-in-words';
import { stateOfWord, weatherOfWord } from './state-words';
import type { Unit } from '#core/measure';

/** What one column of a table looks like, by its heading and by its first cells. */
export interface ColumnFacts {
  readonly column: number;
  /** The words of its heading in small letters; none where the table has no heading. */
  readonly words: readonly string[];
  readonly headingUnit: Unit | null;
  /** The share of its filled cells, 0 to 1, that read as each of these. */
  readonly share: {
    readonly day: number;
    readonly number: number;
    readonly wholeNumber: number;
    readonly unit: number;
    readonly state: number;
    readonly weather: number;
  };
  readonly filledCount: number;
}

export function columnFacts(
  column: number,
  heading: string | null,
  cells: readonly string[],
): ColumnFacts {
  const filled = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  const share = (isOne: (cell: string) => boolean): number =>
    filled.length === 0 ? 0 : filled.filter(isOne).length / filled.length;
  return {
    column,
    words: heading === null ? [] : headingWords(heading),
    headingUnit: heading === null ? null : unitInHeading(heading),
    share: {
      day: share(looksLikeDay),
      number: share(looksLikeNumber),
      wholeNumber: share((cell) => /^(?:days?\s*)?-?\d{1,6}(?:\.0*)?$/i.test(cell)),
      unit: share((cell) => unitOfText(cell) !== null),
      state: share((cell) => stateOfWord(cell) !== null),
      weather: share((cell) => weatherOfWord(cell) !== null),
    },
    filledCount: filled.length,
  };
}

/** Also a day that needs an order to be sure, or that has a slip in it. */
export function looksLikeDay(cell: string): boolean {
  const read = readDayText(cell);
  return read.ok || read.error.kind !== 'not-a-day';
}

/** A number as tables write it, with or without a sign, a unit, or as a fraction. */
const looksLikeNumber = (cell: string): boolean =>
  /^[-+]?(?:\d[\d.,]*|[.,]\d+)(?:[\s-]+\d+\/\d+|\/\d+)?\s*(?:\p{L}{1,6}\.?|["\u2033])?$/u.test(
    cell,
  ) || /^\d*\s*[\u00bc-\u00be\u2150-\u215e]/.test(cell);
