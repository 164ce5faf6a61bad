import { describe, expect, it } from 'vitest';
import {
  drawRight,
  emptyDrawing,
  type Drawing,
  type RightGraph,
  lookAtPictureGraph,
} from '#core/graphs';
import { goldenRight } from './golden-logs';
import { keysFor } from './planted-picture-mistakes';
import { bothWays, changed, goldenOf, idsOf, without } from './right-drawings';

// sun 4, cloud 6, rain 3, snow 0: one day to a picture.
const sky = goldenRight('four kinds with one that never came');
const skyDrawn = drawRight(sky);
// sun 16, rain 12, fog 3, drizzle 0, snow 0: two days to a picture, so 8, 6 and 1 1/2.
const month = goldenRight('a month of weather, two days a picture');
const monthDrawn = drawRight(month);

const found = (right: RightGraph, drawing: Drawing) => lookAtPictureGraph(right, drawing).mistakes;
const ids = (right: RightGraph, drawing: Drawing) => idsOf(lookAtPictureGraph(right, drawing));
/** So many whole pictures for each name, in order, evenly or with other gaps. */
const withCounts = (drawing: Drawing, counts: readonly number[], gaps: readonly number[] = []) => ({
  ...drawing,
  symbols: counts.flatMap((count, index) =>
    Array.from({ length: count }, (_, order) => ({
      ...{ row: drawing.places[index]!.at, at: 0.5 + order * (gaps[index] ?? 1), size: 1 },
      ...{ symbol: 'circle' as const, part: 'whole' as const },
    })),
  ),
});
const inRow = (drawing: Drawing, index: number): readonly number[] =>
  drawing.symbols.flatMap(({ row }, each) => (row === drawing.places[index]!.at ? [each] : []));
const everyInRow = (drawing: Drawing, index: number, part: object): Drawing => ({
  ...drawing,
  symbols: drawing.symbols.map((symbol) =>
    symbol.row === drawing.places[index]!.at ? { ...symbol, ...part } : symbol,
  ),
});

describe('a right picture graph', () => {
  it.each(goldenOf('picture-graph'))(
    'of %s has nothing to look at again, with any key',
    (_, right) => {
      for (const drawing of keysFor(right).flatMap((keyValue) => bothWays(right, { keyValue }))) {
        const look = lookAtPictureGraph(right, drawing);
        expect(look.mistakes).toEqual([]);
        expect(look.right).toContain('every-value');
      }
    },
  );

  it('is praised part by part', () => {
    expect(lookAtPictureGraph(sky, skyDrawn).right).toEqual([
      ...['title', 'key', 'same-size', 'stand-on-base', 'every-place', 'every-value'],
    ]);
  });

  it('may wobble in size, gaps and beginnings', () => {
    const symbols = skyDrawn.symbols.map((symbol, index) => ({
      ...symbol,
      ...{ size: 1 + (index % 2) * 0.24, at: symbol.at + (index % 3) * 0.1 },
      row: symbol.row + (index % 2) * 0.2,
    }));
    expect(found(sky, { ...skyDrawn, symbols })).toEqual([]);
  });

  it('may say how many in the words of its key', () => {
    const key = { value: null, symbol: null, text: '1 circle = 2 days' };
    expect(found(month, { ...monthDrawn, key })).toEqual([]);
  });
});

