import type { Investigation, Stage } from '#core/journal';
import { unitAndMark } from '#core/lessons';
import { isLengthUnit, systemOf } from '#core/measure';
import type { RulerSide } from './side-read.svelte';

/** The two sides of the ruler for a log: its own unit first. */
export interface TwoSides {
  readonly own: RulerSide;
  readonly other: RulerSide;
}

/** Null for a log that is not of lengths read from a ruler: rain has a gauge, and a kind no number. */
export function sidesOf(
  { quantity, unit, mark }: Pick<Investigation, 'quantity' | 'unit' | 'mark'>,
  stage: Stage,
): TwoSides | null {
  if (!isLengthUnit(unit) || quantity === 'rain' || quantity === 'daily-kind') return null;
  const family = systemOf(unit) === 'metric' ? 'inches' : 'centimetres';
  const other = unitAndMark(quantity, stage, family);
  if (!isLengthUnit(other.unit)) return null;
  return { own: { unit, mark }, other: { unit: other.unit, mark: other.mark } };
}
