import { helperLengths as helperNames, type HelperLength } from '#core/journal';
import { isLengthUnit, type Measured } from '#core/measure';

/**
 * Which of somebody's own helper lengths suits a thing of about this length: one that fits 2 to 10
 * times, because once is a comparison and more than ten steps of the eye lose count (common
 * practice, no source). Of several the longest, which has the fewest steps. Null when none suits,
 * or none was measured. Only the name is given: not how often it fits, which is the answer.
 *
 * @param readingExact the length in whole nanometres
 * @example
 * helperToTry(new Map([['thumb', { text: '1', unit: 'in', mark: '1 in', exact: 25_400_000 }]]), 127_000_000) // => 'thumb'
 * helperToTry(new Map([['thumb', { text: '1', unit: 'in', mark: '1 in', exact: 25_400_000 }]]), 40_000_000) // => null
 */
export const helperToTry = (
  helperLengths: ReadonlyMap<HelperLength, Measured>,
  readingExact: number,
): HelperLength | null => {
  let longest: { readonly name: HelperLength; readonly exact: number } | null = null;
  for (const name of helperNames) {
    const measured = helperLengths.get(name);
    if (!measured || !isLengthUnit(measured.unit) || !suits(measured.exact, readingExact)) continue;
    if (!longest || measured.exact > longest.exact) longest = { name, exact: measured.exact };
  }
  return longest?.name ?? null;
};

const suits = (helperExact: number, readingExact: number): boolean =>
  helperExact > 0 && readingExact >= 2 * helperExact && readingExact <= 10 * helperExact;
