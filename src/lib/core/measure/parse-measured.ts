import { failed, ok, type Result } from '#core/base';
import { combineParts, type CombinedParts } from './combined-parts';
import { edited, type Fault } from './fault';
import { formatMeasured } from './format-measured';
import { largestCount, largestLengthExact, longestReadingText } from './largest-reading';
import type { MarkId } from './mark';
import { markOfReading, readingsBeside } from './mark-of-reading';
import type { Measured } from './measured';
import type { ParseError } from './parse-error';
import { isOver, stepsIn } from './ratio';
import { tokensOf } from './tokens';
import { systemOf, type Unit } from './unit';
import { readParts } from './written-parts';
import { characterFor, type DecimalSign } from './written-options';

export interface HowToParse {
  /** The unit of a bare number. A unit written in the text overrides it. */
  readonly unit: Unit;
  /** The mark this is read to, kept when the value lies on it and it belongs to the unit. */
  readonly mark?: MarkId;
  /** Point when not said. */
  readonly decimal?: DecimalSign;
}

/**
 * A reading out of the text that somebody wrote: `12`, `12.5 cm`, `4 1/2`, `4½ in`, `4-1/2"`,
 * `1 ft 3 in`, `1′ 3 1/4″`, `.5`. All arithmetic is in whole numbers, so 0.1 mm is exact. The
 * text is kept as typed, without the blanks around it.
 *
 * Text that is no reading, or that could be two, is an error value with its place and, where there
 * are any, the readings that may have been meant; nothing is guessed. A decimal comma where points
 * are used is such a text, and so is `1,234`. A plain improper fraction (`5/4`) is clear and fine.
 * @example
 * parseMeasured('4 1/2', { unit: 'in' }) // => { ok: true, value: { text: '4 1/2', unit: 'in', mark: '1/2 in', exact: 114_300_000 } }
 * parseMeasured('12,5', { unit: 'cm', decimal: 'comma' }).value.exact // => 125_000_000
 * parseMeasured('3', { unit: 'cm', mark: '1 mm' }).value.mark // => '1 mm'
 * parseMeasured('4 1/0', { unit: 'in' }) // => { ok: false, error: { kind: 'bad-fraction', position: 4, read: '0', expected: 'denominator', choices: [] } }
 * parseMeasured('1/3 in', { unit: 'in' }).error.choices.map((each) => each.text) // => ['5/16 in', '3/8 in']
 */
export const parseMeasured = (text: string, how: HowToParse): Result<Measured, ParseError> => {
  const result = readMeasured(text, how);
  if (result.ok) return result;
  const { kind, start, end, expected, choices } = result.error;
  // Whole characters, so that an emoji is never cut in half.
  const read = [...text.slice(start, Math.min(end, start + 48))].slice(0, 24).join('');
  return failed({
    kind,
    position: start,
    read,
    ...(expected ? { expected } : {}),
    choices: choices ?? choicesOf(text, how, result.error),
  });
};

interface ReadFault extends Fault {
  readonly choices?: readonly Measured[];
}

const readMeasured = (text: string, how: HowToParse): Result<Measured, ReadFault> => {
  const trimmed = text.trim();
  const start = text.length - text.trimStart().length;
  const end = start + trimmed.length;
  if (trimmed === '') return failed({ kind: 'empty', start: 0, end: 0, expected: 'number' });
  if (trimmed.length > longestReadingText) return failed({ kind: 'too-long', start, end });
  const parts = readParts(tokensOf(text), characterFor(how.decimal));
  if (!parts.ok) return parts;
  const combined = combineParts(parts.value, how.unit);
  if (!combined.ok) return combined;
  const { value, unit } = combined.value;
  const limit = unit === 'count' ? largestCount : largestLengthExact;
  if (isOver(value, limit)) return failed({ kind: 'too-big', start, end });
  const mark = markOfReading(combined.value, how.mark);
  if (!mark) {
    const choices = besides(combined.value, how).filter(({ exact }) => exact <= limit);
    return failed({ kind: 'off-every-mark', start, end, choices });
  }
  const exact = stepsIn(value, mark.exact).whole * mark.exact;
  return ok({ text: trimmed, unit, mark: mark.id, exact });
};

const besides = (parts: CombinedParts, how: HowToParse): readonly Measured[] =>
  readingsBeside(parts, how.mark, { decimal: how.decimal });

/** The readings that the offered changes make, each once, written out in full. */
const choicesOf = (text: string, how: HowToParse, fault: Fault): readonly Measured[] => {
  const choices: Measured[] = [];
  const far = fault.kind === 'unknown-unit' && isFarFrom(how.unit, text.slice(fault.start));
  for (const edit of far ? [] : (fault.edits ?? [])) {
    const made = readMeasured(edited(text, edit), how);
    if (!made.ok || choices.some(({ exact }) => exact === made.value.exact)) continue;
    if (edit.customaryOnly && systemOf(made.value.unit) !== 'customary') continue;
    choices.push({ ...made.value, text: formatMeasured(made.value, { decimal: how.decimal }) });
  }
  return choices;
};

/** `12 com` may be 12 cm, and `7 seeds` 7; `2 km` is not 2 in. */
const isFarFrom = (unit: Unit, word: string): boolean =>
  unit !== 'count' && word.slice(0, 1).toLowerCase() !== unit.slice(0, 1);
