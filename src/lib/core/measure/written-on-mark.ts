import type { Mark } from './mark';
import { exactPerUnit, type Unit } from './unit';
import { characterFor, type WrittenOptions } from './written-options';

/**
 * A value that lies on a mark, written as a bare number of units the way that mark is written:
 * 4 1/2 for the half inch, 4.5 for the tenth of an inch. Whole numbers and remainders only, so
 * that no digit comes from a rounded double. `exact` is zero or more.
 */
export const writtenOnMark = (
  exact: number,
  unit: Unit,
  mark: Mark,
  options: WrittenOptions = {},
): string => {
  const perUnit = exactPerUnit(unit);
  const whole = Math.floor(exact / perUnit);
  const rest = exact - whole * perUnit;
  if (mark.writtenAs === 'fraction') return fractionWritten(whole, rest, perUnit);
  const places = placesOf(mark.exact, perUnit);
  const digits = String((rest * 10 ** places) / perUnit).padStart(places, '0');
  const shown = options.trailingZeros === 'keep' ? digits : digits.replace(/0+$/, '');
  if (places === 0 || shown === '') return String(whole);
  return `${whole}${characterFor(options.decimal)}${shown}`;
};

const fractionWritten = (whole: number, rest: number, perUnit: number): string => {
  if (rest === 0) return String(whole);
  const shared = greatestShared(rest, perUnit);
  const fraction = `${rest / shared}/${perUnit / shared}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
};

const greatestShared = (one: number, other: number): number =>
  other === 0 ? one : greatestShared(other, one % other);

/** How many decimal places of a unit it takes to write every division of a mark. */
const placesOf = (step: number, perUnit: number): number => {
  for (let places = 0; places <= 9; places += 1) {
    if ((step * 10 ** places) % perUnit === 0) return places;
  }
  throw new Error(`A step of ${step} cannot be written in decimals of ${perUnit}`);
};
