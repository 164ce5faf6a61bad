import type { LineGraphParts, MeasuredRow } from './line-graph-parts';
import { showsOnScale } from './place-on-scale';

/** Which point shows which reading. */
export interface MatchedPoints {
  readonly rowByPoint: ReadonlyMap<number, MeasuredRow>;
  /** Points that show no reading, as they stand in the drawing. */
  readonly strays: readonly number[];
  /** Readings without a point, though the sides have room for them. */
  readonly missing: readonly MeasuredRow[];
}

/**
 * Gives every reading the point nearest to it among those within a quarter of a day and a quarter
 * of an interval. A side that cannot be read, and a value above its top, are no reason for a point
 * to be out of place: that is told of the side itself.
 * @param seriesOfMark which series each line stands for, or null where lines are not told apart
 *
 * Not part of the public door.
 */
export const matchPoints = (
  graph: LineGraphParts,
  seriesOfMark: readonly number[] | null,
): MatchedPoints => {
  const { drawing, measured, days } = graph;
  const away = quarterOfADay(graph);
  const near = drawing.points.flatMap((point, index) =>
    measured.flatMap((row) => {
      const at = days?.atOf(row.place) ?? null;
      if (at === null || Math.abs(point.x - at) > away) return [];
      if (seriesOfMark && seriesOfMark[point.series] !== row.series) return [];
      return showsValue(graph, point.y, row.exact)
        ? [{ index, row, distance: Math.hypot(point.x - at, awayUp(graph, point.y, row.exact)) }]
        : [];
    }),
  );
  const rowByPoint = new Map<number, MeasuredRow>();
  const taken = new Set<MeasuredRow>();
  for (const { index, row } of near.sort((one, other) => one.distance - other.distance)) {
    if (rowByPoint.has(index) || taken.has(row)) continue;
    rowByPoint.set(index, row);
    taken.add(row);
  }
  return {
    rowByPoint,
    strays: [...drawing.points.keys()].filter((index) => !rowByPoint.has(index)),
    missing: measured.filter((row) => !taken.has(row) && hasRoom(graph, row)),
  };
};

/** The place a point stands above, or null between places. Not part of the public door. */
export const placeOfPoint = (graph: LineGraphParts, x: number): number | null => {
  const away = quarterOfADay(graph);
  const found = graph.table.places.findIndex((_, place) => {
    const at = graph.days?.atOf(place) ?? null;
    return at !== null && Math.abs(at - x) <= away;
  });
  return found < 0 ? null : found;
};

/** Whether a position up the side shows a value. Not part of the public door. */
export const showsValue = ({ risingScale }: LineGraphParts, y: number, exact: number): boolean => {
  if (!risingScale) return true;
  const top = risingScale.ticks.at(-1);
  const isAbove = top !== undefined && exact > top.value;
  if (isAbove && y >= top.at - risingScale.space / 4) return true;
  return showsOnScale(risingScale, y, exact);
};

const awayUp = ({ risingScale }: LineGraphParts, y: number, exact: number): number =>
  risingScale ? Math.abs(risingScale.valueAt(y) - exact) / risingScale.step : 0;

/** In squares; where days were left out, the nearest names tell how much room one has. */
const quarterOfADay = ({ days, measured }: LineGraphParts): number => {
  if (!days) return 0;
  const places = [...days.named.map(({ place }) => place), ...measured.map(({ place }) => place)];
  const ats = [...new Set(places.map((place) => days.atOf(place)))]
    .filter((at) => at !== null)
    .sort((one, other) => one - other);
  const gaps = ats.slice(1).map((at, index) => at - (ats[index] ?? 0));
  const room = Math.min(...gaps.filter((gap) => gap > 1e-6), Math.max(days.space, 1));
  return room / 4 + 1e-6;
};

const hasRoom = ({ days, risingScale }: LineGraphParts, row: MeasuredRow): boolean => {
  const isOnSide = !risingScale || row.exact <= (risingScale.ticks.at(-1)?.value ?? 0);
  return isOnSide && (!days || days.atOf(row.place) !== null);
};