describe('in a picture graph', () => {
  it('P1 a missing title is found', () => {
    expect(found(sky, { ...skyDrawn, title: ' ' })).toEqual([
      { id: 'P1', lookAt: { part: 'title' }, isSoft: false },
    ]);
  });

  it('P2 a missing key is found, and one without a number', () => {
    const noKey = { id: 'P2', lookAt: { part: 'key' }, isSoft: false };
    expect(found(month, { ...monthDrawn, key: null })).toEqual([noKey]);
    const key = { value: null, symbol: 'circle' as const, text: 'days' };
    expect(found(month, { ...monthDrawn, key })).toEqual([noKey]);
  });

  it('P3 one large picture is found, a quarter more is not', () => {
    const sized = (size: number) => ({
      ...skyDrawn,
      symbols: changed(skyDrawn.symbols, 5, { size }),
    });
    expect(found(sky, sized(1.26))).toEqual([
      { id: 'P3', lookAt: { part: 'symbols', indexes: [5] }, isSoft: false },
    ]);
    expect(found(sky, sized(1.25))).toEqual([]);
  });

  it('P4 gaps that make a row of few as long as a row of many are found, other gaps are not', () => {
    expect(ids(sky, withCounts(skyDrawn, [4, 6, 3, 0], [1, 1, 2.5]))).toEqual(['P4']);
    // Three pictures, still the shortest row.
    expect(ids(sky, withCounts(skyDrawn, [4, 6, 3, 0], [1, 1, 1.4]))).toEqual([]);
  });

  it('P5 a row that begins more than half a cell later is found', () => {
    const late = (by: number): Drawing => ({
      ...skyDrawn,
      symbols: skyDrawn.symbols.map((symbol) =>
        symbol.row === skyDrawn.places[1]!.at ? { ...symbol, at: symbol.at + by } : symbol,
      ),
    });
    expect(found(sky, late(0.51))).toEqual([
      { id: 'P5', lookAt: { part: 'symbols', indexes: [4] }, isSoft: false },
    ]);
    expect(found(sky, late(0.5))).toEqual([]);
  });

  it('P6 a row with one picture too many or too few is found', () => {
    expect(found(sky, withCounts(skyDrawn, [4, 6, 2, 0]))).toEqual([
      { id: 'P6', lookAt: { part: 'symbols', indexes: [10, 11] }, isSoft: false },
    ]);
    expect(ids(sky, withCounts(skyDrawn, [4, 6, 3, 1]))).toEqual(['P6']);
  });

  it('P6 stands for each row that fits nothing else', () => {
    expect(found(sky, withCounts(skyDrawn, [2, 6, 7, 0])).map(({ id }) => id)).toEqual([
      'P6',
      'P6',
    ]);
  });

  it('P7 one picture for each thing, though the key says two, is found once', () => {
    expect(ids(month, withCounts(monthDrawn, [16, 12, 3]))).toEqual(['P7']);
  });

  it('P8 counts times the key are found once', () => {
    expect(ids(month, withCounts(monthDrawn, [32, 24, 6]))).toEqual(['P8']);
  });

  it('P9 a half picture drawn whole, or left out, is found', () => {
    const half = monthDrawn.symbols.findIndex(({ part }) => part === 'half');
    const whole = { ...monthDrawn, symbols: changed(monthDrawn.symbols, half, { part: 'whole' }) };
    expect(found(month, whole)).toEqual([
      { id: 'P9', lookAt: { part: 'symbols', indexes: inRow(whole, 2) }, isSoft: false },
    ]);
    expect(ids(month, { ...monthDrawn, symbols: without(monthDrawn.symbols, half) })).toEqual([
      'P9',
    ]);
  });

  it('P10 rows that carry each other’s pictures are one exchange', () => {
    expect(found(sky, withCounts(skyDrawn, [6, 4, 3, 0]))).toEqual([
      { id: 'P10', lookAt: { part: 'places', indexes: [0, 1] }, isSoft: false },
    ]);
    expect(ids(sky, withCounts(skyDrawn, [4, 6, 0, 3]))).toEqual(['P10']);
  });

  it('P11 the name of a kind that never came is missed, and any other name', () => {
    expect(ids(sky, { ...skyDrawn, places: without(skyDrawn.places, 3) })).toEqual(['P11']);
    const unnamed = { ...skyDrawn, places: without(skyDrawn.places, 0) };
    expect(found(sky, unnamed)).toEqual([
      { id: 'P11', lookAt: { part: 'symbols', indexes: [0, 1, 2, 3] }, isSoft: false },
    ]);
  });

  it('P12 a row with another picture than the key is found', () => {
    const leaves = everyInRow(skyDrawn, 2, { symbol: 'leaf' });
    expect(found(sky, leaves)).toEqual([
      { id: 'P12', lookAt: { part: 'symbols', indexes: inRow(skyDrawn, 2) }, isSoft: false },
    ]);
    expect(ids(sky, { ...leaves, key: { ...leaves.key!, symbol: null } })).toEqual(['P12']);
  });

  it('P12 a key that cannot show a count is found, since it does not work for every row', () => {
    const byFive = {
      ...withCounts(monthDrawn, [3, 2, 1]),
      key: { value: 5, symbol: null, text: '' },
    };
    expect(found(month, byFive)).toContainEqual({
      id: 'P12',
      lookAt: { part: 'key' },
      isSoft: false,
    });
  });

  it('P13 heights drawn with pictures are found, and rows named by days', () => {
    const heights = goldenRight('heights of a week in centimetres');
    expect(ids({ ...heights, kind: 'picture-graph' }, skyDrawn)).toEqual(['P13']);
    const days = ['Mon', 'Tuesday', 'Wed', 'Thu'];
    const places = skyDrawn.places.map(({ at }, index) => ({ at, text: days[index]! }));
    expect(ids(sky, { ...skyDrawn, places })).toEqual(['P13']);
    const key = { ...skyDrawn.key!, text: 'a circle is 1 cm' };
    expect(ids(sky, { ...skyDrawn, key })).toEqual(['P13']);
  });
});

describe('an unfinished picture graph', () => {
  it('is told of rows without pictures last, at their names', () => {
    const begun = { ...withCounts(skyDrawn, [4, 5, 0, 0]), title: '' };
    expect(found(sky, begun)).toEqual([
      { id: 'P6', lookAt: { part: 'symbols', indexes: [4, 5, 6, 7, 8] }, isSoft: false },
      { id: 'P1', lookAt: { part: 'title' }, isSoft: false },
      { id: 'P6', lookAt: { part: 'places', indexes: [2] }, isSoft: false },
    ]);
    expect(lookAtPictureGraph(sky, begun).right).not.toContain('every-value');
  });

  it('with nothing on it has nothing right', () => {
    const look = lookAtPictureGraph(sky, emptyDrawing('picture-graph', { columns: 9, rows: 9 }));
    expect(look.right).toEqual([]);
    expect(idsOf(look)).toEqual(['P2', 'P1', 'P11']);
  });
});

describe('several mistakes of a picture graph', () => {
  it('are told from the key over the lie of the pictures to single rows and words', () => {
    const many = withCounts(skyDrawn, [4, 6, 2, 0]);
    const drawing = {
      ...everyInRow(many, 0, { symbol: 'sun' }),
      ...{ title: '', places: without(many.places, 3) },
    };
    const bigger = { ...drawing, symbols: changed(drawing.symbols, 1, { size: 2 }) };
    expect(ids(sky, bigger)).toEqual(['P12', 'P3', 'P6', 'P1', 'P11']);
  });
});
