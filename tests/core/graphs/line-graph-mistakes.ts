import type { Drawing, RightGraph, TimeTable } from '#core/graphs';
import { exactPerUnit } from '#core/measure';

export type LineRight = RightGraph & { readonly table: TimeTable };

export interface Planted {
  readonly drawing: Drawing;
  /** The graph of the table that was changed for it, where it was. */
  readonly right?: LineRight;
}

/** A drawing with one mistake of a kind in it, or null where this table cannot have it. */
export type PlantMistake = (right: LineRight, drawing: Drawing, pick: number) => Planted | null;

const pickOf = <Item>(items: readonly Item[], pick: number): Item | undefined =>
  items.length === 0 ? undefined : items[pick % items.length];

const numbersOf = ({ table }: LineRight, series: number) =>
  table.rows.filter((row) => row.series === series && row.exact !== null);

/** Places between the first and the last reading of the first series that have none. */
const emptyInside = (right: LineRight): readonly number[] => {
  const places = numbersOf(right, 0).map(({ place }) => place);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  return right.table.places.flatMap((_, place) =>
    place > first && place < last && !places.includes(place) ? [place] : [],
  );
};

const atOf = (drawing: Drawing, place: number): number => drawing.places[place]!.at;

const withSideTicks = (drawing: Drawing, ticks: Drawing['side']['ticks']): Drawing => ({
  ...drawing,
  side: { ...drawing.side, ticks },
});

/** A point put in among those of the first series, and solid joins to its neighbours. */
const withPointIn = (drawing: Drawing, x: number, y: number): Drawing => {
  const own = drawing.points.flatMap((point, index) =>
    point.series === 0 ? [{ ...point, index }] : [],
  );
  const before = own.filter((point) => point.x < x).at(-1);
  const after = own.find((point) => point.x > x);
  const here = drawing.points.length;
  return {
    ...drawing,
    points: [...drawing.points, { x, y, series: 0 }],
    joins: [
      ...drawing.joins.filter(({ from, to }) => from !== before?.index || to !== after?.index),
      ...(before ? [{ from: before.index, to: here, line: 'solid' as const }] : []),
      ...(after ? [{ from: here, to: after.index, line: 'solid' as const }] : []),
    ],
  };
};

const isSeveral = ({ table }: LineRight): boolean => table.seriesNames.length > 1;

