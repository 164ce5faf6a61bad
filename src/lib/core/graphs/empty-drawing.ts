import type { Drawing, DrawingLevel } from './drawing';
import type { GraphKind } from './graph-table';

/**
 * A sheet with nothing on it, so many squares wide and high.
 * @example
 * emptyDrawing('line-plot', { columns: 12, rows: 6 }).crosses // => []
 */
export const emptyDrawing = (kind: GraphKind, paper: Drawing['paper']): Drawing => ({
  ...{ kind, level: 'empty-paper', paper, upright: true, title: '', key: null },
  ...{ seriesKey: [], side: { label: '', ticks: [] }, bottom: { label: '', ticks: [] } },
  ...{ places: [], symbols: [], bars: [], crosses: [], points: [], joins: [], strokes: [] },
});

/**
 * The sheet a child begins with, made from a right drawing by taking away everything that the
 * child is to draw: never a mark, a title or a key's number. With the frame given, the names and
 * the numbers stand; with the scale given, only the numbers; on empty paper, the squares alone.
 * @example
 * begunDrawing({ ...emptyDrawing('bar-graph', { columns: 4, rows: 6 }), title: 'Sun', places: [{ at: 1, text: 'sun' }] }, 'frame-given').title // => ''
 */
export function begunDrawing(right: Drawing, level: DrawingLevel): Drawing {
  const sheet = { ...emptyDrawing(right.kind, roomFor(right)), level, upright: right.upright };
  if (level === 'empty-paper') return sheet;
  const numbers = {
    side: { label: '', ticks: right.side.ticks },
    bottom: { label: '', ticks: right.bottom.ticks },
  };
  if (level === 'scale-given') return { ...sheet, ...numbers };
  const { side, bottom, places } = right;
  return { ...sheet, side, bottom, places };
}

/** Squares to spare, so that the edge of the paper does not tell how far the marks will go. */
const roomFor = ({ kind, paper, upright }: Drawing): Drawing['paper'] => {
  const spared = kind === 'picture-graph' || kind === 'line-plot' ? 2 : 0;
  const { columns, rows } = paper;
  if (upright) return { columns, rows: Math.max(fewestSquares, rows + spared) };
  return { columns: Math.max(fewestSquares, columns + spared), rows };
};

const fewestSquares = 6;
