import { markById, type Mark, type MarkId } from './mark';
import type { Unit } from './unit';

/**
 * The marks a reading in this unit can be read to, the coarser before the finer. Feet and yards
 * reach down to the marks of the inch, for they are read as `1 ft 3 1/4 in`.
 * Source for rulers in halves to sixteenths of an inch, and in centimetres and tenths: NIST
 * Handbook 44, 5.52; rain to 0.01 in and 0.1 mm: NWS and WMO observing practice.
 * @example
 * marksFor('cm').map((mark) => mark.id) // => ['1 cm', '0.5 cm', '1 mm', '0.1 mm']
 * marksFor('count').map((mark) => mark.id) // => ['1']
 */
export const marksFor = (unit: Unit): readonly Mark[] => marksByUnit[unit];

/**
 * Whether a reading in this unit can be read to this mark.
 * @example
 * markFits('1 mm', 'cm') // => true
 * markFits('1 mm', 'in') // => false
 */
export const markFits = (id: MarkId, unit: Unit): boolean =>
  marksFor(unit).some((mark) => mark.id === id);

const named = (...ids: MarkId[]): readonly Mark[] => ids.map(markById);

const inches = named('1 in', '1/2 in', '1/4 in', '1/8 in', '1/16 in', '0.1 in', '0.01 in');

const marksByUnit: Readonly<Record<Unit, readonly Mark[]>> = {
  in: inches,
  ft: [...named('1 ft'), ...inches],
  yd: [...named('1 yd', '1 ft'), ...inches],
  mm: named('1 mm', '0.1 mm'),
  cm: named('1 cm', '0.5 cm', '1 mm', '0.1 mm'),
  m: named('1 m', '0.1 m', '1 cm', '1 mm'),
  count: named('1'),
};