export const lineMistakes: Readonly<Record<string, PlantMistake>> = {
  'T1: days without a reading left out': ({ table }, drawing) => {
    const measured = new Set(
      table.rows.filter((row) => row.exact !== null).map((row) => row.place),
    );
    const kept = table.places.flatMap((_, place) => (measured.has(place) ? [place] : []));
    if (kept.at(-1)! - kept[0]! + 1 === kept.length) return null;
    const places = kept.map((place, order) => ({ at: order + 1, text: table.places[place]! }));
    // Days that are all equally far apart, every other one say, are still spaced by the calendar.
    const gaps = kept.slice(1).map((place, order) => place - kept[order]!);
    if (new Set(gaps).size === 1) return null;
    const moved = (x: number) =>
      kept.findIndex((place) => Math.abs(atOf(drawing, place) - x) < 1e-9) + 1;
    const points = drawing.points.map((point) => ({ ...point, x: moved(point.x) }));
    return { drawing: { ...drawing, places, points } };
  },
  'T2: a day without a reading drawn at 0': (right, drawing, pick) => {
    const place = pickOf(emptyInside(right), pick);
    if (place === undefined) return null;
    return { drawing: withPointIn(drawing, atOf(drawing, place), 0) };
  },
  'T3: joined by height': ({ table }, drawing) => {
    const byHeight = table.seriesNames.flatMap((_, series) => {
      const own = drawing.points
        .map((point, index) => ({ ...point, index }))
        .filter((point) => point.series === series)
        .sort((one, other) => one.y - other.y);
      return own.slice(1).map((point, place) => ({ from: own[place]!.index, to: point.index }));
    });
    const isByDay = byHeight.every(({ from, to }) => Math.abs(from - to) === 1);
    if (isByDay) return null;
    const dashes = byHeight.map((join) => ({ ...join, line: 'dashed' as const }));
    return { drawing: { ...drawing, joins: dashes } };
  },
  'T3: a join that skips a day': (_, drawing, pick) => {
    const pairs = drawing.points.slice(2).map((_point, from) => ({ from, to: from + 2 }));
    const own = pairs.filter(
      ({ from, to }) => drawing.points[from]!.series === drawing.points[to]!.series,
    );
    const join = pickOf(own, pick);
    if (!join) return null;
    return { drawing: { ...drawing, joins: [...drawing.joins, { ...join, line: 'solid' }] } };
  },
  'T4: along to the value, up to the day': (_, drawing) => {
    const points = drawing.points.map(({ x, y, series }) => ({ x: y, y: x, series }));
    const lies = points.filter(({ x, y }) =>
      drawing.points.some((other) => Math.abs(other.x - x) < 0.3 && Math.abs(other.y - y) < 0.3),
    );
    // Points near the middle line are the same both ways.
    return lies.length * 2 > points.length || points.length < 2
      ? null
      : { drawing: { ...drawing, points } };
  },
  'T4: the days up the side': (_, drawing) => ({
    drawing: {
      ...drawing,
      side: { label: '', ticks: drawing.places },
      bottom: drawing.side,
      places: [],
      points: drawing.points.map(({ x, y, series }) => ({ x: y, y: x, series })),
    },
  }),
  'T5: the readings themselves up the side': (right, drawing) => {
    const rows = numbersOf(right, 0);
    if (isSeveral(right) || rows.length < 3) return null;
    // Readings that go up by one each time are a plain scale, that begins late if at all (T6).
    const isPlain = rows.every(
      ({ exact }, i) => i === 0 || exact! - rows[i - 1]!.exact! === right.scale.step,
    );
    const isFromZero = rows.every(({ exact }, i) => exact === (i + 1) * rows[0]!.exact!);
    if (isPlain || isFromZero) return null;
    const ticks = rows.map(({ text }, index) => ({ at: index + 1, text }));
    const points = drawing.points.map((point, index) => ({ ...point, y: index + 1 }));
    return { drawing: { ...withSideTicks(drawing, ticks), points } };
  },
  'T6: a step taller than the others': (_, drawing, pick) => {
    const { ticks } = drawing.side;
    const from = ticks[1 + (pick % (ticks.length - 1))]!;
    if (ticks.length < 3) return null;
    const lift = (y: number) =>
      y >= from.at ? y + 0.5 : y > from.at - 1 ? from.at - 1 + (y - from.at + 1) * 1.5 : y;
    const points = drawing.points.map((point) => ({ ...point, y: lift(point.y) }));
    const lifted = ticks.map((tick) => ({ ...tick, at: lift(tick.at) }));
    return { drawing: { ...withSideTicks(drawing, lifted), points } };
  },
  'T6: a side that does not begin at 0': (_, drawing, pick) => {
    const lowest = Math.min(...drawing.points.map(({ y }) => y));
    const cut = Math.min(Math.floor(lowest), 1 + (pick % 3));
    if (cut < 1 || drawing.side.ticks.length - cut < 3) return null;
    const ticks = drawing.side.ticks
      .filter(({ at }) => at >= cut)
      .map((tick) => ({ ...tick, at: tick.at - cut }));
    const points = drawing.points.map((point) => ({ ...point, y: point.y - cut }));
    return { drawing: { ...withSideTicks(drawing, ticks), points } };
  },
  'T7: a side that ends too soon': (_, drawing) => {
    // Also the step to spare goes, where there is one: the highest point stands above the end.
    const top = Math.max(...drawing.points.map(({ y }) => y));
    const ticks = drawing.side.ticks.filter(({ at }) => at < top);
    return ticks.length < 2 ? null : { drawing: withSideTicks(drawing, ticks) };
  },
  'T8: a point one number too high or low': (_, drawing, pick) => slid(drawing, pick, 0, 1),
  'T8: a point between two days': (_, drawing, pick) => slid(drawing, pick, 0.5, 0),
  'T9: the first day at 0, before anything was measured': (right, drawing) => {
    const [first] = numbersOf(right, 0);
    if (!first || first.place === 0) return null;
    return { drawing: withPointIn(drawing, atOf(drawing, 0), 0) };
  },
  'T10: a line carried on behind the last reading': (right, drawing) => {
    const last = numbersOf(right, 0).at(-1)!;
    const before = drawing.points.findIndex(
      (point) => point.series === 0 && point.x === atOf(drawing, last.place),
    );
    const end = drawing.points[before]!;
    const point = { x: end.x + 1, y: end.y + 1, series: 0 };
    const join = { from: before, to: drawing.points.length, line: 'solid' as const };
    return {
      drawing: {
        ...drawing,
        points: [...drawing.points, point],
        joins: [...drawing.joins, join],
      },
    };
  },
  'T10: a solid line straight across a missed day': (_, drawing) =>
    drawing.joins.every(({ line }) => line === 'solid')
      ? null
      : {
          drawing: { ...drawing, joins: drawing.joins.map((join) => ({ ...join, line: 'solid' })) },
        },
  'T11: a plant drawn': (_, drawing) => ({
    drawing: {
      ...{ ...drawing, points: [], joins: [] },
      strokes: [
        { path: Array.from({ length: 9 }, (_each, step) => [2 + (step % 2) * 0.1, step / 2]) },
        { path: Array.from({ length: 20 }, (_each, step) => leafAt(step / 3)) },
      ],
    },
  }),
  'T11: a plant beside the points': (_, drawing) => ({
    drawing: {
      ...drawing,
      strokes: [{ path: Array.from({ length: 20 }, (_each, step) => leafAt(step / 3)) }],
    },
  }),
  'T12: two lines and no key': (right, drawing) =>
    isSeveral(right) ? { drawing: { ...drawing, seriesKey: [] } } : null,
  'T12: two plants in one line style': (right, drawing) =>
    isSeveral(right)
      ? {
          drawing: {
            ...drawing,
            points: drawing.points.map((point) => ({ ...point, series: 0 })),
          },
        }
      : null,
  'T13: a smooth curve past the points': (right, drawing) => {
    const own = drawing.points.filter(({ series }) => series === 0);
    const [first, last] = [own[0]!, own.at(-1)!];
    const slope = (last.y - first.y) / (last.x - first.x);
    const bow = (x: number) => Math.sin(((x - first.x) / (last.x - first.x)) * Math.PI) * 0.6;
    const on = (x: number) => first.y + (x - first.x) * slope + bow(x);
    const near = (point: { readonly x: number; readonly y: number }) =>
      Math.abs(on(point.x) - point.y) / Math.hypot(1, Math.abs(slope) + 0.6) <= 0.3;
    if (isSeveral(right) || own.every(near)) return null;
    const path = Array.from({ length: 41 }, (_each, step) => {
      const x = first.x + ((last.x - first.x) * step) / 40;
      return [x, on(x)] as const;
    });
    return { drawing: { ...drawing, joins: [], strokes: [{ path }] } };
  },
  'T14: numbers of another unit up the side': ({ table }, drawing) => {
    if (drawing.side.ticks.length < 3) return null;
    const other = table.unit === 'cm' ? 'in' : 'cm';
    const ticks = drawing.side.ticks.map((tick, index, all) =>
      index === all.length - 1 ? { ...tick, text: `${index} ${other}` } : tick,
    );
    return { drawing: withSideTicks(drawing, ticks) };
  },
  'T14: a reading in another unit drawn as it is': (right, drawing, pick) => {
    const row = pickOf(numbersOf(right, 0), pick)!;
    const unit = row.unit === 'cm' ? 'in' : 'cm';
    // The number stays on the paper; what was read is another length.
    const exact = Math.round((row.exact! / exactPerUnit(row.unit)) * exactPerUnit(unit));
    const isNear = Math.abs(exact - row.exact!) <= right.scale.step / 4;
    if (isNear || exact > right.scale.to) return null;
    const table: TimeTable = {
      ...right.table,
      rows: right.table.rows.map((each) => (each === row ? { ...each, unit, exact } : each)),
    };
    return { drawing, right: { ...right, table } };
  },
  'T14: inches drawn on from the middle, on a side in centimetres': (right, drawing, pick) => {
    const { table, scale } = right;
    if (table.unit !== 'cm' || isSeveral(right)) return null;
    const from = Math.max(1, pick % drawing.points.length);
    const points = drawing.points.map((point, index) =>
      index < from ? point : { ...point, y: point.y / 2.54 },
    );
    const changed = drawing.points.filter(
      ({ y }, index) => Math.abs(y - points[index]!.y) > 0.25 + 1e-6,
    );
    // One point alone, and heights that are nearly the same in both, are points beside their place.
    const all = drawing.points.slice(from).every(({ y }) => Math.abs(y - y / 2.54) > 0.3);
    return changed.length < 2 || !all || scale.from !== 0
      ? null
      : { drawing: { ...drawing, points } };
  },
};

const slid = (drawing: Drawing, pick: number, along: number, up: number): Planted | null => {
  const chosen = pick % drawing.points.length;
  const point = drawing.points[chosen]!;
  const top = drawing.side.ticks.at(-1)!.at;
  const y = point.y + up > top ? point.y - up : point.y + up;
  // With the same place and height in the other line, nobody can say which of the two slid.
  const isOther = drawing.points.some(
    (other, index) => index !== chosen && Math.abs(other.x - point.x) < 0.1 && other.y === y,
  );
  if (isOther) return null;
  const points = drawing.points.with(chosen, { ...point, x: point.x + along, y });
  return { drawing: { ...drawing, points } };
};

const leafAt = (turn: number): readonly [number, number] => [
  3 + Math.cos(turn),
  2 + Math.sin(turn) / 2,
];
