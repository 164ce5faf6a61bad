import { remarkOn, yetToDraw, type DrawnRemark } from './drawn-remark';
import { hasGapBetween, type LineGraphParts } from './line-graph-parts';
import type { MatchedPoints } from './match-points';
import type { StrokesOnGraph } from './line-graph-strokes';

/**
 * What there is to say about joins: T3 where they do not follow the days, T10 where a solid one
 * goes across a day without a reading as if it were measured (that has no number of its own; like
 * a line carried on behind the last reading, it tells what nobody measured), and T13, said last,
 * where neighbours are not joined yet. Dashes are always fine, and over such a day so is a break.
 * Not part of the public door.
 */
export const remarksOnJoins = (
  graph: LineGraphParts,
  matched: MatchedPoints,
  strokes: StrokesOnGraph,
): readonly DrawnRemark[] => {
  const { joins } = graph.drawing;
  const walk = pointsByDay(graph, matched);
  // A point nobody read is told as such (T2, T10): passing it by is not out of order.
  const readWalk = pointsByDay(graph, matched, ({ index }) => matched.rowByPoint.has(index));
  const unordered = joins.flatMap(({ from, to }, index) =>
    areNeighbours(walk, from, to) || areNeighbours(readWalk, from, to) ? [] : [index],
  );
  const across = joins.flatMap(({ from, to, line }, index) =>
    line === 'solid' && !unordered.includes(index) && isAcrossGap(graph, matched, from, to)
      ? [index]
      : [],
  );
  return [
    ...(unordered.length > 0 ? [remarkOn('T3', 'joins', unordered)] : []),
    ...(across.length > 0 ? [remarkOn('T10', 'joins', across)] : []),
    ...(unordered.length === 0 && hasOpenPair(graph, matched, walk, strokes)
      ? [yetToDraw(remarkOn('T13', 'joins', []))]
      : []),
  ];
};

/** Whether two points, both readings, have a day without one in between. */
export const isAcrossGap = (
  graph: LineGraphParts,
  { rowByPoint }: MatchedPoints,
  from: number,
  to: number,
): boolean => {
  const [one, other] = [rowByPoint.get(from), rowByPoint.get(to)];
  if (!one || !other || one.series !== other.series) return false;
  const [first, last] = [Math.min(one.place, other.place), Math.max(one.place, other.place)];
  return hasGapBetween(graph, one.series, first, last);
};

interface Step {
  readonly series: number;
  /** How many days with a point of this series come before. */
  readonly order: number;
}

/** Every point with its order in time among those of its series; points of one day share it. */
const pointsByDay = (
  { drawing, days }: LineGraphParts,
  { rowByPoint }: MatchedPoints,
  isMeant: (point: { readonly index: number }) => boolean = () => true,
): ReadonlyMap<number, Step> => {
  const placed = drawing.points
    .map(({ x, series }, index) => {
      const row = rowByPoint.get(index);
      return { index, series: row?.series ?? series, at: (row && days?.atOf(row.place)) ?? x };
    })
    .filter(isMeant);
  const walk = new Map<number, Step>();
  for (const series of new Set(placed.map((point) => point.series))) {
    const own = placed
      .filter((point) => point.series === series)
      .sort((one, other) => one.at - other.at);
    let order = 0;
    own.forEach(({ index, at }, place) => {
      if (place > 0 && at - (own[place - 1]?.at ?? 0) > 1e-6) order += 1;
      walk.set(index, { series, order });
    });
  }
  return walk;
};

const areNeighbours = (walk: ReadonlyMap<number, Step>, from: number, to: number): boolean => {
  const [one, other] = [walk.get(from), walk.get(to)];
  if (!one || !other || one.series !== other.series) return false;
  return from !== to && Math.abs(one.order - other.order) <= 1;
};

/** Two readings after each other, no day missed in between, that no line joins. */
const hasOpenPair = (
  graph: LineGraphParts,
  matched: MatchedPoints,
  walk: ReadonlyMap<number, Step>,
  { joined }: StrokesOnGraph,
): boolean => {
  const pairs = [...graph.drawing.joins.map(({ from, to }) => [from, to] as const), ...joined];
  const closed = new Set(
    pairs.flatMap(([from, to]) => {
      const [one, other] = [walk.get(from), walk.get(to)];
      if (!one || one.series !== other?.series) return [];
      return Math.abs(one.order - other.order) === 1
        ? [`${one.series} ${Math.min(one.order, other.order)}`]
        : [];
    }),
  );
  return [...walk].some(([from, { series, order }]) => {
    if (closed.has(`${series} ${order}`) || !matched.rowByPoint.has(from)) return false;
    return [...walk].some(
      ([to, next]) =>
        next.series === series &&
        next.order === order + 1 &&
        matched.rowByPoint.has(to) &&
        !isAcrossGap(graph, matched, from, to),
    );
  });
};
