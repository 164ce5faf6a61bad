import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  begunDrawing,
  boardSlots,
  decodeDrawing,
  drawnRows,
  emptyDrawing,
  graphKinds,
  snapToPaper,
  withBar,
  withCross,
  withJoin,
  withLastHalved,
  withNextJoin,
  withNextSymbol,
  withoutBar,
  withoutCross,
  withoutLastSymbol,
  withoutPoint,
  withPlace,
  withPoint,
  withSymbol,
  withTick,
  withTitle,
  type Drawing,
} from '#core/graphs';

/** An edit that wrote into the drawing it was given would throw here: undo keeps old drawings. */
const frozen = <Value>(value: Value): Value => {
  if (typeof value === 'object' && value !== null) Object.values(value).forEach(frozen);
  return Object.freeze(value);
};
const sheet = (kind: Drawing['kind']): Drawing =>
  frozen(emptyDrawing(kind, { columns: 8, rows: 6 }));

describe('bars', () => {
  test('there is one bar at a place, however often it is raised', () => {
    const drawn = frozen(withBar(withBar(sheet('bar-graph'), 3, 2, 1), 1, 4, 1));
    expect(withBar(drawn, 3, 2.5, 1).bars).toEqual([
      { at: 1, width: 1, from: 0, to: 4 },
      { at: 3, width: 1, from: 0, to: 2.5 },
    ]);
    expect(withoutBar(drawn, 1).bars.map(({ at }) => at)).toEqual([3]);
  });

  test('a touch that changes nothing gives the same drawing, so nothing is to be undone', () => {
    const drawn = withBar(sheet('bar-graph'), 3, 2, 1);
    expect(withBar(drawn, 3, 2, 1)).toBe(drawn);
  });

  test('a touch goes to the nearest line or half line of the paper, whatever is right', () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 40, noNaN: true }), (at) => {
        const snapped = snapToPaper(at, 12);
        expect(Number.isInteger(snapped * 2)).toBe(true);
        expect(Math.abs(snapped - Math.min(12, Math.max(0, at)))).toBeLessThanOrEqual(0.25);
      }),
    );
  });
});

describe('crosses', () => {
  test('each one stands on the one below', () => {
    const two = withCross(withCross(sheet('line-plot'), 2, 'cross'), 2, 'ring');
    expect(two.crosses.map(({ height }) => height)).toEqual([0.5, 1.5]);
    expect(withoutCross(two, 2).crosses.map(({ look }) => look)).toEqual(['cross']);
  });

  test('they stop at the edge of the paper', () => {
    let drawing = sheet('line-plot');
    for (let times = 0; times < 9; times += 1) drawing = withCross(drawing, 2, 'cross');
    expect(drawing.crosses).toHaveLength(6);
  });

  test('taking one from an empty place changes nothing', () => {
    expect(withoutCross(sheet('line-plot'), 2).crosses).toEqual([]);
  });
});

describe('pictures', () => {
  test('two touches of one square put one picture there', () => {
    const once = withSymbol(sheet('picture-graph'), { row: 1, at: 2.5, symbol: 'sun' });
    expect(withSymbol(once, { row: 1, at: 2.5, symbol: 'sun' })).toBe(once);
  });

  test('the next one follows the last, also behind a gap, and its half is the last one', () => {
    const begun = withSymbol(sheet('picture-graph'), { row: 1, at: 2.5, symbol: 'sun' });
    const two = withNextSymbol(begun, { row: 1, symbol: 'sun' });
    expect(two.symbols.map(({ at }) => at)).toEqual([2.5, 3.5]);
    expect(withLastHalved(two, 1).symbols.map(({ part }) => part)).toEqual(['whole', 'half']);
    expect(withoutLastSymbol(two, 1).symbols).toEqual(begun.symbols);
  });

  test('a full row takes no more', () => {
    let drawing: Drawing = { ...sheet('picture-graph'), upright: false };
    for (let times = 0; times < 20; times += 1) {
      drawing = withNextSymbol(drawing, { row: 1, symbol: 'sun' });
    }
    expect(drawing.symbols).toHaveLength(8);
  });
});

describe('points and joins', () => {
  const three = frozen(
    [5, 1, 3].reduce(
      (drawing, x) => withPoint(drawing, { x, y: x, series: 0 }),
      sheet('line-graph'),
    ),
  );

  test('joining goes from left to right, whatever the order the points were put in', () => {
    const joined = withNextJoin(withNextJoin(three, 0, 'solid'), 0, 'dashed');
    expect(joined.joins).toEqual([
      { from: 1, to: 2, line: 'solid' },
      { from: 2, to: 0, line: 'dashed' },
    ]);
    expect(withNextJoin(joined, 0, 'solid')).toBe(joined);
  });

  test('a point that goes takes its joins along, and the others keep their points', () => {
    const joined = withJoin(withJoin(three, 0, 2, 'solid'), 2, 1, 'solid');
    const left = withoutPoint(joined, 5, 0);
    expect(left.points.map(({ x }) => x)).toEqual([1, 3]);
    expect(left.joins).toEqual([{ from: 1, to: 0, line: 'solid' }]);
    expect(decodeDrawing(left).ok).toBe(true);
  });

  test('a line from a point to itself is no line, and one line joins two points', () => {
    expect(withJoin(three, 1, 1, 'solid')).toBe(three);
    expect(withJoin(withJoin(three, 1, 2, 'solid'), 2, 1, 'dashed').joins).toHaveLength(1);
  });
});

