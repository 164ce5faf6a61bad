import { describe, expect, it } from 'vitest';
import { drawRight, emptyDrawing, lookAtLineGraph, type Drawing } from '#core/graphs';
import { goldenRight } from './golden-logs';

const bean = goldenRight('a bean over nine days with a missed one');
const beans = goldenRight('two beans in whole inches');

const idsOf = (drawing: Drawing, right = bean) =>
  lookAtLineGraph(right, drawing).mistakes.map(({ id }) => id);

const withPoint = (drawing: Drawing, index: number, x: number, y: number): Drawing => {
  const point = drawing.points[index]!;
  return {
    ...drawing,
    points: drawing.points.with(index, { ...point, x: point.x + x, y: point.y + y }),
  };
};

describe('a look at a line graph', () => {
  // Common practice in marking: a mark within a quarter of one interval is right.
  it.each([
    [0, 0.25, []],
    [0, -0.25, []],
    [0.25, 0, []],
    [0, 0.26, ['T8']],
    [0, -0.26, ['T8']],
    [0.26, 0, ['T8']],
  ])('T8: takes a point %d of a day and %d of an interval off as %j', (x, y, ids) => {
    expect(idsOf(withPoint(drawRight(bean), 2, x, y))).toEqual(ids);
  });

  it('T8: points at the point, and not at where it should be', () => {
    const { mistakes } = lookAtLineGraph(bean, withPoint(drawRight(bean), 2, 0, 1));
    expect(mistakes).toEqual([
      { id: 'T8', lookAt: { part: 'points', indexes: [2] }, isSoft: false },
    ]);
  });

  it('T8: reads the height on the side the child wrote, by twos', () => {
    const drawing = drawRight(bean, { step: 20_000_000 });
    expect(idsOf(drawing)).toEqual([]);
    expect(idsOf(withPoint(drawing, 2, 0, 0.5))).toEqual(['T8']);
  });

  it('T8: reads a day by the names beside it, with some left out', () => {
    const drawing = drawRight(bean);
    const places = drawing.places.filter((_, place) => place % 3 === 0);
    expect(idsOf({ ...drawing, places })).toEqual([]);
    expect(idsOf(withPoint({ ...drawing, places }, 1, 0.5, 0))).toEqual(['T8']);
  });

  it('T1: takes short names of days, and numbers of days, in order', () => {
    const drawing = drawRight(bean);
    const short = drawing.places.map(({ at, text }) => ({ at, text: text.slice(0, 3) }));
    const numbered = drawing.places.map(({ at }, place) => ({ at, text: `Day ${place + 1}` }));
    expect(idsOf({ ...drawing, places: short })).toEqual([]);
    expect(idsOf({ ...drawing, places: numbered })).toEqual([]);
  });

  it('T1: takes names that stand a little aside', () => {
    const drawing = drawRight(bean);
    const places = drawing.places.map(({ at, text }, place) => ({
      ...{ text, at: at + (place % 2) * 0.09 },
    }));
    expect(idsOf({ ...drawing, places })).toEqual([]);
  });

  it('T10: takes dashes, and a break, over a missed day as right', () => {
    const drawing = drawRight(bean);
    const { right, mistakes } = lookAtLineGraph(bean, drawing);
    expect(drawing.joins.filter(({ line }) => line === 'dashed')).toHaveLength(1);
    expect(mistakes).toEqual([]);
    expect(right).toContain('gaps-shown');
    const broken = { ...drawing, joins: drawing.joins.filter(({ line }) => line === 'solid') };
    expect(idsOf(broken)).toEqual([]);
  });

  it('T10: points at the solid join over a missed day', () => {
    const drawing = drawRight(bean);
    const dashed = drawing.joins.findIndex(({ line }) => line === 'dashed');
    const joins = drawing.joins.with(dashed, { ...drawing.joins[dashed]!, line: 'solid' });
    expect(lookAtLineGraph(bean, { ...drawing, joins }).mistakes).toEqual([
      { id: 'T10', lookAt: { part: 'joins', indexes: [dashed] }, isSoft: false },
    ]);
  });

  it('T10: takes a guess behind the last reading, alone or with dashes, as right', () => {
    const drawing = drawRight(bean);
    const last = drawing.points.length - 1;
    const guess = { ...drawing.points[last]!, x: drawing.points[last]!.x + 1 };
    const guessed: Drawing = { ...drawing, points: [...drawing.points, guess] };
    const to = drawing.points.length;
    const withJoin = (line: 'solid' | 'dashed'): Drawing => ({
      ...guessed,
      joins: [...drawing.joins, { from: last, to, line }],
    });
    expect(idsOf(guessed)).toEqual([]);
    expect(idsOf(withJoin('dashed'))).toEqual([]);
    expect(idsOf(withJoin('solid'))).toEqual(['T10']);
  });

  it('T13: takes a wobbling line by hand through every point as joins', () => {
    const drawing = drawRight(bean);
    const before = drawing.joins.findIndex(({ line }) => line === 'dashed');
    const wobble = (from: number, to: number) =>
      drawing.points
        .slice(from, to)
        .flatMap(({ x, y }, index) => [
          [x, y + (index % 2) * 0.1] as const,
          ...(from + index + 1 < to
            ? [
                [
                  (x + drawing.points[from + index + 1]!.x) / 2,
                  (y + drawing.points[from + index + 1]!.y) / 2 + 0.2,
                ] as const,
              ]
            : []),
        ]);
    const stroke = (from: number, to: number) => ({ path: wobble(from, to) });
    const drawn = (...strokes: Drawing['strokes'][number][]) => ({
      ...drawing,
      joins: [],
      strokes,
    });
    expect(idsOf(drawn(stroke(0, before + 1)))).toEqual([]);
    expect(idsOf(drawn(stroke(0, before)))).toEqual(['T13']);
  });

  it('T2: asks about a number that nobody read, whatever it is', () => {
    const drawing = drawRight(bean);
    const missed = drawing.places[7]!.at;
    const points = [...drawing.points, { x: missed, y: 10.5, series: 0 }];
    expect(idsOf({ ...drawing, points })).toEqual(['T2']);
  });

  it('T12: lets the child choose which line is whose', () => {
    const drawing = drawRight(beans);
    const other: Drawing = {
      ...drawing,
      seriesKey: [
        { series: 0, text: 'shelf bean' },
        { series: 1, text: 'window bean' },
      ],
      points: drawing.points.map((point) => ({ ...point, series: 1 - point.series })),
    };
    expect(idsOf(other, beans)).toEqual([]);
    const swapped = { ...other, seriesKey: drawing.seriesKey };
    expect(idsOf(swapped, beans)).toEqual(['T12']);
  });

  it('B10: asks what the side counts, softly where only the unit is missing', () => {
    const drawing = drawRight(bean);
    const side = (label: string): Drawing => ({ ...drawing, side: { ...drawing.side, label } });
    const said = (label: string) => lookAtLineGraph(bean, side(label)).mistakes;
    expect(said('').map(({ id, isSoft }) => [id, isSoft])).toEqual([['B10', false]]);
    expect(said('height').map(({ id, isSoft }) => [id, isSoft])).toEqual([['B10', true]]);
    expect(said('cm')).toEqual([]);
    expect(said('height in inches').map(({ id }) => id)).toEqual(['T14']);
  });

  it('says what is not drawn yet last, and names no part as right before it is', () => {
    const empty = emptyDrawing('line-graph', { columns: 12, rows: 14 });
    const look = lookAtLineGraph(bean, empty);
    expect(look.right).toEqual([]);
    expect(look.mistakes.map(({ id }) => id)).toEqual(['T1', 'T6', 'T8', 'B10', 'P1']);
  });

  it('says a point out of place before those, and joins, still to come', () => {
    const drawing = drawRight(bean);
    const begun = { ...drawing, points: drawing.points.slice(0, 3), joins: [] };
    expect(idsOf(begun)).toEqual(['T8', 'T13']);
    const { mistakes } = lookAtLineGraph(bean, withPoint(begun, 1, 0, 1));
    expect(mistakes[0]).toEqual({
      ...{ id: 'T8', isSoft: false },
      lookAt: { part: 'points', indexes: [1] },
    });
  });

  it('says nothing of the second line while only the first is drawn, but that it is to come', () => {
    const drawing = drawRight(beans);
    const first = drawing.points.filter(({ series }) => series === 0).length;
    const joins = drawing.joins.filter(({ from, to }) => from < first && to < first);
    const begun = { ...drawing, points: drawing.points.slice(0, first), joins };
    expect(idsOf(begun, beans)).toEqual(['T8']);
  });

  it('never calls a graph right whose points do not show the table', () => {
    const drawing = drawRight(bean);
    const flat = drawing.points.map((point) => ({ ...point, y: 5 }));
    const look = lookAtLineGraph(bean, { ...drawing, points: flat });
    expect(look.mistakes.map(({ id }) => id)).toEqual(['T8']);
    expect(look.right).not.toContain('every-value');
  });
});
