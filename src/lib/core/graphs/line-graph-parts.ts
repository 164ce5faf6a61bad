import { readDays, type DayPlaces } from './day-places';
import type { Drawing } from './drawing';
import { exactOfLabel } from './exact-of-label';
import type { TimeTable } from './graph-table';
import { meantTicks } from './meant-ticks';
import { isRising } from './place-on-scale';
import type { RightGraph } from './right-graph';
import { ticksInOtherUnit } from './says-other-unit';
import { writtenScale, type WrittenScale } from './written-scale';

export type TimeRow = TimeTable['rows'][number];
export type MeasuredRow = TimeRow & { readonly exact: number };

/** A line graph as far as it can be read. */
export interface LineGraphParts {
  readonly right: RightGraph;
  readonly table: TimeTable;
  readonly drawing: Drawing;
  /** The rows that have a number. */
  readonly measured: readonly MeasuredRow[];
  /** Null where no two numbers can be read up the side. */
  readonly scale: WrittenScale | null;
  /** Null too where its numbers do not go up, or are in two units. */
  readonly risingScale: WrittenScale | null;
  /** Null where no day is named. */
  readonly days: DayPlaces | null;
}

/** Not part of the public door. */
export const readLineGraph = (right: RightGraph, drawing: Drawing): LineGraphParts => {
  const { table } = right;
  if (table.form !== 'times') throw new Error(`No line graph is drawn of ${table.form}`);
  const measured = table.rows.filter((row): row is MeasuredRow => row.exact !== null);
  const measuredPlaces = [...new Set(measured.map(({ place }) => place))].sort((a, b) => a - b);
  const ticks = meantTicks(drawing.side.ticks, table);
  const scale = writtenScale(ticks, (text) => exactOfLabel(text, table));
  const hasTwoUnits = ticksInOtherUnit(drawing.side.ticks, table.unit).length > 0;
  return {
    ...{ right, table, drawing, measured, scale },
    risingScale: scale && isRising(scale) && !hasTwoUnits ? scale : null,
    days: readDays(drawing.places, table.places, measuredPlaces),
  };
};

/** The drawing with its two directions exchanged: what was up is along. Not in the public door. */
export const withPointsTurned = (drawing: Drawing): Drawing => ({
  ...drawing,
  points: drawing.points.map(({ x, y, series }) => ({ x: y, y: x, series })),
  strokes: drawing.strokes.map(({ path }) => ({ path: path.map(([x, y]) => [y, x] as const) })),
});

/** Whether a reading was planned and not made, or a state written, between two places. */
export const hasGapBetween = (
  { table }: LineGraphParts,
  series: number,
  from: number,
  to: number,
): boolean =>
  table.rows.some(
    (row) => row.series === series && row.exact === null && row.place > from && row.place < to,
  );
