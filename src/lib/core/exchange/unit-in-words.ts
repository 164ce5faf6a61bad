import { nanometresByUnit, parseMeasured, type LengthUnit, type Unit } from '#core/measure';

/**
 * The unit that a cell or a heading's word names, or null: the words that readings may be written
 * with, and for counts `count` and `leaves`.
 * @example
 * unitOfText('inches') // => 'in'
 * unitOfText('day') // => null
 */
export function unitOfText(text: string): Unit | null {
  const word = text.trim();
  if (Object.hasOwn(nanometresByUnit, word)) return word as LengthUnit;
  if (/^(?:counts?|leaf|leaves)$/i.test(word)) return 'count';
  if (!/^(?:\p{L}+\.?|["\u2033'\u2032])$/u.test(word)) return null;
  const one = parseMeasured(`1 ${word}`, { unit: 'mm' });
  return one.ok ? one.value.unit : null;
}

/**
 * The unit that a column's heading names, or null: in brackets, or as its last word.
 * @example
 * unitInHeading('precipitation_mm') // => 'mm'
 * unitInHeading('height (cm)') // => 'cm'
 * unitInHeading('Height in') // => 'in'
 * unitInHeading('note') // => null
 */
export function unitInHeading(heading: string): Unit | null {
  const inBrackets = /[([]\s*([^)\]]*?)\s*[)\]]/.exec(heading)?.[1];
  if (inBrackets !== undefined) return unitOfText(inBrackets);
  return unitOfText(headingWords(heading).at(-1) ?? '');
}

/**
 * The words of a heading in small letters, however they are joined.
 * @example
 * headingWords('plantHeight_cm') // => ['plant', 'height', 'cm']
 */
export const headingWords = (heading: string): readonly string[] =>
  heading
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}"\u2033'\u2032]+/u)
    .filter((word) => word !== '');
