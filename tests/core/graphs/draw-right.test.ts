import { describe, expect, it } from 'vitest';
import {
  drawRight,
  labelsOf,
  mostSquaresUp,
  rightGraphOf,
  stepsOf,
  turned,
  type GraphScale,
  type GraphTable,
} from '#core/graphs';
import { goldenLog, goldenLogs, goldenRight, measuresTable, valuesTable } from './golden-logs';
import { sampleLogs } from './sample-logs';

/** One step above a side that the largest number would fill, where the paper has room for it. */
const stepsToSpare = (table: GraphTable, { from, to, step }: GraphScale): number => {
  if (table.form === 'measures') return 0;
  const numbers =
    table.form === 'counts'
      ? table.rows.map(({ count }) => count)
      : table.rows.map(({ exact }) => exact ?? 0);
  return Math.max(...numbers) === to && (to - from) / step < mostSquaresUp ? 1 : 0;
};

describe('a right drawing', () => {
  it.each(goldenLogs)('of $name stays on its paper', ({ name }) => {
    const right = goldenRight(name);
    for (const upright of [true, false]) {
      const drawing = drawRight(right, { upright });
      const { columns, rows } = drawing.paper;
      const [across, up] = drawing.upright ? [columns, rows] : [rows, columns];
      for (const bar of drawing.bars) {
        expect(bar.at - bar.width / 2).toBeGreaterThanOrEqual(0);
        expect(bar.at + bar.width / 2).toBeLessThanOrEqual(across);
        expect(bar.to).toBeLessThanOrEqual(up);
      }
      for (const symbol of drawing.symbols) expect(symbol.at + 0.5).toBeLessThanOrEqual(up);
      for (const cross of drawing.crosses) {
        expect(cross.at).toBeLessThanOrEqual(across);
        expect(cross.height + cross.size / 2).toBeLessThanOrEqual(up);
      }
      for (const point of drawing.points) {
        expect(point.x).toBeLessThanOrEqual(across);
        expect(point.y).toBeLessThanOrEqual(up);
      }
      expect(columns).toBe(Math.round(columns));
      expect(rows).toBe(Math.round(rows));
    }
  });

  it('writes the labels of the scale beside its ticks', () => {
    const right = goldenRight('two pots in half inches');
    expect(drawRight(right).bottom.ticks.map(({ text }) => text)).toEqual(
      labelsOf(right.scale, right.table),
    );
  });

  it('of bars stands each on the base line, as high as its number', () => {
    const drawing = drawRight(goldenRight('four kinds of weather'));
    expect(drawing.bars.map(({ from, to }) => [from, to])).toEqual([
      ...[[0, 7] as const, [0, 4] as const, [0, 6] as const, [0, 1] as const],
    ]);
    expect(drawing.places.map(({ at }) => at)).toEqual(drawing.bars.map(({ at }) => at));
  });

  it('of bars by twos ends halfway between lines for an odd number', () => {
    const drawing = drawRight(goldenRight('a month of weather by twos'));
    // 4, 18, 0, 2 and 7 days: no bar for none, and a place for it.
    expect(drawing.bars.map(({ to }) => to)).toEqual([2, 9, 1, 3.5]);
    expect(drawing.places).toHaveLength(5);
  });

  it('of rain has a flat bar for 0 and none for a trace', () => {
    const { bars, places } = drawRight(goldenRight('rain of ten days with noughts and a trace'));
    expect(bars.map(({ to }) => to)).toEqual([0, 0, 3, 0, 0, 12, 5, 0, 0]);
    expect(places).toHaveLength(10);
    expect(bars.some(({ at }) => at === places[3]?.at)).toBe(false);
  });

  it('of pictures begins every row at the line, with halves at its end', () => {
    const { symbols, places, key } = drawRight(
      goldenRight('a month of weather, two days a picture'),
    );
    expect(key).toMatchObject({ value: 2, text: '2 days' });
    const rows = places.map(({ at }) => symbols.filter(({ row }) => row === at));
    // 16, 12, 3, 0 and 0 days: 8, 6, 1 1/2, 0 and 0 pictures (tests/reference/graphs.json).
    expect(rows.map((row) => row.length)).toEqual([8, 6, 2, 0, 0]);
    for (const row of rows) {
      expect(row.map(({ at }) => at)).toEqual(row.map((_, index) => index + 0.5));
    }
    expect(rows[2]?.map(({ part }) => part)).toEqual(['whole', 'half']);
  });

  it('of a line plot has every tick, also where nothing lies, and a mark for each measure', () => {
    const { bottom, crosses } = drawRight(goldenRight('ten seedlings in whole inches'));
    expect(bottom.ticks.map(({ text }) => text)).toEqual(['3', '4', '5', '6', '7', '8']);
    const piles = bottom.ticks.map((tick) => crosses.filter(({ at }) => at === tick.at));
    expect(piles.map((pile) => pile.length)).toEqual([2, 2, 4, 1, 0, 1]);
    expect(piles[2]?.map(({ height }) => height)).toEqual([0.5, 1.5, 2.5, 3.5]);
  });

  it('of a line plot draws a pile that would not fit half as large', () => {
    const texts = [...Array.from({ length: 17 }, () => '4'), '5'];
    const table = measuresTable('rain', ['mm', '1 mm'], texts);
    const right = rightGraphOf('line-plot', table, 'grade-2');
    if (!right.ok) throw new Error(right.error.kind);
    const { crosses, paper } = drawRight(right.value);
    expect(crosses.map(({ size }) => size)).toEqual(texts.map(() => 0.4));
    expect(paper.rows).toBe(10);
  });

  it('of a line graph joins in order, dashed over a missed day and not over a free one', () => {
    const name = 'a bean over nine days with a missed one';
    const { points, joins, places } = drawRight(goldenRight(name));
    expect(points.map(({ x, y }) => [x, y])).toEqual([
      ...[[1, 1] as const, [2, 2] as const, [3, 3] as const, [4, 4] as const],
      ...[[6, 7] as const, [7, 9] as const, [9, 12] as const],
    ]);
    expect(joins.map(({ from, to }) => [from, to])).toEqual(
      Array.from({ length: 6 }, (_, index) => [index, index + 1]),
    );
    expect(joins.map(({ line }) => line)).toEqual([
      ...['solid', 'solid', 'solid', 'solid', 'solid', 'dashed'],
    ]);
    expect(places).toHaveLength(9);
  });

  it('tells two plants apart, and never joins the one to the other', () => {
    const { seriesKey, points, joins } = drawRight(goldenRight('two beans in whole inches'));
    expect(seriesKey.map(({ text }) => text)).toEqual(['Window bean', 'Shelf bean']);
    for (const { from, to } of joins) expect(points[from]?.series).toBe(points[to]?.series);
  });

  it('lies down as it stands, its first row at the top, as the table is read', () => {
    const right = goldenRight('four kinds of weather');
    const standing = drawRight(right, { upright: true });
    const lying = drawRight(right, { upright: false });
    const { columns, rows } = standing.paper;
    expect(lying.paper).toEqual({ columns: rows, rows: columns });
    const fromTop = lying.places.toSorted((one, other) => other.at - one.at);
    expect(fromTop.map(({ text }) => text)).toEqual(standing.places.map(({ text }) => text));
    expect(lying.bars.map(({ at }) => columns - at)).toEqual(standing.bars.map(({ at }) => at));
    expect(turned(standing)).toEqual(lying);
    expect(turned(lying)).toEqual(standing);
  });

  it('goes by another step or key where that is asked for', () => {
    const bars = drawRight(goldenRight('a month of weather by twos'), { step: 5 });
    expect(bars.side.ticks.map(({ text }) => text)).toEqual(['0', '5', '10', '15', '20']);
    const seeds = drawRight(goldenRight('seeds by the fives'), { keyValue: 10 });
    // 25, 40 and 15 by tens: 2 1/2, 4 and 1 1/2 pictures (tests/reference/graphs.json).
    expect(seeds.symbols.filter(({ part }) => part === 'half')).toHaveLength(2);
    expect(seeds.symbols).toHaveLength(3 + 4 + 2);
  });

  it('throws for a step that is none, and for a key that would cut a picture in fifths', () => {
    const right = goldenRight('a month of weather by twos');
    for (const step of [0, -1, 1.5, Number.NaN]) {
      expect(() => drawRight(right, { step })).toThrow(RangeError);
    }
    const pictures = goldenRight('a month of weather, two days a picture');
    expect(() => drawRight(pictures, { keyValue: 5 })).toThrow(RangeError);
  });

  it.each([...goldenLogs, ...sampleLogs])('of $name has a tick for each step', (log) => {
    const right = rightGraphOf(log.graph, log.table, log.stage);
    if (!right.ok) throw new Error(right.error.kind);
    const { side, bottom } = drawRight(right.value);
    const { scale } = right.value;
    if (log.graph === 'picture-graph') {
      expect(side.ticks).toEqual([]);
      return;
    }
    const ticks = log.graph === 'line-plot' ? bottom.ticks : side.ticks;
    const texts = ticks.map(({ text }) => text);
    expect(texts.slice(0, scale.labels.length)).toEqual(scale.labels);
    expect(ticks.length - stepsOf(scale).length).toBe(stepsToSpare(log.table, scale));
    ticks.forEach(({ at }, index) => expect(at - (ticks[0]?.at ?? 0)).toBe(index));
  });

  // Common practice, no source: nothing is drawn to the very end of a side, and a side that is
  // given must not tell which number is the largest.
  it.each([
    ['ends a step above the largest of them', ['3', '12', '7'], '13'],
    ['ends where the paper ends', ['3', '16', '7'], '16'],
  ] as const)('of bars from 0 %s: %j', (_, texts, last) => {
    const table = valuesTable('height', ['cm', '1 cm'], '2026-03-02', texts);
    const right = rightGraphOf('bar-graph', table, 'grade-2');
    if (!right.ok) throw new Error(right.error.kind);
    for (const upright of [true, false]) {
      const { side, bars, paper } = drawRight(right.value, { upright });
      expect(side.ticks.at(-1)?.text).toBe(last);
      const up = upright ? paper.rows : paper.columns;
      expect(up).toBeGreaterThanOrEqual(Math.max(...bars.map(({ to }) => to)) + 1);
    }
  });

  it('keeps the end of a scale that is above the largest by itself', () => {
    const table = valuesTable('height', ['cm', '1 cm'], '2026-03-02', ['3', '23']);
    const right = rightGraphOf('bar-graph', table, 'grade-3');
    if (!right.ok) throw new Error(right.error.kind);
    expect(drawRight(right.value).side.ticks.at(-1)?.text).toBe('24');
  });

  it('is made from a table that it does not change', () => {
    const before = JSON.stringify(goldenLog('two pots in half inches').table);
    drawRight(goldenRight('two pots in half inches'));
    expect(JSON.stringify(goldenLog('two pots in half inches').table)).toBe(before);
  });
});
