import { describe, expect, it } from 'vitest';
import {
  drawRight,
  emptyDrawing,
  type Drawing,
  type RightGraph,
  lookAtBarGraph,
} from '#core/graphs';
import { exactPerUnit } from '#core/measure';
import { goldenRight } from './golden-logs';
import { bothWays, changed, goldenOf, idsOf, without } from './right-drawings';

// Weather of 18 days, by ones: sun 7, cloud 4, rain 6, wind 1.
const weather = goldenRight('four kinds of weather');
const weatherDrawn = drawRight(weather);
// By twos: sun 4, rain 18, fog 0, drizzle 2, snow 7.
const byTwos = goldenRight('a month of weather by twos');
const byTwosDrawn = drawRight(byTwos);
// Wed 11 to Tue 17: 1, 2, 3, 4, blank, 7, 9 cm.
const heights = goldenRight('heights of a week in centimetres');
const heightsDrawn = drawRight(heights);

const withNumbers = (drawing: Drawing, numbers: readonly (readonly [number, string])[]) => ({
  ...drawing,
  side: { ...drawing.side, ticks: numbers.map(([at, text]) => ({ at, text })) },
});
const withTops = (drawing: Drawing, tops: readonly number[]): Drawing => ({
  ...drawing,
  bars: drawing.bars.map((bar, index) => ({ ...bar, to: tops[index]! })),
});
const spaced = (texts: readonly string[], from = 0) =>
  texts.map((text, index) => [index + from, text] as const);
const found = (right: RightGraph, drawing: Drawing) => lookAtBarGraph(right, drawing).mistakes;

describe('a right bar graph', () => {
  const steps = (right: RightGraph) => [1, 2, 5].map((times) => right.scale.step * times);
  it.each(goldenOf('bar-graph'))('of %s has nothing to look at again, at any scale', (_, right) => {
    for (const drawing of steps(right).flatMap((step) => bothWays(right, { step }))) {
      const look = lookAtBarGraph(right, drawing);
      expect(look.mistakes).toEqual([]);
      expect(look.right).toContain('every-value');
    }
  });

  it('is praised part by part', () => {
    expect(lookAtBarGraph(weather, weatherDrawn).right).toEqual([
      ...['title', 'side-label', 'scale-from-zero', 'even-scale', 'stand-on-base'],
      ...['same-size', 'every-place', 'every-value'],
    ]);
    expect(lookAtBarGraph(heights, heightsDrawn).right).toEqual([
      ...['title', 'side-label', 'unit', 'scale-from-zero', 'even-scale', 'stand-on-base'],
      ...['same-size', 'every-day', 'gaps-shown', 'every-value'],
    ]);
  });

  it('may be lines without width, leave the 0 unwritten, and number every second line', () => {
    const lines = { ...weatherDrawn, bars: weatherDrawn.bars.map((bar) => ({ ...bar, width: 0 })) };
    expect(found(weather, lines)).toEqual([]);
    expect(found(weather, withNumbers(weatherDrawn, spaced(['1', '2', '3', '4'], 1)))).toEqual([]);
    const second = [0, 2, 4, 6, 8].map((at) => [at, String(at)] as const);
    expect(found(weather, withNumbers(weatherDrawn, second))).toEqual([]);
  });

  it('may have its names misspelt, cut short, in capitals and in another order', () => {
    const texts = ['WIND', 'rainy', 'clowd', 's'];
    const drawing = {
      ...withTops(weatherDrawn, [1, 6, 4, 7]),
      places: weatherDrawn.places.map(({ at }, index) => ({ at, text: texts[index]! })),
    };
    expect(found(weather, drawing)).toEqual([]);
  });

  it('is looked at without being changed', () => {
    const freeze = <Value>(value: Value): Value => {
      if (typeof value === 'object' && value !== null)
        Object.values(Object.freeze(value)).map(freeze);
      return value;
    };
    const frozen = freeze(structuredClone(byTwosDrawn));
    expect(found(byTwos, frozen)).toEqual(found(byTwos, frozen));
  });
});

