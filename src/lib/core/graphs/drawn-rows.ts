import type { BoardSlot } from './board-slots';
import type { Drawing } from './drawing';

/** What is drawn at one place, as a row of the table that tells a drawing without looking. */
export interface DrawnRow {
  readonly at: number;
  readonly name: string;
  /** Marks of each sort, counted; `half` are pictures cut in half. */
  readonly marks: number;
  readonly halves: number;
  /** How many squares high the bar ends or the point lies, or null while there is none. */
  readonly squares: number | null;
  /** The number written at that height, or an empty text: what the child can read off. */
  readonly beside: string;
}

/**
 * What a drawing shows, place by place: only what was drawn, never what should be.
 * @example
 * drawnRows(withBar(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 3, 1), [{ at: 1, width: 2, name: 'sun' }]) // => [{ at: 1, name: 'sun', marks: 1, halves: 0, squares: 3, beside: '' }]
 */
export const drawnRows = (
  drawing: Drawing,
  slots: readonly BoardSlot[],
  series = 0,
): readonly DrawnRow[] => slots.map((slot) => drawnRow(drawing, slot, series));

/**
 * What a drawing shows at one place.
 * @example
 * drawnRow(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), { at: 1, width: 2, name: 'sun' }).squares // => null
 */
export function drawnRow(drawing: Drawing, { at, name }: BoardSlot, series = 0): DrawnRow {
  const symbols = drawing.symbols.filter((each) => each.row === at);
  const bars = drawing.bars.filter((each) => each.at === at);
  const crosses = drawing.crosses.filter((each) => each.at === at);
  const points = drawing.points.filter((each) => each.x === at && each.series === series);
  const squares = bars[0]?.to ?? points[0]?.y ?? null;
  return {
    ...{ at, name, squares },
    marks: symbols.length + bars.length + crosses.length + points.length,
    halves: symbols.filter((each) => each.part === 'half').length,
    beside: drawing.side.ticks.find((tick) => tick.at === squares)?.text ?? '',
  };
}
