import type { Drawing, DrawnJoin } from './drawing';

/**
 * Puts the point of a line over a place, or moves the one that is there; its joins stay.
 * @example
 * withPoint(emptyDrawing('line-graph', { columns: 8, rows: 6 }), { x: 2, y: 3, series: 0 }).points // => [{ x: 2, y: 3, series: 0 }]
 */
export const withPoint = (drawing: Drawing, point: Drawing['points'][number]): Drawing => {
  const index = indexOfPoint(drawing, point.x, point.series);
  if (index < 0) return { ...drawing, points: [...drawing.points, point] };
  if (drawing.points[index]?.y === point.y) return drawing;
  return { ...drawing, points: drawing.points.with(index, point) };
};

/**
 * Takes the point over a place away, and the joins that led to it.
 * @example
 * withoutPoint(withPoint(emptyDrawing('line-graph', { columns: 8, rows: 6 }), { x: 2, y: 3, series: 0 }), 2, 0).points // => []
 */
export const withoutPoint = (drawing: Drawing, x: number, series: number): Drawing => {
  const gone = indexOfPoint(drawing, x, series);
  if (gone < 0) return drawing;
  const moved = (index: number): number => (index > gone ? index - 1 : index);
  return {
    ...drawing,
    points: drawing.points.filter((_, index) => index !== gone),
    joins: drawing.joins
      .filter(({ from, to }) => from !== gone && to !== gone)
      .map((join) => ({ ...join, from: moved(join.from), to: moved(join.to) })),
  };
};

/**
 * Joins two points by a line, or changes the look of the line that joins them.
 * @example
 * withJoin({ ...emptyDrawing('line-graph', { columns: 8, rows: 6 }), points: [{ x: 1, y: 1, series: 0 }, { x: 2, y: 3, series: 0 }] }, 0, 1, 'solid').joins // => [{ from: 0, to: 1, line: 'solid' }]
 */
export const withJoin = (
  drawing: Drawing,
  from: number,
  to: number,
  line: DrawnJoin['line'],
): Drawing => {
  if (from === to || !drawing.points[from] || !drawing.points[to]) return drawing;
  const others = drawing.joins.filter((join) => !joinsSame(join, from, to));
  return { ...drawing, joins: [...others, { from, to, line }] };
};

/**
 * Takes the line between two points away.
 * @example
 * withoutJoin({ ...emptyDrawing('line-graph', { columns: 8, rows: 6 }), joins: [{ from: 0, to: 1, line: 'solid' }] }, 1, 0).joins // => []
 */
export const withoutJoin = (drawing: Drawing, from: number, to: number): Drawing => ({
  ...drawing,
  joins: drawing.joins.filter((join) => !joinsSame(join, from, to)),
});

/**
 * The points of one line from left to right, as indexes: joining goes along them one by one.
 * @example
 * pointsInOrder({ ...emptyDrawing('line-graph', { columns: 8, rows: 6 }), points: [{ x: 4, y: 1, series: 0 }, { x: 2, y: 3, series: 0 }] }, 0) // => [1, 0]
 */
export const pointsInOrder = ({ points }: Drawing, series: number): readonly number[] =>
  points
    .map((point, index) => ({ ...point, index }))
    .filter((point) => point.series === series)
    .sort((one, other) => one.x - other.x)
    .map(({ index }) => index);

/**
 * Joins the first two neighbours, from the left, that no line joins yet; unchanged when there are
 * none.
 * @example
 * withNextJoin({ ...emptyDrawing('line-graph', { columns: 8, rows: 6 }), points: [{ x: 4, y: 1, series: 0 }, { x: 2, y: 3, series: 0 }] }, 0, 'dashed').joins // => [{ from: 1, to: 0, line: 'dashed' }]
 */
export const withNextJoin = (
  drawing: Drawing,
  series: number,
  line: DrawnJoin['line'],
): Drawing => {
  const order = pointsInOrder(drawing, series);
  for (let place = 1; place < order.length; place += 1) {
    const [from, to] = [order[place - 1] as number, order[place] as number];
    if (!drawing.joins.some((join) => joinsSame(join, from, to))) {
      return withJoin(drawing, from, to, line);
    }
  }
  return drawing;
};

/**
 * Where in the list the point over a place stands, or -1.
 * @example
 * indexOfPoint({ ...emptyDrawing('line-graph', { columns: 8, rows: 6 }), points: [{ x: 4, y: 1, series: 0 }] }, 4, 0) // => 0
 */
export const indexOfPoint = ({ points }: Drawing, x: number, series: number): number =>
  points.findIndex((point) => point.x === x && point.series === series);

const joinsSame = (join: DrawnJoin, one: number, other: number): boolean =>
  (join.from === one && join.to === other) || (join.from === other && join.to === one);
