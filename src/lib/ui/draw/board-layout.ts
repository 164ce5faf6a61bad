import { acrossOf, alongOf, type BoardSheet, type BoardSlot } from '#core/graphs';

/** Where squares of the paper come to lie on the screen, in CSS pixels from the upper left. */
export interface BoardLayout {
  readonly square: number;
  readonly width: number;
  readonly height: number;
  /** The corner where the sides meet. */
  readonly corner: { readonly x: number; readonly y: number };
  readonly xOf: (squares: number) => number;
  readonly yOf: (squares: number) => number;
  /** Whether the names of the columns are too long to stand side by side. */
  readonly leansNames: boolean;
}

/**
 * Lays a sheet out in a space so wide and high. Squares are squares; a column is never narrower
 * than a finger, so a sheet of many columns may become wider than the space and is pushed along.
 */
export function boardLayout(
  drawing: BoardSheet,
  slots: readonly BoardSlot[],
  space: { readonly width: number; readonly height: number; readonly isTouched: boolean },
): BoardLayout {
  const { upright, paper } = drawing;
  const texts = drawing.kind === 'line-plot' ? drawing.bottom.ticks : drawing.places;
  const longest = Math.max(0, ...texts.map(({ text }) => text.length));
  const left = upright ? numbersWidth : Math.min(longestName, Math.max(64, longest * 10 + 16));
  const gap = slots[0]?.width ?? 1;
  const leastSeen =
    upright && longest * 9.5 + 6 > gap * leastLooked ? leastLeaning / gap : leastLooked;
  const least = space.isTouched
    ? Math.max(leastSquare, finger / Math.max(gap, 0.5))
    : Math.max(leastLooked, leastSeen);
  const fitting = Math.min((space.width - left - edge) / paper.columns, space.height / paper.rows);
  const square = Math.floor(Math.max(least, Math.min(mostSquare, fitting)));
  const leansNames = upright && longest * 9.5 + 6 > gap * square;
  const bottom = leansNames ? Math.min(longestName, longest * 8 + 24) : 36;
  const corner = { x: left, y: edge + paper.rows * square };
  return {
    ...{ square, corner, leansNames },
    width: left + paper.columns * square + edge,
    height: corner.y + bottom,
    xOf: (squares) => corner.x + squares * square,
    yOf: (squares) => corner.y - squares * square,
  };
}

/** The target of a column: as wide as the column, as long as the paper and its name. */
export function slotBox(
  layout: BoardLayout,
  drawing: Pick<BoardSheet, 'paper' | 'upright'>,
  slot: BoardSlot,
): SlotBox {
  const { square, corner, width, height } = layout;
  const from = Math.max(0, slot.at - slot.width / 2);
  const to = Math.min(acrossOf(drawing) + 0.5, slot.at + slot.width / 2);
  const breadth = (to - from) * square;
  if (drawing.upright) return { left: layout.xOf(from), top: 0, width: breadth, height };
  return { left: 0, top: layout.yOf(to), width: Math.max(width, corner.x), height: breadth };
}

/** How many squares along a column a touch lies, from the upper left of the board in pixels. */
export const alongAt = (
  layout: BoardLayout,
  drawing: Pick<BoardSheet, 'paper' | 'upright'>,
  touch: { readonly x: number; readonly y: number },
): number => {
  const pixels = drawing.upright ? layout.corner.y - touch.y : touch.x - layout.corner.x;
  return Math.min(alongOf(drawing), Math.max(0, pixels / layout.square));
};

/**
 * How far wide paper is to be pushed so that a column is in sight: not at all where it is. The
 * numbers stand over the left edge of paper that is pushed along.
 */
export function pushedTo(
  { corner }: BoardLayout,
  { left, width }: SlotBox,
  paper: { readonly pushed: number; readonly width: number },
): number {
  const begin = Math.max(0, left - corner.x);
  const end = left + width - paper.width;
  return Math.min(begin, Math.max(paper.pushed, end));
}

export interface SlotBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const numbersWidth = 56;
const longestName = 130;
const edge = 18;
/** A finger of a child: 48 CSS pixels (WCAG 2.2 asks for 24, and 44 at its highest level). */
const finger = 48;
const leastSquare = 24;
/** A drawing that is only looked at may be small, so that two stand side by side. */
const leastLooked = 14;
/** Names that lean lie over each other on smaller squares. */
const leastLeaning = 20;
const mostSquare = 48;
