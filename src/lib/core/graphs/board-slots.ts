import type { Drawing } from './drawing';

/** A column of the board (or a row, where the bars lie): one place where marks can be put. */
export interface BoardSlot {
  readonly at: number;
  /** How much of the paper it takes, in squares. */
  readonly width: number;
  /** What the child wrote there, or the paper had; empty while nothing is. */
  readonly name: string;
}

/** What a sheet has on it besides marks: where the columns are does not change with a mark. */
export type BoardSheet = Pick<
  Drawing,
  'kind' | 'level' | 'paper' | 'upright' | 'places' | 'side' | 'bottom'
>;

/**
 * The places of a board where marks can be put. They stand as far apart as in a right drawing of
 * the same table, but on paper without names there are as many as fit, so that their number does
 * not tell how many there should be. Rows that lie are counted from the top.
 * @example
 * boardSlots(emptyDrawing('line-plot', { columns: 2, rows: 4 }), emptyDrawing('line-plot', { columns: 2, rows: 4 })) // => [{ at: 0, width: 1, name: '' }, { at: 1, width: 1, name: '' }, { at: 2, width: 1, name: '' }]
 */
export function boardSlots(drawing: BoardSheet, right: BoardSheet): readonly BoardSlot[] {
  const given = positionsOf(drawing, right);
  const positions = drawing.upright ? given : given.toReversed();
  const gap = smallestGap(given);
  const texts = drawing.kind === 'line-plot' ? drawing.bottom.ticks : drawing.places;
  const nameByAt = new Map(texts.map(({ at, text }) => [at, text]));
  return positions.map((at) => ({ at, width: gap, name: nameByAt.get(at) ?? '' }));
}

/**
 * How many squares the paper is long in the direction in which the columns stand side by side.
 * @example
 * acrossOf({ ...emptyDrawing('bar-graph', { columns: 8, rows: 6 }), upright: false }) // => 6
 */
export const acrossOf = ({ paper, upright }: Pick<Drawing, 'paper' | 'upright'>): number =>
  upright ? paper.columns : paper.rows;

/**
 * How many squares the paper is long in the direction in which marks climb.
 * @example
 * alongOf({ ...emptyDrawing('bar-graph', { columns: 8, rows: 6 }), upright: false }) // => 8
 */
export const alongOf = ({ paper, upright }: Pick<Drawing, 'paper' | 'upright'>): number =>
  upright ? paper.rows : paper.columns;

const positionsOf = (drawing: BoardSheet, right: BoardSheet): readonly number[] => {
  const isBare = drawing.level === 'empty-paper';
  if (drawing.kind === 'line-plot') {
    return isBare ? everyLine(drawing) : ascending(drawing.bottom.ticks);
  }
  if (drawing.level === 'frame-given') return ascending(drawing.places);
  const given = ascending(right.places);
  if (drawing.kind === 'line-graph') return isBare ? everyLine(drawing) : given;
  const gap = smallestGap(given);
  const first = given[0] ?? gap / 2;
  const begin = first - Math.floor(first / gap) * gap;
  const count = Math.floor((acrossOf(drawing) - begin) / gap) + 1;
  const positions = Array.from({ length: Math.max(0, count) }, (_, index) => begin + index * gap);
  return positions.filter((at) => at > 0 && at < acrossOf(drawing));
};

const everyLine = ({ paper }: BoardSheet): readonly number[] =>
  Array.from({ length: paper.columns + 1 }, (_, line) => line);

const ascending = (list: readonly { readonly at: number }[]): readonly number[] =>
  list.map(({ at }) => at).sort((one, other) => one - other);

const smallestGap = (positions: readonly number[]): number => {
  const gaps = positions.slice(1).map((at, index) => at - (positions[index] as number));
  return gaps.length === 0 ? 1 : Math.min(...gaps);
};