describe('in a bar graph', () => {
  it('B1 a scale that starts at one is found once, whether bars follow squares or numbers', () => {
    const fromOne = withNumbers(weatherDrawn, spaced(['1', '2', '3', '4', '5', '6', '7', '8']));
    const first = { id: 'B1', lookAt: { part: 'side-ticks', indexes: [0] }, isSoft: false };
    expect(found(weather, fromOne)).toEqual([first]);
    expect(found(weather, withTops(fromOne, [6, 3, 5, 0]))).toEqual([first]);
    // Numbered rightly, and every bar counted from the floor as one.
    expect(idsOf(lookAtBarGraph(weather, withTops(weatherDrawn, [6, 3, 5, 0])))).toEqual(['B1']);
  });

  it('B2 numbers in the boxes, or bars to the middle of boxes, are found once', () => {
    const boxes = spaced(['1', '2', '3', '4', '5', '6', '7', '8'], 0.5);
    expect(idsOf({ mistakes: found(weather, withNumbers(weatherDrawn, boxes)) })).toEqual(['B2']);
    const half = withTops(weatherDrawn, [6.5, 3.5, 5.5, 0.5]);
    expect(idsOf({ mistakes: found(weather, half) })).toEqual(['B2']);
    expect(idsOf({ mistakes: found(weather, withNumbers(half, boxes)) })).toEqual(['B2']);
  });

  it('B3 numbers that skip one are found, and bars by squares or by numbers are not', () => {
    const skips = withNumbers(weatherDrawn, spaced(['0', '1', '2', '4', '5', '6', '7', '8']));
    expect(idsOf({ mistakes: found(weather, skips) })).toEqual(['B3']);
    expect(idsOf({ mistakes: found(weather, withTops(skips, [6, 3, 5, 1])) })).toEqual(['B3']);
  });

  it('B4 uneven jumps between even numbers are found, wobbles of a fifth are not', () => {
    const at = (last: number) =>
      withNumbers(weatherDrawn, [...spaced(['0', '1', '2', '3', '4', '5', '6']), [last, '7']]);
    expect(idsOf({ mistakes: found(weather, at(7.6)) })).toEqual(['B4']);
    expect(found(weather, at(7.2))).toEqual([]);
    expect(idsOf({ mistakes: found(weather, at(7.21)) })).toEqual(['B4']);
  });

  it('B5 a scale of nothing but the values is found', () => {
    const listed = withNumbers(weatherDrawn, spaced(['0', '1', '4', '6', '7']));
    expect(idsOf({ mistakes: found(weather, withTops(listed, [4, 2, 3, 1])) })).toEqual(['B5']);
  });

  it('B6 a bar that floats is found, by its end or by its length', () => {
    const lifted = (from: number, to: number) => ({
      ...weatherDrawn,
      bars: changed(weatherDrawn.bars, 1, { from, to }),
    });
    const floats = { id: 'B6', lookAt: { part: 'bars', indexes: [1] }, isSoft: false };
    expect(found(weather, lifted(1, 4))).toEqual([floats]);
    expect(found(weather, lifted(1, 5))).toEqual([floats]);
    expect(found(weather, lifted(0.25, 4))).toEqual([]);
    expect(found(weather, lifted(0.26, 4))).toEqual([floats]);
  });

  it('B7 a fat bar is found, three tenths more is not', () => {
    const wide = (width: number) => ({
      ...weatherDrawn,
      bars: changed(weatherDrawn.bars, 2, { width }),
    });
    const fat = { id: 'B7', lookAt: { part: 'bars', indexes: [2] }, isSoft: false };
    expect(found(weather, wide(1.31))).toEqual([fat]);
    expect(found(weather, wide(1.3))).toEqual([]);
  });

  it('B8 one bar a step too high or too low is found at that bar', () => {
    const off = (by: number) => withTops(weatherDrawn, [7, 4, 6 + by, 1]);
    const wrong = { id: 'B8', lookAt: { part: 'bars', indexes: [2] }, isSoft: false };
    expect(found(weather, off(1))).toEqual([wrong]);
    expect(found(weather, off(-1))).toEqual([wrong]);
  });

  it('B8 stands for each bar that fits nothing else', () => {
    expect(
      found(weather, withTops(weatherDrawn, [5, 4, 2.5, 1])).map(({ lookAt }) => lookAt),
    ).toEqual([
      { part: 'bars', indexes: [0] },
      { part: 'bars', indexes: [2] },
    ]);
    const extra = { ...weatherDrawn.bars[0]!, at: 9.5, to: 2 };
    expect(found(weather, { ...weatherDrawn, bars: [...weatherDrawn.bars, extra] })).toEqual([
      { id: 'B8', lookAt: { part: 'bars', indexes: [4] }, isSoft: false },
    ]);
  });

  it('B9 two bars that carry each other’s values are one exchange', () => {
    const exchange = { id: 'B9', lookAt: { part: 'places', indexes: [0, 2] }, isSoft: false };
    expect(found(weather, withTops(weatherDrawn, [6, 4, 7, 1]))).toEqual([exchange]);
  });

  it('B9 three bars in a round are an exchange, and so is a bar beside the name of none', () => {
    expect(idsOf({ mistakes: found(weather, withTops(weatherDrawn, [4, 6, 7, 1])) })).toEqual([
      'B9',
    ]);
    const snowOverFog = byTwosDrawn.bars.map((bar) => ({
      ...bar,
      at: bar.at === 9.5 ? 5.5 : bar.at,
    }));
    expect(found(byTwos, { ...byTwosDrawn, bars: snowOverFog })).toEqual([
      { id: 'B9', lookAt: { part: 'places', indexes: [2, 4] }, isSoft: false },
    ]);
  });

  it('B10 a number side that says nothing is found; without numbers no bar is read', () => {
    const { side } = weatherDrawn;
    expect(found(weather, { ...weatherDrawn, side: { ...side, label: ' ' } })).toEqual([
      { id: 'B10', lookAt: { part: 'side-label' }, isSoft: false },
    ]);
    const bare = { ...withTops(weatherDrawn, [3, 3, 3, 3]), side: { ...side, ticks: [] } };
    const look = lookAtBarGraph(weather, bare);
    expect(look.mistakes).toEqual([
      { id: 'B10', lookAt: { part: 'side-ticks', indexes: [] }, isSoft: false },
    ]);
    expect(look.right).not.toContain('every-value');
    const vague = { ...weatherDrawn, side: { ...side, label: 'things' } };
    expect(found(weather, vague).map(({ isSoft }) => isSoft)).toEqual([true]);
  });

  it('B11 a name left out is found, also that of a kind that never came', () => {
    const fogless = { ...byTwosDrawn, places: without(byTwosDrawn.places, 2) };
    expect(idsOf({ mistakes: found(byTwos, fogless) })).toEqual(['B11']);
    const unnamed = { ...weatherDrawn, places: without(weatherDrawn.places, 1) };
    expect(found(weather, unnamed)).toEqual([
      { id: 'B11', lookAt: { part: 'bars', indexes: [1] }, isSoft: false },
    ]);
  });

  it('B12 a bar of one for each day is found, and no value is', () => {
    const labels = ['sun', 'cloud', 'rain', 'wind'].flatMap((label, index) =>
      Array.from({ length: [7, 4, 6, 1][index]! }, () => label),
    );
    const drawing = {
      ...weatherDrawn,
      places: labels.map((text, at) => ({ at: at + 1, text })),
      bars: labels.map((_, at) => ({ at: at + 1, width: 0.8, from: 0, to: 1 })),
    };
    expect(idsOf({ mistakes: found(weather, drawing) })).toEqual(['B12']);
  });

  it('B13 a title is found that is empty, or softly one that says nothing counted', () => {
    const titled = (title: string) => found(weather, { ...weatherDrawn, title });
    expect(titled('')).toEqual([{ id: 'B13', lookAt: { part: 'title' }, isSoft: false }]);
    expect(titled('My work')).toEqual([{ id: 'B13', lookAt: { part: 'title' }, isSoft: true }]);
    expect(titled('Dayes of March')).toEqual([]);
  });

  it('B14 an odd value that ends on a line of a scale by twos is found', () => {
    const snow = { id: 'B14', lookAt: { part: 'bars', indexes: [3] }, isSoft: false };
    expect(found(byTwos, withTops(byTwosDrawn, [2, 9, 1, 3]))).toEqual([snow]);
    expect(found(byTwos, withTops(byTwosDrawn, [2, 9, 1, 4]))).toEqual([snow]);
  });

  it('B15 a missed day with a bar of nothing is found, and one whose neighbours touch', () => {
    const nothing = { at: 9.5, width: 1, from: 0, to: 0 };
    expect(found(heights, { ...heightsDrawn, bars: [...heightsDrawn.bars, nothing] })).toEqual([
      { id: 'B15', lookAt: { part: 'bars', indexes: [6] }, isSoft: false },
    ]);
    const closed = (at: number) => (at > 9.5 ? at - 2 : at);
    const touching = {
      ...heightsDrawn,
      places: without(heightsDrawn.places, 4).map((each) => ({ ...each, at: closed(each.at) })),
      bars: heightsDrawn.bars.map((each) => ({ ...each, at: closed(each.at) })),
    };
    expect(found(heights, touching)).toEqual([
      { id: 'B15', lookAt: { part: 'places', indexes: [3, 4] }, isSoft: false },
    ]);
    const free = { ...heightsDrawn, places: without(heightsDrawn.places, 4) };
    expect(found(heights, free)).toEqual([]);
  });

  it('B16 a reading in inches drawn as so many centimetres is found', () => {
    const { table } = heights;
    if (table.form !== 'values') throw new Error('heights are values');
    const inches = { unit: 'in' as const, text: '2 in', exact: 2 * exactPerUnit('in') };
    const mixed = { ...heights, table: { ...table, rows: changed(table.rows, 1, inches) } };
    expect(found(mixed, heightsDrawn)).toEqual([
      { id: 'B16', lookAt: { part: 'bars', indexes: [1] }, isSoft: false },
    ]);
    // 2 in are 5.08 cm: turned into the unit of the graph, or not drawn, it is right.
    expect(found(mixed, withTops(heightsDrawn, [1, 5.08, 3, 4, 7, 9]))).toEqual([]);
    expect(found(mixed, { ...heightsDrawn, bars: without(heightsDrawn.bars, 1) })).toEqual([]);
  });

  it('B16 a side or numbers that name another unit are found', () => {
    const labelled = (label: string) => ({
      ...heightsDrawn,
      side: { ...heightsDrawn.side, label },
    });
    expect(idsOf({ mistakes: found(heights, labelled('height in inches')) })).toEqual(['B16']);
    expect(found(heights, labelled('height of the bean in the pot'))).toEqual([]);
  });
});

