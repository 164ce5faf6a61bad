import {
  aboutIn,
  isLengthUnit,
  type AboutLength,
  type LengthUnit,
  type Measured,
} from '#core/measure';

/**
 * A reading as it would be said in the other system, to be shown beside it: about, never more
 * precise than its mark deserves (aboutIn has the rule), and never kept. Null for a count, which
 * has no other system.
 *
 * @example
 * inOtherSystem({ text: '5', unit: 'in', mark: '1/4 in', exact: 127_000_000 }).text // => 'about 12.7 cm'
 * inOtherSystem({ text: '12', unit: 'cm', mark: '1 cm', exact: 120_000_000 }).text // => 'about 4 1/2 in'
 * inOtherSystem({ text: '4', unit: 'count', mark: '1', exact: 4 }) // => null
 */
export const inOtherSystem = (measured: Measured): AboutLength | null =>
  isLengthUnit(measured.unit) ? aboutIn(measured, otherUnits[measured.unit]) : null;

/** The unit a family would read on the other side of the same ruler or tape. */
const otherUnits: Readonly<Record<LengthUnit, LengthUnit>> = {
  in: 'cm',
  ft: 'cm',
  yd: 'm',
  mm: 'in',
  cm: 'in',
  m: 'ft',
};
