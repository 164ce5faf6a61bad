import { remarkOn, type DrawnRemark } from './drawn-remark';
import type { LineGraphParts } from './line-graph-parts';

type Path = LineGraphParts['drawing']['strokes'][number]['path'];

/** What lines drawn by hand do on a graph. */
export interface StrokesOnGraph {
  /** Pairs of points that a stroke joins, one after the other. */
  readonly joined: readonly (readonly [from: number, to: number])[];
  readonly remarks: readonly DrawnRemark[];
}

/**
 * A stroke that walks from left to right is a line: it joins the points it visits, T13 where it
 * passes one by, T10 where it goes on for half a day or more behind the last point. Any other shape
 * is a picture (T11). A line that wobbles is no mistake. Not part of the public door.
 */
export const readStrokes = ({ drawing, days, scale }: LineGraphParts): StrokesOnGraph => {
  const { strokes, points } = drawing;
  const room = { day: days?.space ?? 1, step: scale?.space ?? 1 };
  const near = Math.max(0.25, Math.min(room.day, room.step) / 4) + 1e-6;
  const pictures: number[] = [];
  const passing: number[] = [];
  const beyond: number[] = [];
  const joined: (readonly [number, number])[] = [];
  strokes.forEach(({ path }, index) => {
    if (path.length === 0 || isSlip(path)) return;
    if (!isWalk(path, room.day)) {
      pictures.push(index);
      return;
    }
    const visited = points.flatMap((point, place) =>
      distanceTo(path, point.x, point.y) <= near ? [{ ...point, place }] : [],
    );
    const series = mostCommon(visited.map((point) => point.series));
    const [left, right] = endsOf(path);
    const own = points.filter((point) => series === null || point.series === series);
    const under = own.filter(({ x }) => x >= left - near && x <= right + near);
    const met = visited.filter((point) => point.series === series);
    if (met.length < under.length || points.length === 0) passing.push(index);
    if (own.length > 0 && right > Math.max(...own.map(({ x }) => x)) + room.day / 2) {
      beyond.push(index);
    }
    const inOrder = met.sort((one, other) => one.x - other.x);
    inOrder.slice(1).forEach(({ place }, before) => {
      joined.push([inOrder[before]?.place ?? place, place]);
    });
  });
  const found = [
    ['T11', pictures],
    ['T13', passing],
    ['T10', beyond],
  ] as const;
  return {
    joined,
    remarks: found.flatMap(([id, indexes]) =>
      indexes.length > 0 ? [remarkOn(id, 'strokes', indexes)] : [],
    ),
  };
};

/** From left to right (or back) without turning round, for a day or more. */
const isWalk = (path: Path, day: number): boolean => {
  const steps = path.slice(1).map(([x], index) => x - (path[index]?.[0] ?? 0));
  const ahead = steps.filter((step) => step > 0).reduce((sum, step) => sum + step, 0);
  const back = -steps.filter((step) => step < 0).reduce((sum, step) => sum + step, 0);
  return Math.max(ahead, back) >= day * 0.75 && Math.min(ahead, back) <= (ahead + back) / 5;
};

/** A touch that drew next to nothing. */
const isSlip = (path: Path): boolean => {
  const [left, right] = endsOf(path);
  const up = path.map(([, y]) => y);
  return Math.max(right - left, Math.max(...up) - Math.min(...up)) < 0.25;
};

const endsOf = (path: Path): readonly [number, number] => {
  const along = path.map(([x]) => x);
  return [Math.min(...along), Math.max(...along)];
};

const distanceTo = (path: Path, x: number, y: number): number =>
  Math.min(
    ...path.map(([toX, toY], index) => {
      const [fromX, fromY] = path[Math.max(0, index - 1)] ?? [toX, toY];
      const [acrossX, acrossY] = [toX - fromX, toY - fromY];
      const length = acrossX ** 2 + acrossY ** 2;
      const part = length === 0 ? 0 : ((x - fromX) * acrossX + (y - fromY) * acrossY) / length;
      const along = Math.min(1, Math.max(0, part));
      return Math.hypot(x - fromX - along * acrossX, y - fromY - along * acrossY);
    }),
  );

const mostCommon = (list: readonly number[]): number | null =>
  list.reduce<number | null>((best, each) => {
    const times = (one: number): number => list.filter((other) => other === one).length;
    return best === null || times(each) > times(best) ? each : best;
  }, null);