describe('the end of a bar', () => {
  const near = (by: number) => found(weather, withTops(weatherDrawn, [7 + by, 4, 6, 1]));
  it('may be a quarter of an interval off, and not more', () => {
    expect([near(0.25), near(-0.25)]).toEqual([[], []]);
    expect(idsOf({ mistakes: near(0.26) })).toEqual(['B8']);
    expect(idsOf({ mistakes: near(-0.26) })).toEqual(['B8']);
  });

  it('is measured by the child’s own interval', () => {
    const bySquare = (by: number) => found(byTwos, withTops(byTwosDrawn, [2, 9 + by, 1, 3.5]));
    expect(bySquare(0.25)).toEqual([]);
    expect(idsOf({ mistakes: bySquare(0.26) })).toEqual(['B8']);
    // Only every fifth line has its number: the lines between can be read all the same.
    const numbers = [0, 5, 10].map((at) => [at, String(at)] as const);
    expect(found(weather, withNumbers(withTops(weatherDrawn, [7.25, 4, 6, 1]), numbers))).toEqual(
      [],
    );
    expect(
      idsOf({
        mistakes: found(weather, withNumbers(withTops(weatherDrawn, [7.26, 4, 6, 1]), numbers)),
      }),
    ).not.toEqual([]);
  });
});

