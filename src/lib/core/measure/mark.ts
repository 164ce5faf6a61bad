import type { Unit } from './unit';

/**
 * A mark is the finest division a reading was read to: "to the nearest half inch".
 * Its id is how a ruler would name it; it is kept with every reading for good.
 */
export type MarkId =
  | '1 in'
  | '1/2 in'
  | '1/4 in'
  | '1/8 in'
  | '1/16 in'
  | '0.1 in'
  | '0.01 in'
  | '1 ft'
  | '1 yd'
  | '1 m'
  | '0.1 m'
  | '1 cm'
  | '0.5 cm'
  | '1 mm'
  | '0.1 mm'
  | '1';

export interface Mark {
  readonly id: MarkId;
  /** The unit the division belongs to. */
  readonly unit: Unit;
  /** One division, in whole nanometres (or one thing, for counts). */
  readonly exact: number;
  /** How readings to this mark are written: 4 1/2, or 4.5. */
  readonly writtenAs: 'fraction' | 'decimal';
}

const mark = (id: MarkId, unit: Unit, exact: number, writtenAs: Mark['writtenAs']): Mark => ({
  id,
  unit,
  exact,
  writtenAs,
});

/** Every mark, the coarser before the finer within a unit. */
export const marks: readonly Mark[] = [
  mark('1 yd', 'yd', 914_400_000, 'decimal'),
  mark('1 ft', 'ft', 304_800_000, 'decimal'),
  mark('1 in', 'in', 25_400_000, 'fraction'),
  mark('1/2 in', 'in', 12_700_000, 'fraction'),
  mark('1/4 in', 'in', 6_350_000, 'fraction'),
  mark('1/8 in', 'in', 3_175_000, 'fraction'),
  mark('1/16 in', 'in', 1_587_500, 'fraction'),
  mark('0.1 in', 'in', 2_540_000, 'decimal'),
  mark('0.01 in', 'in', 254_000, 'decimal'),
  mark('1 m', 'm', 1_000_000_000, 'decimal'),
  mark('0.1 m', 'm', 100_000_000, 'decimal'),
  mark('1 cm', 'cm', 10_000_000, 'decimal'),
  mark('0.5 cm', 'cm', 5_000_000, 'decimal'),
  mark('1 mm', 'mm', 1_000_000, 'decimal'),
  mark('0.1 mm', 'mm', 100_000, 'decimal'),
  mark('1', 'count', 1, 'decimal'),
];

const markByIdMap = new Map(marks.map((each) => [each.id, each]));

/**
 * The mark with this id. A name that is no mark is our own mistake and throws.
 * @example
 * markById('1/2 in').exact // => 12700000
 */
export const markById = (id: MarkId): Mark => {
  const found = markByIdMap.get(id);
  if (!found) throw new Error(`There is no mark called ${id}`);
  return found;
};

/**
 * Whether unknown text names a mark.
 * @example
 * isMarkId('1/2 in') // => true
 * isMarkId('1/3 in') // => false
 */
export const isMarkId = (text: string): text is MarkId => markByIdMap.has(text as MarkId);
