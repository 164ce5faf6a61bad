import {
  deservedMark,
  formatExact,
  isLengthUnit,
  liesOnMark,
  markById,
  nearestOnMark,
  systemOf,
  type MarkId,
  type Unit,
} from '#core/measure';

/** A change or a sum, ready to be shown. */
export interface Amount {
  /** With its unit, without the word "about": `3 cm`, `−1/2 in`, `7`. */
  readonly text: string;
  /** Something was rounded, or it was read in units of the other system. */
  readonly isAbout: boolean;
}

/**
 * An amount that was worked out from readings, written in a unit with no more precision than the
 * readings had. In the system they were read in it is written to the coarsest of their marks that
 * it lies on, exactly; else to the finest, and `isAbout`. In the other system it is written to the
 * mark that the coarsest of them deserves (`deservedMark` has the rule and its source).
 *
 * @param readTo the marks of the readings, in any order; none is our own mistake and throws
 * @example
 * amountIn(30000000, ['1 cm', '1 cm'], 'cm') // => { text: '3 cm', isAbout: false }
 * amountIn(34000000, ['1 cm', '1 mm'], 'cm') // => { text: '3.4 cm', isAbout: false }
 * amountIn(30000000, ['1 cm', '1 cm'], 'in') // => { text: '1 in', isAbout: true }
 */
export const amountIn = (exact: number, readTo: readonly MarkId[], unit: Unit): Amount => {
  const told = [...new Set(readTo)]
    .map((id) => toldAs(id, unit))
    .sort((one, other) => markById(other).exact - markById(one).exact);
  const [coarsest] = told;
  if (!coarsest) throw new Error('An amount needs the marks it was read to');
  const isOtherSystem = readTo.some((id) => systemOf(markById(id).unit) !== systemOf(unit));
  if (isOtherSystem) {
    const onMark = nearestOnMark(exact, coarsest);
    return { text: formatExact(onMark, unit, coarsest, { trailingZeros: 'keep' }), isAbout: true };
  }
  const fitting = told.find((id) => liesOnMark(exact, id));
  const mark = fitting ?? (told.at(-1) as MarkId);
  return { text: formatExact(exact, unit, mark), isAbout: !fitting };
};

const toldAs = (id: MarkId, unit: Unit): MarkId =>
  isLengthUnit(unit) && systemOf(markById(id).unit) !== systemOf(unit)
    ? deservedMark(id, unit)
    : id;
