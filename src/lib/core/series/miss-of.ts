import { exactPerUnit, isLengthUnit, markById, type Measured, type Unit } from '#core/measure';

/** How far a guess (or a prediction) lay from what was then read. */
export interface Miss {
  /** The guess less the reading: whole nanometres or things; above 0 when the guess was too long. */
  readonly missExact: number;
  readonly direction: 'exact' | 'too-short' | 'too-long';
  readonly size: 'very-close' | 'close' | 'far';
}

/**
 * How far a guess lay from a reading. Very close: within 1 unit or a tenth of the reading; close:
 * within a quarter; far: more. Below 5 units only units count, because 2 for 3 is not "a third
 * off": 1 unit is very close and 2 are close. (Common practice, no source; the 2 units are our
 * choice.) The two may be in different units: lengths are compared exactly, and the unit that
 * judges is the reading's (`guessUnitExact`). A count held against a length is our own mistake and
 * throws; ask `canCompare` first.
 * @example
 * missOf({ text: '2', unit: 'cm', mark: '1 cm', exact: 20_000_000 }, { text: '3', unit: 'cm', mark: '1 cm', exact: 30_000_000 }) // => { missExact: -10000000, direction: 'too-short', size: 'very-close' }
 * missOf({ text: '5', unit: 'in', mark: '1 in', exact: 127_000_000 }, { text: '16', unit: 'cm', mark: '1 cm', exact: 160_000_000 }).size // => 'close'
 */
export const missOf = (guess: Measured, reading: Measured): Miss => {
  if (!canCompare(guess, reading)) throw new Error('A count cannot be held against a length');
  const missExact = guess.exact - reading.exact;
  const direction = missExact === 0 ? 'exact' : missExact < 0 ? 'too-short' : 'too-long';
  return { missExact, direction, size: sizeOf(Math.abs(missExact), reading) };
};

/**
 * Whether a guess can be held against a reading: both are lengths, or both are counts.
 * @example
 * canCompare({ unit: 'in' }, { unit: 'cm' }) // => true
 * canCompare({ unit: 'count' }, { unit: 'cm' }) // => false
 */
export const canCompare = (
  guess: { readonly unit: Unit },
  reading: { readonly unit: Unit },
): boolean => isLengthUnit(guess.unit) === isLengthUnit(reading.unit);

/**
 * What one unit is when a guess is judged: the unit of the reading. For feet, yards and metres,
 * which are as long as what is guessed, it is the smaller unit the mark belongs to, or a tenth.
 * @example
 * guessUnitExact({ text: '12', unit: 'cm', mark: '1 mm', exact: 120_000_000 }) // => 10000000
 * guessUnitExact({ text: '2.35', unit: 'm', mark: '1 cm', exact: 2_350_000_000 }) // => 10000000
 */
export const guessUnitExact = ({ unit, mark: id }: Measured): number => {
  const isLongUnit = unit === 'ft' || unit === 'yd' || unit === 'm';
  if (!isLongUnit) return exactPerUnit(unit);
  const mark = markById(id);
  return mark.unit === unit ? mark.exact : exactPerUnit(mark.unit);
};

/** Below this many units a part of the reading says nothing: only units count. */
export const fewestUnitsForShares = 5;

const sizeOf = (missExact: number, reading: Measured): Miss['size'] => {
  const unitExact = guessUnitExact(reading);
  // In whole numbers, so that a tenth is a tenth.
  if (missExact <= unitExact) return 'very-close';
  if (reading.exact < fewestUnitsForShares * unitExact) {
    return missExact <= 2 * unitExact ? 'close' : 'far';
  }
  if (10 * missExact <= reading.exact) return 'very-close';
  return 4 * missExact <= reading.exact ? 'close' : 'far';
};
