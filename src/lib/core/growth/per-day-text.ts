import { exactPerUnit, type Unit } from '#core/measure';
import type { PerDay } from './change';

/**
 * A share per day as a decimal with so many places, without its unit: rounded once, from the exact
 * fraction, a half away from zero. Below zero the sign is the minus sign U+2212.
 * @example
 * perDayText({ exact: 30000000, days: 4 }, 'cm', 2) // => '0.75'
 * perDayText({ exact: -1, days: 3 }, 'count', 2) // => '−0.33'
 */
export const perDayText = (perDay: PerDay, unit: Unit, places: number): string => {
  const top = BigInt(Math.abs(perDay.exact)) * 10n ** BigInt(places);
  const bottom = BigInt(perDay.days) * BigInt(exactPerUnit(unit));
  const rounded = (2n * top + bottom) / (2n * bottom);
  const figures = rounded.toString().padStart(places + 1, '0');
  const whole = figures.slice(0, figures.length - places);
  const text = places === 0 ? whole : `${whole}.${figures.slice(-places)}`;
  return perDay.exact < 0 && rounded > 0n ? `\u2212${text}` : text;
};

/**
 * A plain number with so many places, in the same writing: for figures that come from a fitted
 * line and have no exact fraction. Throws for a number that is not finite.
 * @example
 * decimalText(3.4522027972, 2) // => '3.45'
 * decimalText(-0.001, 2) // => '0.00'
 */
export const decimalText = (value: number, places: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written`);
  const text = Math.abs(value).toFixed(places);
  return value < 0 && Number(text) > 0 ? `\u2212${text}` : text;
};
