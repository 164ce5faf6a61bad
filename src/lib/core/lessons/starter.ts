import type { Quantity, Stage } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';

/** Which of the two families of units a household begins with. Both can be used later. */
export const unitFamilies = ['inches', 'centimetres'] as const;
export type UnitFamily = (typeof unitFamilies)[number];

/** A way to begin: what is measured, and what every family needs to decide for it. */
export interface Starter {
  readonly quantity: Quantity;
  /** Whether it is measured out of doors. */
  readonly outdoors: boolean;
  /** The days of the week a reading is planned for: 1 is Monday. */
  readonly weekdays: readonly number[];
  /** The words of a day, when days are sorted into kinds. */
  readonly kinds: readonly string[];
  /** The height that helps to understand a strange number: the pot's, or the stick's. */
  readonly stands: 'pot' | 'stick' | null;
}

const everyDay = [1, 2, 3, 4, 5, 6, 7];

export const starters: readonly Starter[] = [
  { quantity: 'plant-height', outdoors: false, weekdays: everyDay, kinds: [], stands: 'pot' },
  { quantity: 'rain', outdoors: true, weekdays: everyDay, kinds: [], stands: null },
  { quantity: 'shadow', outdoors: true, weekdays: everyDay, kinds: [], stands: 'stick' },
  { quantity: 'length', outdoors: false, weekdays: everyDay, kinds: [], stands: null },
  {
    quantity: 'daily-kind',
    outdoors: false,
    weekdays: everyDay,
    kinds: ['sun', 'cloud', 'rain'],
    stands: null,
  },
];

/**
 * The unit and mark a child of this stage reads: whole units in grades 1 and 2, then half inches
 * and millimetres. (Standards: whole units to grade 2, half and quarter inches in grade 3,
 * Common Core 2.MD.A.1 and 3.MD.B.4, from memory; rain in whole millimetres or quarter inches is
 * common practice, no source.)
 *
 * @example
 * unitAndMark('plant-height', 'grade-2', 'inches') // => { unit: 'in', mark: '1 in' }
 * @example
 * unitAndMark('rain', 'grade-2', 'centimetres') // => { unit: 'mm', mark: '1 mm' }
 */
export function unitAndMark(
  quantity: Quantity,
  stage: Stage,
  family: UnitFamily,
): { readonly unit: Unit; readonly mark: MarkId } {
  if (quantity === 'daily-kind') return { unit: 'count', mark: '1' };
  if (quantity === 'rain') {
    return family === 'inches' ? { unit: 'in', mark: '1/4 in' } : { unit: 'mm', mark: '1 mm' };
  }
  if (family === 'inches') return { unit: 'in', mark: stage === 'grade-3' ? '1/2 in' : '1 in' };
  return { unit: 'cm', mark: stage === 'grade-3' && quantity !== 'shadow' ? '1 mm' : '1 cm' };
}
