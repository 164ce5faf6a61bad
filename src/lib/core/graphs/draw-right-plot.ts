import { blankDrawing } from './blank-drawing';
import type { DrawRightOptions } from './draw-right';
import type { Drawing, DrawnCross } from './drawing';
import { stepsOf, type StepRange } from './labels-of';
import { numberSide, scaleWithStep, squaresTo } from './number-side';
import { mostSquaresUp } from './paper-room';
import type { RightGraph } from './right-graph';
import type { MeasureTable } from './graph-table';
import { bottomLabelOf, seriesKeyOf, titleOf } from './written-on-graph';

/** A right line plot: its first tick stands a square from the corner. Not in the public door. */
export const drawRightPlot = (right: RightGraph, options: DrawRightOptions): Drawing => {
  const { table } = right;
  if (table.form !== 'measures') throw new Error(`No line plot of ${table.form}`);
  const range = scaleWithStep(right, options.step);
  const crosses = crossesOf(table, range);
  const highest = Math.max(...crosses.map(({ height }) => height));
  return {
    ...blankDrawing('line-plot', options.level ?? 'empty-paper', true, {
      up: Math.ceil(highest) + 1,
      across: stepsOf(range).length + 1,
    }),
    ...{ title: titleOf(table), crosses, seriesKey: seriesKeyOf(table.seriesNames) },
    bottom: numberSide(right, range, bottomLabelOf(table), 1),
  };
};

const looks = ['cross', 'ring', 'box'] as const;

/** One mark for each measure, one above the other; half as large where a pile would not fit. */
const crossesOf = (table: MeasureTable, range: StepRange): readonly DrawnCross[] => {
  const heightAt = new Map<number, number>();
  const placed = table.values.map(({ exact, series }) => {
    const at = squaresTo(exact, range) + 1;
    const below = heightAt.get(at) ?? 0;
    heightAt.set(at, below + 1);
    return { at, below, look: looks[series] ?? 'cross' };
  });
  const space = Math.max(...heightAt.values()) > mostSquaresUp ? 0.5 : 1;
  return placed.map(({ at, below, look }) => ({
    ...{ at, height: (below + 0.5) * space, size: 0.8 * space, look },
  }));
};
