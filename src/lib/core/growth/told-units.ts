import { isLengthUnit, systemOf, type Unit } from '#core/measure';
import type { GrowthPoint } from './growth-point';

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

/**
 * The unit a log is read in: the planned one, unless the newest reading is of another system (the
 * family turned the ruler round) or of another kind; then the unit of that reading.
 * @example
 * unitReadIn('cm', [{ day: '2026-03-09', exact: 25400000, unit: 'in', mark: '1 in' }]) // => 'in'
 * unitReadIn('cm', [{ day: '2026-03-09', exact: 25000000, unit: 'mm', mark: '1 mm' }]) // => 'cm'
 */
export const unitReadIn = (planned: Unit, points: readonly GrowthPoint[]): Unit => {
  const newest = points.reduce<GrowthPoint | undefined>(
    (latest, point) => (latest && latest.day > point.day ? latest : point),
    undefined,
  );
  return !newest || systemOf(newest.unit) === systemOf(planned) ? planned : newest.unit;
};
