import { exactPerUnit, formatExactNumber, markById, type MarkId, type Unit } from '#core/measure';
import type { GraphTable } from './graph-table';

/** Where a scale begins and ends, and its step, in counts or whole nanometres. */
export interface StepRange {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/**
 * The places of a scale, from its start to its end, in counts or whole nanometres.
 * @example
 * stepsOf({ from: 0, to: 6, step: 2 }) // => [0, 2, 4, 6]
 */
export const stepsOf = ({ from, to, step }: StepRange): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

/**
 * The numbers of a scale as a child writes them: inches as wholes and fractions, all else as plain
 * numbers, without the unit (which the label of the side has).
 * @example
 * labelsOf({ from: 12700000, to: 38100000, step: 6350000 }, { form: 'measures', unit: 'in', mark: '1/4 in' }) // => ['1/2', '3/4', '1', '1 1/4', '1 1/2']
 * labelsOf({ from: 0, to: 10, step: 5 }, { form: 'counts' }) // => ['0', '5', '10']
 */
export const labelsOf = (
  range: StepRange,
  table:
    | { readonly form: 'counts' }
    | Pick<Exclude<GraphTable, { form: 'counts' }>, 'form' | 'unit' | 'mark'>,
): readonly string[] =>
  stepsOf(range).map((exact) =>
    table.form === 'counts' ? String(exact) : lengthLabel(exact, table.unit, table.mark),
  );

/** A whole number of feet is said alone, not as `1 ft`. */
const lengthLabel = (exact: number, unit: Unit, mark: MarkId): string =>
  exact % exactPerUnit(unit) === 0 && markById(mark).unit === unit
    ? String(exact / exactPerUnit(unit))
    : formatExactNumber(exact, unit, mark);
