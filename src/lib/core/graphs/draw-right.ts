import { drawRightBars } from './draw-right-bars';
import { drawRightLine } from './draw-right-line';
import { drawRightPictures } from './draw-right-pictures';
import { drawRightPlot } from './draw-right-plot';
import type { Drawing, DrawingLevel, SymbolName } from './drawing';
import type { RightGraph } from './right-graph';

/**
 * A right drawing of a table, as a careful child would place it: one square is one step of the
 * scale. Bars stand in their places with even gaps; a day without a number keeps its place and has
 * no bar, a number 0 has a bar without height; a kind that never came has a place and nothing
 * more. Crosses pile up from the number line in the order of the table. Points are joined in
 * order, dashed where the table has a row without a number in between. The middle of a picture is
 * the middle of its square, for a half picture too.
 *
 * It is for tests, worked examples and answer pages: it is never shown while a child's own drawing
 * of the same table is open. A step or key that is no whole part of the scale throws.
 * @example
 * drawRight(rightGraphOf('bar-graph', { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 1 }] }, 'grade-2').value).bars // => [{ at: 1.5, width: 1, from: 0, to: 3 }, { at: 3.5, width: 1, from: 0, to: 1 }]
 */
export const drawRight = (right: RightGraph, options: DrawRightOptions = {}): Drawing => {
  switch (right.kind) {
    case 'picture-graph':
      return drawRightPictures(right, options);
    case 'bar-graph':
      return drawRightBars(right, options);
    case 'line-plot':
      return drawRightPlot(right, options);
    case 'line-graph':
      return drawRightLine(right, options);
  }
};

export interface DrawRightOptions {
  /** Whether bars stand and rows climb; by itself bars do, and rows of pictures lie. */
  readonly upright?: boolean;
  /** Another number of things for one picture. */
  readonly keyValue?: number;
  /** Another step of the scale, in counts or whole nanometres. */
  readonly step?: number;
  readonly symbol?: SymbolName;
  readonly level?: DrawingLevel;
}
