import { blankDrawing } from './blank-drawing';
import type { DrawRightOptions } from './draw-right';
import type { Drawing, DrawnJoin, DrawnPoint } from './drawing';
import type { TimeTable } from './graph-table';
import type { StepRange } from './labels-of';
import { numberSide, scaleWithStep, squaresTo } from './number-side';
import { mostPlacesAcross } from './paper-room';
import type { RightGraph } from './right-graph';
import { seriesKeyOf, sideLabelOf, titleOf } from './written-on-graph';

/** A right line graph: its first day stands a square from the side. Not in the public door. */
export const drawRightLine = (right: RightGraph, options: DrawRightOptions): Drawing => {
  const { table } = right;
  if (table.form !== 'times') throw new Error(`No line graph of ${table.form}`);
  const range = scaleWithStep(right, options.step);
  const space = table.places.length > mostPlacesAcross ? 0.5 : 1;
  const placeAt = (place: number): number => (place + 1) * space;
  return {
    ...blankDrawing('line-graph', options.level ?? 'empty-paper', true, {
      up: squaresTo(range.to, range) + 1,
      across: Math.ceil(placeAt(table.places.length)),
    }),
    ...{ title: titleOf(table), seriesKey: seriesKeyOf(table.seriesNames) },
    side: numberSide(right, range, sideLabelOf(table), 0),
    places: table.places.map((text, place) => ({ at: placeAt(place), text })),
    ...pointsAndJoins(table, range, placeAt),
  };
};

const pointsAndJoins = (
  table: TimeTable,
  range: StepRange,
  placeAt: (place: number) => number,
): { readonly points: readonly DrawnPoint[]; readonly joins: readonly DrawnJoin[] } => {
  const points: DrawnPoint[] = [];
  const joins: DrawnJoin[] = [];
  for (const series of table.seriesNames.keys()) {
    let before: number | null = null;
    let line: DrawnJoin['line'] = 'solid';
    for (const row of rowsOfSeries(table, series)) {
      if (row.exact === null) {
        line = 'dashed';
        continue;
      }
      points.push({ x: placeAt(row.place), y: squaresTo(row.exact, range), series });
      if (before !== null) joins.push({ from: before, to: points.length - 1, line });
      before = points.length - 1;
      line = 'solid';
    }
  }
  return { points, joins };
};

const rowsOfSeries = (table: TimeTable, series: number): TimeTable['rows'] =>
  table.rows
    .filter((row) => row.series === series)
    .toSorted((one, other) => one.place - other.place);
