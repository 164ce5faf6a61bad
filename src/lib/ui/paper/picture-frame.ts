import type { Drawing } from '#core/graphs';
import type { SheetEdges } from './paper-layout';

/** Where the squares of a drawing lie in its picture, in millimetres from the upper left. */
export interface PictureFrame {
  readonly squareMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly edges: SheetEdges;
  /** Whether the names along the bottom lean, because side by side they are too long. */
  readonly leansNames: boolean;
  readonly xOf: (squares: number) => number;
  readonly yOf: (squares: number) => number;
}

/** What the words around a drawing depend on. */
export type FrameOf = Pick<Drawing, 'kind' | 'upright' | 'side' | 'bottom' | 'places' | 'paper'>;

/** Where a drawing's squares and words lie when a square is so large. */
export function pictureFrame(
  drawing: FrameOf,
  squareMm: number,
  options: { readonly numbersTwice?: boolean } = {},
): PictureFrame {
  const edges = pictureEdges(drawing, squareMm, options);
  const { columns, rows } = drawing.paper;
  const floorMm = edges.top + rows * squareMm;
  return {
    ...{ squareMm, edges, leansNames: namesLean(drawing, squareMm) },
    widthMm: edges.left + columns * squareMm + edges.right,
    heightMm: floorMm + edges.bottom,
    xOf: (squares) => edges.left + squares * squareMm,
    yOf: (squares) => floorMm - squares * squareMm,
  };
}

/** The room that names and numbers take around the squares. */
export const pictureEdges = (
  drawing: FrameOf,
  squareMm: number,
  { numbersTwice = false }: { readonly numbersTwice?: boolean } = {},
): SheetEdges => {
  const { ticks } = drawing.side;
  const numbersMm = ticks.length === 0 ? toWriteMm : Math.max(9, longest(ticks) * letterMm + 5);
  const namesMm = Math.min(mostNameMm, Math.max(24, longest(drawing.places) * letterMm + 4));
  const hasSide = drawing.kind !== 'line-plot';
  const left = !hasSide ? 7 : drawing.upright ? numbersMm : namesMm;
  const isTwice = numbersTwice && hasSide && drawing.upright && drawing.side.ticks.length > 0;
  return {
    ...{ left, right: isTwice ? numbersMm : 7, top: 4 },
    bottom: bottomMm(drawing, squareMm),
  };
};

const bottomMm = (drawing: FrameOf, squareMm: number): number => {
  const { ticks } = drawing.side;
  const written = namesAlongBottom(drawing).length + (drawing.upright ? 0 : ticks.length);
  // Where pictures lie in rows that have their names, nothing is to be written under them.
  if (drawing.kind === 'picture-graph' && !drawing.upright && drawing.places.length > 0) return 4;
  if (written === 0) return toWriteMm;
  if (!namesLean(drawing, squareMm)) return 9;
  return Math.min(mostNameMm, longest(namesAlongBottom(drawing)) * letterMm * 0.87 + 7);
};

/** Words are written this high; a letter is about this wide (Andika, measured: 0.55 of it). */
export const wordMm = 4.2;
const letterMm = wordMm * 0.55;
const mostNameMm = 38;
/** Room for a child's own numbers and names, where none are given. */
const toWriteMm = 14;

/** How high a word is written so that it is no longer than the room for names. */
export const nameMm = (text: string): number =>
  Math.min(wordMm, (mostNameMm - 4) / (0.55 * Math.max(1, text.length)));

const namesAlongBottom = ({ kind, upright, places, bottom }: FrameOf): Drawing['places'] =>
  kind === 'line-plot' ? bottom.ticks : upright ? places : [];

const namesLean = (drawing: FrameOf, squareMm: number): boolean => {
  const names = namesAlongBottom(drawing);
  const gap = smallestGap(names.map(({ at }) => at)) * squareMm;
  return longest(names) * letterMm + 2 > gap;
};

const smallestGap = (positions: readonly number[]): number => {
  const inOrder = [...positions].sort((one, other) => one - other);
  const gaps = inOrder.slice(1).map((at, index) => at - inOrder[index]!);
  return gaps.length === 0 ? Infinity : Math.min(...gaps);
};

const longest = (list: readonly { readonly text: string }[]): number =>
  Math.max(0, ...list.map(({ text }) => text.length));
