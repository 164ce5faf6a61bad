import type { DrawnSide } from './drawing';
import type { GraphTable } from './graph-table';
import { labelsOf, type StepRange } from './labels-of';
import { mostSquaresUp } from './paper-room';
import type { RightGraph } from './right-graph';

/**
 * The scale a drawing uses: the right one with room to spare, or one with another step, which ends
 * where it covers the table. Not in the public door.
 */
export const scaleWithStep = (
  { scale, table }: RightGraph,
  step: number | undefined,
): StepRange => {
  if (step === undefined) return withHeadRoom(scale, table);
  if (step === scale.step) return scale;
  if (!(step > 0) || !Number.isInteger(step)) throw new RangeError(`${step} is no step`);
  const largest = Math.max(step, ...numbersOfTable(table));
  return {
    from: Math.floor(scale.from / step) * step,
    to: Math.ceil(largest / step) * step,
    step,
  };
};

/**
 * One step more where the largest number would stand at the very end: a scale that is given to a
 * child must not tell the largest, and nothing is drawn to the edge. A number line of a line plot
 * is a piece of a ruler from the smallest to the largest, and stays as it is; so does a side that
 * is as long as the paper allows.
 */
const withHeadRoom = (scale: StepRange, table: GraphTable): StepRange => {
  const { from, to, step } = scale;
  const isFull = to <= Math.max(...numbersOfTable(table));
  const isRoomLeft = (to - from) / step < mostSquaresUp;
  return table.form !== 'measures' && isFull && isRoomLeft ? { from, to: to + step, step } : scale;
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
