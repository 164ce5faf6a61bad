import type { Unit } from '#core/measure';
import { saysUnit } from './says-unit';
import { unitWords } from './unit-words';

/** Whether a child's words name a unit of length, and not this one. Not part of the public door. */
export const saysOtherUnit = (text: string, unit: Unit): boolean =>
  !saysUnit(text, unitWords(unit)) &&
  lengthUnits.some((other) => other !== unit && saysUnit(text, unitWords(other)));

/** Feet and yards are left out: gardens and children have both. */
const lengthUnits = ['in', 'cm', 'mm', 'm'] as const;

/** The ticks that carry another unit than the others do. Not part of the public door. */
export const ticksInOtherUnit = (
  ticks: readonly { readonly text: string }[],
  unit: Unit,
): readonly number[] => {
  const others = ticks.flatMap(({ text }, index) => (saysOtherUnit(text, unit) ? [index] : []));
  return others.length < ticks.length ? others : [];
};
