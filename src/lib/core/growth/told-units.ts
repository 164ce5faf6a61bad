import { isLengthUnit, systemOf, type Unit } from '#core/measure';

/**
 * The units a page may be told in: the one the log is read in first, then the usual one of the
 * other system, which is only "about". Counts have no other.
 * @example
 * toldUnits('cm') // => ['cm', 'in']
 * toldUnits('in') // => ['in', 'cm']
 * toldUnits('count') // => ['count']
 */
export const toldUnits = (unit: Unit): readonly Unit[] => {
  if (!isLengthUnit(unit)) return [unit];
  if (systemOf(unit) === 'metric') return [unit, 'in'];
  return [unit, 'cm'];
};