describe('the sheet a child begins with', () => {
  const right = frozen(
    withTick(
      withPlace(withBar(withTitle(sheet('bar-graph'), 'Days of sun'), 1, 4, 1), 1, 'sun'),
      'side',
      4,
      '4',
    ),
  );

  test('holds no mark and no title, whatever is given', () => {
    for (const level of ['frame-given', 'scale-given', 'empty-paper'] as const) {
      const begun = begunDrawing({ ...right, key: { value: 2, symbol: 'sun', text: '' } }, level);
      expect(begun).toMatchObject({ title: '', key: null, bars: [] });
    }
  });

  test('has names and numbers, numbers, or neither', () => {
    const given = (level: Drawing['level']) => {
      const { places, side } = begunDrawing(right, level);
      return [places.length, side.ticks.length];
    };
    expect(given('frame-given')).toEqual([1, 1]);
    expect(given('scale-given')).toEqual([0, 1]);
    expect(given('empty-paper')).toEqual([0, 0]);
  });

  test('without names, more places than names are offered', () => {
    const two = withPlace(right, 3, 'rain');
    const places = (level: Drawing['level']) =>
      boardSlots(begunDrawing(two, level), two).map(({ at }) => at);
    expect(places('frame-given')).toEqual([1, 3]);
    expect(places('empty-paper')).toEqual([1, 3, 5, 7]);
  });
});

test('the table of a drawing tells what was drawn, with the number written beside it', () => {
  const drawn = withTick(withBar(withPlace(sheet('bar-graph'), 1, 'sun'), 1, 4, 1), 'side', 4, '8');
  const slots = [
    { at: 1, width: 2, name: 'sun' },
    { at: 3, width: 2, name: '' },
  ];
  expect(drawnRows(drawn, slots).map(({ squares, beside }) => [squares, beside])).toEqual([
    [4, '8'],
    [null, ''],
  ]);
});

describe('a drawing read back', () => {
  test('is the drawing that was kept, for every kind', () => {
    for (const kind of graphKinds) {
      const drawing = withPlace(withTitle(sheet(kind), 'A title'), 1, 'sun');
      const kept: unknown = JSON.parse(JSON.stringify(drawing));
      expect(decodeDrawing(kept)).toEqual({ ok: true, value: drawing });
    }
  });

  test.each<[what: string, change: Record<string, unknown>, part: string]>([
    ['a kind from later', { kind: 'pie-chart' }, 'kind'],
    ['a level from later', { level: 'in-ink' }, 'level'],
    ['no paper', { paper: undefined }, 'paper'],
    ['a sheet as wide as a field', { paper: { columns: 1e9, rows: 6 } }, 'paper.columns'],
    ['half a column', { paper: { columns: 2.5, rows: 6 } }, 'paper.columns'],
    ['a place that is no number', { bars: [{ at: NaN, width: 1, from: 0, to: 1 }] }, 'bars.0.at'],
    ['a bar to the moon', { bars: [{ at: 1, width: 1, from: 0, to: 1e9 }] }, 'bars.0.to'],
    ['a title as long as a book', { title: 'a'.repeat(5000) }, 'title'],
    ['a picture nobody drew', { key: { value: 1, symbol: 'ghost', text: '' } }, 'key.symbol'],
    [
      'more marks than patience',
      { crosses: Array(5000).fill({ at: 1, height: 1, size: 1, look: 'cross' }) },
      'crosses',
    ],
    [
      'a join to a point that is not there',
      { joins: [{ from: 0, to: 1, line: 'solid' }] },
      'joins',
    ],
  ])('is refused kindly when it has %s', (_, change, part) => {
    const read = decodeDrawing({ ...sheet('bar-graph'), ...change });
    expect(read).toEqual({ ok: false, error: { kind: 'not-a-drawing', part } });
  });

  test('is refused when it is no drawing at all', () => {
    for (const data of [null, undefined, 7, 'drawing', [], {}]) {
      expect(decodeDrawing(data).ok).toBe(false);
    }
  });

  test('keeps what it knows when a later program added a part', () => {
    const read = decodeDrawing({ ...sheet('bar-graph'), glitter: true });
    expect(read).toEqual({ ok: true, value: sheet('bar-graph') });
  });
});
