import type { Drawing, DrawnCross, DrawnKey } from './drawing';
import { mirroredAcross } from './mirrored-across';

/**
 * Writes the title of a drawing.
 * @example
 * withTitle(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 'Our sky').title // => 'Our sky'
 */
export const withTitle = (drawing: Drawing, title: string): Drawing => ({ ...drawing, title });

/**
 * Writes a part of the key; the parts not named stay, or are still open.
 * @example
 * withKey(emptyDrawing('picture-graph', { columns: 4, rows: 6 }), { value: 2 }).key // => { value: 2, symbol: null, text: '' }
 */
export const withKey = (drawing: Drawing, part: Partial<DrawnKey>): Drawing => ({
  ...drawing,
  key: { value: null, symbol: null, text: '', ...drawing.key, ...part },
});

/**
 * Writes whose mark or line is whose; an empty text takes the line of the key away.
 * @example
 * withSeriesKey(emptyDrawing('line-graph', { columns: 4, rows: 6 }), 1, 'Shelf bean').seriesKey // => [{ series: 1, text: 'Shelf bean' }]
 */
export const withSeriesKey = (drawing: Drawing, series: number, text: string): Drawing => {
  const others = drawing.seriesKey.filter((each) => each.series !== series);
  const seriesKey = text === '' ? others : [...others, { series, text }];
  return { ...drawing, seriesKey: seriesKey.sort((one, other) => one.series - other.series) };
};

/**
 * Writes what the numbers of a side are of.
 * @example
 * withSideLabel(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 'side', 'days').side // => { label: 'days', ticks: [] }
 */
export const withSideLabel = (drawing: Drawing, side: NumberSide, label: string): Drawing => ({
  ...drawing,
  [side]: { ...drawing[side], label },
});

/**
 * Writes a number beside a line of the paper; an empty text takes it away.
 * @example
 * withTick(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 'side', 2, '10').side.ticks // => [{ at: 2, text: '10' }]
 */
export const withTick = (
  drawing: Drawing,
  side: NumberSide,
  at: number,
  text: string,
): Drawing => ({
  ...drawing,
  [side]: { ...drawing[side], ticks: labelled(drawing[side].ticks, at, text) },
});

/**
 * Writes the name of a kind or a day at its place; an empty text takes it away.
 * @example
 * withPlace(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 'sun').places // => [{ at: 1, text: 'sun' }]
 */
export const withPlace = (drawing: Drawing, at: number, text: string): Drawing => ({
  ...drawing,
  places: labelled(drawing.places, at, text),
});

/**
 * Lays the bars or rows of a drawing the other way round: upright or along the paper. The sheet
 * is turned with it; what stood first from the left lies first from the top.
 * @example
 * turned(emptyDrawing('bar-graph', { columns: 4, rows: 6 })).paper // => { columns: 6, rows: 4 }
 */
export const turned = (drawing: Drawing): Drawing => ({
  ...mirroredAcross(drawing),
  upright: !drawing.upright,
  paper: { columns: drawing.paper.rows, rows: drawing.paper.columns },
});

/**
 * Raises or lowers the bar at a place so that it ends there; where none stood, one is drawn. A
 * bar that ends on the base is a bar of nothing, which is what a kind that never came looks like.
 * @example
 * withBar(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 3, 1).bars // => [{ at: 1, width: 1, from: 0, to: 3 }]
 */
export const withBar = (drawing: Drawing, at: number, to: number, width: number): Drawing => {
  const old = drawing.bars.find((bar) => bar.at === at);
  if (old?.to === to) return drawing;
  const others = drawing.bars.filter((bar) => bar.at !== at);
  const bars = [...others, old ? { ...old, to } : { at, width, from: 0, to }];
  return { ...drawing, bars: bars.sort((one, other) => one.at - other.at) };
};

/**
 * Takes the bar at a place away.
 * @example
 * withoutBar(withBar(emptyDrawing('bar-graph', { columns: 4, rows: 6 }), 1, 3, 1), 1).bars // => []
 */
export const withoutBar = (drawing: Drawing, at: number): Drawing => ({
  ...drawing,
  bars: drawing.bars.filter((bar) => bar.at !== at),
});

/**
 * Puts a mark on top of those above a place on the number line, if the paper has room. A mark and
 * its space take a square, or as much of one as is said.
 * @example
 * withCross(emptyDrawing('line-plot', { columns: 4, rows: 6 }), 2, 'cross').crosses // => [{ at: 2, height: 0.5, size: 0.8, look: 'cross' }]
 */
export const withCross = (
  drawing: Drawing,
  at: number,
  look: DrawnCross['look'],
  space = 1,
): Drawing => {
  const below = drawing.crosses.filter((cross) => cross.at === at).length;
  if ((below + 1) * space > drawing.paper.rows) return drawing;
  const cross = { at, height: (below + 0.5) * space, size: crossSize * space, look };
  return { ...drawing, crosses: [...drawing.crosses, cross] };
};

/**
 * Takes the topmost mark above a place away.
 * @example
 * withoutCross(withCross(emptyDrawing('line-plot', { columns: 4, rows: 6 }), 2, 'cross'), 2).crosses // => []
 */
export const withoutCross = (drawing: Drawing, at: number): Drawing => {
  const above = drawing.crosses.filter((cross) => cross.at === at);
  const top = above.reduce((high, cross) => (cross.height > high.height ? cross : high), above[0]!);
  return { ...drawing, crosses: drawing.crosses.filter((cross) => cross !== top) };
};

/** The two sides of the paper that can carry numbers. */
export type NumberSide = 'side' | 'bottom';

const crossSize = 0.8;

const labelled = (
  list: readonly { readonly at: number; readonly text: string }[],
  at: number,
  text: string,
): readonly { readonly at: number; readonly text: string }[] => {
  const others = list.filter((each) => each.at !== at);
  if (text === '') return others;
  return [...others, { at, text }].sort((one, other) => one.at - other.at);
};
