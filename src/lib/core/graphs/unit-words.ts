import type { Unit } from '#core/measure';

/**
 * The words a child may write for a unit, the usual one first, in small letters.
 * @example
 * unitWords('in') // => ['inches', 'inch', 'in', '"', '″']
 * unitWords('count') // => []
 */
export const unitWords = (unit: Unit): readonly string[] => wordsByUnit[unit];

const wordsByUnit: Readonly<Record<Unit, readonly string[]>> = {
  in: ['inches', 'inch', 'in', '"', '\u2033'],
  ft: ['feet', 'foot', 'ft', "'", '\u2032'],
  yd: ['yards', 'yard', 'yd'],
  mm: ['mm', 'millimetres', 'millimetre', 'millimeters', 'millimeter'],
  cm: ['cm', 'centimetres', 'centimetre', 'centimeters', 'centimeter'],
  m: ['m', 'metres', 'metre', 'meters', 'meter'],
  count: [],
};
