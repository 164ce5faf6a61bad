import { alongOf, type BoardSlot } from './board-slots';
import type { Drawing, DrawnCross, SymbolName } from './drawing';
import { withBar, withCross, withoutBar, withoutCross } from './drawing-edits';
import { middleOfSquare, snapToPaper } from './paper-lines';
import { withoutPoint, withPoint } from './point-edits';
import { withLastHalved, withNextSymbol, withoutLastSymbol, withSymbol } from './symbol-edits';

/** What the child holds while drawing: whose mark it is, and how it looks. */
export interface DrawingHand {
  readonly series: number;
  readonly symbol: SymbolName;
  readonly cross: DrawnCross['look'];
  /** How much of a square a mark of a line plot takes up. */
  readonly crossSpace: number;
}

/**
 * A tap on a column, so many squares along it: the bar or point goes to the nearest line or half
 * line of the paper, a picture into the square, a cross on top of the others.
 * @example
 * tappedAt(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), { at: 1, width: 2, name: '' }, { series: 0 }, 2.6).bars[0].to // => 2.5
 */
export const tappedAt = (
  drawing: Drawing,
  slot: BoardSlot,
  hand: DrawingHand,
  along: number,
): Drawing => {
  const most = alongOf(drawing);
  switch (drawing.kind) {
    case 'picture-graph':
      return withSymbol(drawing, {
        ...{ row: slot.at, at: middleOfSquare(along, most), symbol: hand.symbol },
      });
    case 'line-plot':
      return withCross(drawing, slot.at, hand.cross, hand.crossSpace);
    default:
      return withHeight(drawing, slot, hand, snapToPaper(along, most));
  }
};

/**
 * One more: the bar or point a line higher, a picture after the last, a cross on top.
 * @example
 * raisedAt(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), { at: 1, width: 2, name: '' }, { series: 0 }).bars[0].to // => 1
 */
export const raisedAt = (drawing: Drawing, slot: BoardSlot, hand: DrawingHand): Drawing => {
  if (drawing.kind === 'picture-graph') {
    return withNextSymbol(drawing, { row: slot.at, symbol: hand.symbol });
  }
  if (drawing.kind === 'line-plot') return tappedAt(drawing, slot, hand, 0);
  const height = heightAt(drawing, slot, hand);
  return withHeight(drawing, slot, hand, Math.min(alongOf(drawing), (height ?? 0) + 1));
};

/**
 * One less: the bar or point a line lower, the last picture or the topmost cross away. A bar or
 * point already on the base stays there, for nothing is drawn lower than 0; an empty place stays
 * empty, except that a bar or point can be set on the base.
 * @example
 * loweredAt(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), { at: 1, width: 2, name: '' }, { series: 0 }).bars[0].to // => 0
 */
export const loweredAt = (drawing: Drawing, slot: BoardSlot, hand: DrawingHand): Drawing => {
  if (drawing.kind === 'picture-graph') return withoutLastSymbol(drawing, slot.at);
  if (drawing.kind === 'line-plot') return withoutCross(drawing, slot.at);
  const height = heightAt(drawing, slot, hand) ?? 0;
  return withHeight(drawing, slot, hand, Math.max(0, height - 1));
};

/**
 * Half a square more or less: a bar or point goes to the half line and back, the last picture is
 * cut in half and made whole again. A line plot has no halves this way.
 * @example
 * halvedAt(withBar(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 3, 1), { at: 1, width: 2, name: '' }, { series: 0 }).bars[0].to // => 3.5
 */
export const halvedAt = (drawing: Drawing, slot: BoardSlot, hand: DrawingHand): Drawing => {
  if (drawing.kind === 'picture-graph') return withLastHalved(drawing, slot.at);
  if (drawing.kind === 'line-plot') return drawing;
  const height = heightAt(drawing, slot, hand) ?? 0;
  const isOnLine = Number.isInteger(height);
  const to = isOnLine ? height + 0.5 : Math.floor(height);
  return withHeight(drawing, slot, hand, Math.min(alongOf(drawing), to));
};

/**
 * Takes everything at a place away, of a line only its own point.
 * @example
 * clearedAt(withBar(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 3, 1), { at: 1, width: 2, name: '' }, { series: 0 }).bars // => []
 */
export const clearedAt = (drawing: Drawing, { at }: BoardSlot, hand: DrawingHand): Drawing => {
  switch (drawing.kind) {
    case 'picture-graph':
      return { ...drawing, symbols: drawing.symbols.filter((symbol) => symbol.row !== at) };
    case 'line-plot':
      return { ...drawing, crosses: drawing.crosses.filter((cross) => cross.at !== at) };
    case 'bar-graph':
      return withoutBar(drawing, at);
    case 'line-graph':
      return withoutPoint(drawing, at, hand.series);
  }
};

const heightAt = (drawing: Drawing, { at }: BoardSlot, { series }: DrawingHand): number | null =>
  drawing.kind === 'bar-graph'
    ? (drawing.bars.find((bar) => bar.at === at)?.to ?? null)
    : (drawing.points.find((point) => point.x === at && point.series === series)?.y ?? null);

const withHeight = (
  drawing: Drawing,
  { at, width }: BoardSlot,
  { series }: DrawingHand,
  height: number,
): Drawing =>
  drawing.kind === 'bar-graph'
    ? withBar(drawing, at, height, width / 2)
    : withPoint(drawing, { x: at, y: height, series });
