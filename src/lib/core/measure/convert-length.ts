import { lengthConverter } from './length-measure';
import { systemOf, type LengthUnit, type UnitSystem } from './unit';

/**
 * A number of one unit as a number of another, the nearest double to the true quotient for every
 * value that is a whole number of nanometres (all that can be read from a ruler or a gauge).
 * For showing a reading in the other unit use aboutIn, which claims no more than was read.
 * Source: 1 in = 25.4 mm exactly, NIST SP 811 (2008) App. B.8. A number that is not finite throws.
 * @example
 * convertLength(100, 'in', 'cm') // => 254
 * convertLength(12, 'in', 'ft') // => 1
 */
export const convertLength = (value: number, from: LengthUnit, to: LengthUnit): number => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} is no length`);
  const nanometres = wholeWhenMeant(lengthConverter(value).from(from).to('nm'));
  return lengthConverter(nanometres).from('nm').to(to);
};

export interface UnitDescription {
  readonly unit: LengthUnit;
  readonly singular: string;
  readonly plural: string;
  readonly system: UnitSystem;
}

/**
 * Every unit a length can be written in, with its names in words.
 * @example
 * unitCatalogue().map((each) => each.plural).slice(3) // => ['inches', 'feet', 'yards']
 */
export const unitCatalogue = (): readonly UnitDescription[] =>
  catalogueOrder.map((unit) => {
    const { singular, plural } = lengthConverter().describe(unit);
    return { unit, singular, plural, system: systemOf(unit) };
  });

const catalogueOrder: readonly LengthUnit[] = ['mm', 'cm', 'm', 'in', 'ft', 'yd'];

/**
 * 8.2 in is 208 280 000 nm, but the double nearest to 8.2 makes it 208 279 999.999 999 97: within
 * the two roundings of a product of doubles, the whole number is what was meant.
 */
const wholeWhenMeant = (nanometres: number): number => {
  const whole = Math.round(nanometres);
  return Math.abs(nanometres - whole) <= Math.abs(nanometres) * 2 * Number.EPSILON
    ? whole
    : nanometres;
};
