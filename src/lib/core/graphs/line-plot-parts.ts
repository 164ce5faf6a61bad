import type { Drawing } from './drawing';
import { exactOfLabel } from './exact-of-label';
import type { MeasureTable } from './graph-table';
import { countedQuarters } from './line-plot-fractions';
import { meantTicks } from './meant-ticks';
import { isRising } from './place-on-scale';
import type { RightGraph } from './right-graph';
import { writtenScale, type WrittenScale } from './written-scale';

/** A line plot as far as it can be read. */
export interface LinePlotParts {
  readonly right: RightGraph;
  readonly table: MeasureTable;
  readonly drawing: Drawing;
  /** The ticks from left to right, each with its place in the drawing and what it means. */
  readonly ticks: readonly PlotTick[];
  /** Null where no number can be read on the line. */
  readonly scale: WrittenScale | null;
  /** Null too where its numbers do not go up, or quarters were counted on. */
  readonly risingScale: WrittenScale | null;
}

export interface PlotTick {
  readonly index: number;
  readonly at: number;
  readonly text: string;
  readonly exact: number | null;
}

/** Not part of the public door. */
export const readLinePlot = (right: RightGraph, drawing: Drawing): LinePlotParts => {
  const { table } = right;
  if (table.form !== 'measures') throw new Error(`No line plot is drawn of ${table.form}`);
  const meant = meantTicks(drawing.bottom.ticks, table);
  const ticks = meant
    .map(({ at, text }, index) => ({ index, at, text, exact: exactOfLabel(text, table) }))
    .sort((one, other) => one.at - other.at);
  const read = ticks.filter(({ exact }) => exact !== null);
  const scale =
    read.length === 1
      ? aroundOne(read[0] as PlotTick, right)
      : writtenScale(meant, (text) => exactOfLabel(text, table));
  return {
    ...{ right, table, drawing, ticks, scale },
    risingScale: scale && isRising(scale) && countedQuarters(ticks).length === 0 ? scale : null,
  };
};

/** Measures that are all the same need one number only; the next would be a square away. */
const aroundOne = ({ at, exact, index }: PlotTick, { scale }: RightGraph): WrittenScale => {
  const first = { at, value: exact as number, index };
  const valueAt = (place: number): number => first.value + (place - at) * scale.step;
  return {
    ticks: [first, { at: at + 1, value: first.value + scale.step, index }],
    ...{ step: scale.step, space: 1, valueAt, evenValueAt: valueAt },
    ...{ hasEvenSteps: true, hasEvenSpaces: true, isFair: true },
  };
};
