import { exactPerUnit, type Unit } from '#core/measure';

/**
 * An exact value in a unit as a plain decimal with a point, for machines. Where the decimal does
 * not end within six places (4 inches in feet), it is rounded there, half up.
 * @example
 * plainDecimal(12_700_000, 'in') // => '0.5'
 * plainDecimal(101_600_000, 'ft') // => '0.333333'
 * plainDecimal(7, 'count') // => '7'
 */
export function plainDecimal(exact: number, unit: Unit): string {
  const perUnit = exactPerUnit(unit);
  const whole = Math.floor(exact / perUnit);
  let rest = exact - whole * perUnit;
  let digits = '';
  while (rest > 0 && digits.length < places(unit)) {
    rest *= 10;
    digits += String(Math.floor(rest / perUnit));
    rest %= perUnit;
  }
  const scaled = Number(digits) + (2 * rest < perUnit ? 0 : 1);
  const carried = scaled === 10 ** digits.length && digits !== '';
  const fraction = carried ? '' : String(scaled).padStart(digits.length, '0').replace(/0+$/, '');
  return `${whole + Number(carried)}${fraction === '' ? '' : `.${fraction}`}`;
}

/** A centimetre is ten million exact steps, so seven places always end. */
const places = (unit: Unit): number => (unit === 'cm' ? 7 : 6);

/**
 * The exact value of a plain decimal of centimetres, or of a whole count; null for other text
 * and for more places than are exact.
 * @example
 * exactOfDecimal('12.7', 'cm') // => 127000000
 * exactOfDecimal('1,5', 'cm') // => null
 */
export function exactOfDecimal(text: string, unit: 'cm' | 'count'): number | null {
  const read = /^(\d{1,9})(?:\.(\d{1,7}))?$/.exec(text.trim());
  if (!read) return null;
  const fraction = Number((read[2] ?? '').padEnd(7, '0'));
  if (unit === 'count') return fraction === 0 ? Number(read[1]) : null;
  return Number(read[1]) * exactPerUnit('cm') + fraction;
}
