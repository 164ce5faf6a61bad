import { remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import type { LineGraphParts } from './line-graph-parts';
import { matchPoints, type MatchedPoints } from './match-points';
import { everyOrder, isKeyWhole, seriesByMark } from './whose-marks';

export interface SortedPoints {
  readonly matched: MatchedPoints;
  readonly seriesOfMark: readonly number[] | null;
  /** T12, where nobody can say which line is whose. */
  readonly remark: DrawnRemark | null;
}

/**
 * The points beside the readings, each with those of its own series where there are several. Where
 * lines are not told apart, the readings are still looked at as if they were. Not part of the
 * public door.
 */
export const sortPoints = (graph: LineGraphParts): SortedPoints => {
  const { drawing, measured, table } = graph;
  const present = new Set(measured.map(({ series }) => series));
  const all = { matched: matchPoints(graph, null), seriesOfMark: null, remark: null };
  const marks = new Set(drawing.points.map(({ series }) => series));
  if (present.size < 2 || marks.size === 0) return all;
  const key = remarkOnWhole('T12', 'key');
  const said = seriesByMark(drawing, table.seriesNames);
  const apart = { matched: matchPoints(graph, said), seriesOfMark: said, remark: null };
  const hasKey = isKeyWhole(drawing, table.seriesNames);
  if (marks.size === 1) {
    const isOneSoFar = countOf(apart.matched) - apart.matched.missing.length === 0;
    if (!isOneSoFar) return { ...all, remark: key };
    return { ...apart, remark: hasKey ? null : yetToDraw(key) };
  }
  if (hasKey) {
    const isExchanged = countOf(all.matched) === 0 && countOf(apart.matched) > 0;
    return isExchanged ? { ...all, remark: key } : apart;
  }
  const orders = everyOrder(table.seriesNames.length);
  const sorted = orders.map((order) => ({
    matched: matchPoints(graph, order),
    seriesOfMark: order,
  }));
  const best = sorted.reduce((one, other) =>
    countOf(other.matched) < countOf(one.matched) ? other : one,
  );
  return { ...best, remark: key };
};

const countOf = ({ strays, missing }: MatchedPoints): number => strays.length + missing.length;
