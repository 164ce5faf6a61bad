import { exactPerUnit, type Unit } from './unit';

/**
 * An exact value as a number of units, for axes and charts: the nearest double, so not for text
 * (formatExact) and not for comparing (compare the exact values).
 * @example
 * toUnit(63_500_000, 'in') // => 2.5
 * toUnit(63_500_000, 'cm') // => 6.35
 */
export const toUnit = (exact: number, unit: Unit): number => exact / exactPerUnit(unit);
