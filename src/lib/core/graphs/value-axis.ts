import {
  deservedMark,
  exactPerUnit,
  formatExactNumber,
  isLengthUnit,
  markById,
  systemOf,
  type MarkId,
  type Unit,
} from '#core/measure';
import type { Axis } from './line-graph';
import { niceRange } from './nice-step';

/**
 * The side of a graph: from 0 to a whole step at or above the largest value, with equal steps.
 * Steps are 1, 2 or 5 times a power of ten; but below a whole unit, inches read in fractions go
 * by halves, quarters and eighths, and feet and yards by what a ruler has of them. A step is
 * never finer than the mark, because nothing was read in between. A log of nothing but noughts has the side 0 to 1.
 *
 * @param largest the largest value to be shown, in the unit
 * @param mark what the readings were read to, or deserve in this unit; it decides how labels are
 *   written, as a fraction or as a decimal
 * @param count about how many steps there is room for
 * @example
 * valueAxis(9.7, 'cm', '1 mm', 5).ticks.map((tick) => tick.label[0]) // => ['0', '2', '4', '6', '8', '10']
 * valueAxis(1.75, 'in', '1/4 in', 5).ticks.map((tick) => tick.label[0]) // => ['0', '1/2', '1', '1 1/2', '2']
 */
export const valueAxis = (
  largest: number,
  unit: Unit,
  mark: MarkId,
  count: number,
): Axis & { readonly unit: Unit } => {
  const ticks = ticksTo(largest > 0 ? largest : 1, unit, mark, count);
  return {
    unit,
    from: 0,
    to: ticks.at(-1) as number,
    ticks: ticks.map((at) => ({ at, label: [labelOf(at, unit, mark)] })),
  };
};

/**
 * The mark that numbers of a page in this unit are written to, where a reading was read to
 * another. Not part of the public door.
 */
export const toldMark = (
  reading: { readonly unit: Unit; readonly mark: MarkId },
  unit: Unit,
): MarkId =>
  isLengthUnit(unit) && systemOf(reading.unit) !== systemOf(unit)
    ? deservedMark(reading.mark, unit)
    : reading.mark;

const ticksTo = (largest: number, unit: Unit, mark: MarkId, count: number): readonly number[] => {
  const markSize = markById(mark).exact / exactPerUnit(unit);
  const part = partOfUnit(Math.max(largest / count, markSize), unit, mark);
  if (part) return stepsOf(1, part, largest);
  const { ticks } = niceRange(0, largest, count);
  return (ticks[1] as number) < markSize
    ? stepsOf(markById(mark).exact, exactPerUnit(unit), largest)
    : ticks;
};

/** How many parts of a unit make one step, where a step of tenths would suit no ruler. */
const partOfUnit = (wanted: number, unit: Unit, mark: MarkId): number | undefined => {
  if (unit === 'in' && markById(mark).writtenAs === 'decimal') return undefined;
  return partsByUnit[unit]?.find((part) => 1 / part >= wanted);
};

/** The finer first: the first that is large enough is taken. */
const partsByUnit: Readonly<Partial<Record<Unit, readonly number[]>>> = {
  in: [8, 4, 2, 1],
  ft: [12, 4, 2, 1],
  yd: [12, 3, 1],
};

/** Steps of a fraction of a unit; a value within the dust of a double above a step ends on it. */
const stepsOf = (top: number, bottom: number, largest: number): readonly number[] => {
  const count = Math.ceil((largest * bottom) / top - 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => (index * top) / bottom);
};

const labelOf = (at: number, unit: Unit, mark: MarkId): string => {
  const inParts = unit === 'ft' || unit === 'yd';
  if (!inParts && (unit !== 'in' || markById(mark).writtenAs === 'decimal')) return String(at);
  return formatExactNumber(Math.round(at * exactPerUnit(unit)), unit, '1/8 in');
};
