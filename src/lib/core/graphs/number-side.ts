import type { DrawnSide } from './drawing';
import type { GraphTable } from './graph-table';
import { labelsOf, type StepRange } from './labels-of';
import type { RightGraph } from './right-graph';

/** The scale a drawing uses: the right one, or one with another step. Not in the public door. */
export const scaleWithStep = (
  { scale, table }: RightGraph,
  step: number | undefined,
): StepRange => {
  if (step === undefined || step === scale.step) return scale;
  if (!(step > 0) || !Number.isInteger(step)) throw new RangeError(`${step} is no step`);
  const largest = Math.max(step, ...numbersOfTable(table));
  return {
    from: Math.floor(scale.from / step) * step,
    to: Math.ceil(largest / step) * step,
    step,
  };
};

const numbersOfTable = (table: GraphTable): readonly number[] => {
  if (table.form === 'counts') return table.rows.map(({ count }) => count);
  const rows: readonly { readonly exact: number | null }[] =
    table.form === 'measures' ? table.values : table.rows;
  return rows.flatMap(({ exact }) => exact ?? []);
};

/** How many steps of a scale lie below a value: its height in squares. Not in the public door. */
export const squaresTo = (exact: number, { from, step }: StepRange): number =>
  (exact - from) / step;

/** Ticks one square apart, the first at `at`. Not part of the public door. */
export const numberSide = (
  right: RightGraph,
  range: StepRange,
  label: string,
  at: number,
): DrawnSide => ({
  label,
  ticks: labelsOf(range, right.table).map((text, index) => ({ at: at + index, text })),
});