describe('an unfinished bar graph', () => {
  const begun = { ...weatherDrawn, bars: weatherDrawn.bars.slice(0, 2) };

  it('is told only what is still to come, and what is right so far', () => {
    const look = lookAtBarGraph(weather, begun);
    expect(look.mistakes).toEqual([
      { id: 'B11', lookAt: { part: 'places', indexes: [2, 3] }, isSoft: false },
    ]);
    expect(look.right).toContain('scale-from-zero');
    expect(look.right).not.toContain('every-value');
  });

  it('is told what is drawn amiss before what is missing', () => {
    const off = { ...withTops(begun, [6, 4]), title: '' };
    expect(idsOf({ mistakes: found(weather, off) })).toEqual(['B8', 'B13', 'B11']);
  });

  it('with nothing on it has nothing right and no mistake of scale', () => {
    const look = lookAtBarGraph(heights, emptyDrawing('bar-graph', { columns: 15, rows: 10 }));
    expect(look.right).toEqual([]);
    expect(idsOf(look)).toEqual(['B13', 'B10', 'B11']);
  });
});

describe('several mistakes of a bar graph', () => {
  it('are told from the scale over the bars and names to single values and words', () => {
    const drawing: Drawing = {
      ...withNumbers(weatherDrawn, spaced(['1', '2', '3', '4', '5', '6', '7', '8'])),
      title: '',
      bars: changed(changed(weatherDrawn.bars, 0, { width: 2 }), 2, { to: 4 }),
    };
    expect(idsOf({ mistakes: found(weather, drawing) })).toEqual(['B1', 'B7', 'B8', 'B13']);
  });

  it('never make a table that bars are not drawn from look right', () => {
    const plot = goldenRight('ten seedlings in whole inches');
    expect(() => lookAtBarGraph(plot, weatherDrawn)).toThrow('No bars are drawn');
  });
});
