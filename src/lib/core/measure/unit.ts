/**
 * The units a reading can be written in.
 *
 * Invariant: every length is a whole number of nanometres, so that inches, their binary
 * fractions and thousandths, and millimetres are all exact and meet on one number line.
 * Source: 1 in = 25.4 mm exactly, 24 FR 5348 (1 July 1959); NIST SP 811 (2008) App. B.8.
 */
export type LengthUnit = 'in' | 'ft' | 'yd' | 'mm' | 'cm' | 'm';
export type Unit = LengthUnit | 'count';

export const nanometresByUnit: Readonly<Record<LengthUnit, number>> = {
  mm: 1_000_000,
  cm: 10_000_000,
  m: 1_000_000_000,
  in: 25_400_000,
  ft: 304_800_000,
  yd: 914_400_000,
};

/**
 * Whether a unit measures a length (and not a count of things).
 * @example
 * isLengthUnit('in') // => true
 * isLengthUnit('count') // => false
 */
export const isLengthUnit = (unit: Unit): unit is LengthUnit => unit !== 'count';

/** Units of one system share one ladder of marks; between systems a conversion is only "about". */
export type UnitSystem = 'metric' | 'customary' | 'count';

/**
 * The system a unit belongs to.
 * @example
 * systemOf('ft') // => 'customary'
 * systemOf('mm') // => 'metric'
 */
export const systemOf = (unit: Unit): UnitSystem => systemByUnit[unit];

const systemByUnit: Readonly<Record<Unit, UnitSystem>> = {
  mm: 'metric',
  cm: 'metric',
  m: 'metric',
  in: 'customary',
  ft: 'customary',
  yd: 'customary',
  count: 'count',
};

/**
 * How many exact steps (whole nanometres, or single things) one unit holds.
 * @example
 * exactPerUnit('in') // => 25400000
 * exactPerUnit('count') // => 1
 */
export const exactPerUnit = (unit: Unit): number =>
  isLengthUnit(unit) ? nanometresByUnit[unit] : 1;
