import { exactPerUnit, markById, type Unit } from '#core/measure';
import type { LessonFacts } from './lesson-facts';
import type { NumberRange, Told } from './question';

/**
 * Whether the numbers and the arithmetic of a question lie in a range. Numbers are in units, as
 * they are said. None of this file is part of the public door.
 */
export type FitsRange = (range: NumberRange) => boolean;

const largestByRange: Readonly<Record<NumberRange, number>> = {
  ...{ G1: 20, G2a: 100, G2b: 100, G2c: 1000, G3: 1000 },
};

/** To be read and compared only: wholes, and in grade 3 also the parts a ruler shows. */
export const reading =
  (...numbers: readonly number[]): FitsRange =>
  (range) =>
    numbers.every(
      (number) =>
        number >= 0 &&
        number <= largestByRange[range] &&
        (Number.isInteger(number) || range === 'G3'),
    );

/**
 * Whether a told thing can be said in a range: lengths in wholes, and in grade 3 also in halves and
 * quarters of an inch, a foot or a yard; never in tenths or eighths. (Common Core 3.NF, from memory:
 * fractions of grade 3; decimals come in grade 4.)
 */
export const isSayable = (told: Told, range: NumberRange): boolean => {
  switch (told.kind) {
    case 'count':
      return Number.isInteger(told.count);
    case 'length': {
      if (isWhole(told.exact, told.unit)) return true;
      const isFraction = markById(told.mark).writtenAs === 'fraction';
      return range === 'G3' && isFraction && isWhole(told.exact * 4, told.unit);
    }
    case 'order':
      return told.things.every((each) => isSayable(each, range));
    case 'between':
      return isSayable(told.low, range) && isSayable(told.high, range);
    default:
      return true;
  }
};

/** The larger less the smaller; without regrouping in the narrower range of grade 2. */
export const subtracting =
  (larger: number, smaller: number): FitsRange =>
  (range) =>
    wholes(larger, smaller)(range) && (range !== 'G2a' || larger % 10 >= smaller % 10);

/** Put together; in the narrower range of grade 2 the ones stay below ten. */
export const adding =
  (...addends: readonly number[]): FitsRange =>
  (range) =>
    wholes(...addends, sumOf(addends))(range) &&
    (range !== 'G2a' || sumOf(addends.map((each) => each % 10)) < 10);

/** Shared out evenly: within 100, as times and sharing are. */
export const sharing =
  (total: number, days: number): FitsRange =>
  (range) =>
    total <= 100 && wholes(total, days)(range);

/** So many times: within 100. */
export const multiplying =
  (product: number): FitsRange =>
  (range) =>
    product <= 100 && wholes(product)(range);

export const allOf =
  (...tests: readonly FitsRange[]): FitsRange =>
  (range) =>
    tests.every((fits) => fits(range));

/**
 * Within 1000 with models: millimetres, or a shadow in centimetres, that a child can lay out. Other
 * measures of grade 2 stay within 100. (Common Core 2.NBT.B.7, from memory; the models are our own.)
 */
export const hasModel = ({ table, series }: LessonFacts): boolean =>
  table.form !== 'counts' &&
  (table.unit === 'mm' ||
    (table.unit === 'cm' && series.every((each) => each.investigation.quantity === 'shadow')));

/** A length as a number of its unit. */
export const inUnits = (exact: number, unit: Unit): number => exact / exactPerUnit(unit);

export const isWhole = (exact: number, unit: Unit): boolean => exact % exactPerUnit(unit) === 0;

const wholes =
  (...numbers: readonly number[]): FitsRange =>
  (range) =>
    numbers.every(
      (number) => Number.isInteger(number) && number >= 0 && number <= largestByRange[range],
    );

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);
