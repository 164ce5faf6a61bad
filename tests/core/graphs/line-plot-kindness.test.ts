import { describe, expect, it } from 'vitest';
import { drawRight, emptyDrawing, lookAtLinePlot, type Drawing } from '#core/graphs';
import { goldenRight } from './golden-logs';

const seedlings = goldenRight('ten seedlings in whole inches');
const quarters = goldenRight('quarter inches past one, with empty ticks');
const pots = goldenRight('two pots in half inches');

const idsOf = (drawing: Drawing, right = seedlings) =>
  lookAtLinePlot(right, drawing).mistakes.map(({ id }) => id);

const withCross = (
  drawing: Drawing,
  index: number,
  change: Partial<Drawing['crosses'][number]>,
) => ({
  ...drawing,
  crosses: drawing.crosses.with(index, { ...drawing.crosses[index]!, ...change }),
});

describe('a look at a line plot', () => {
  // Common practice in marking: a mark within a quarter of one interval is right.
  it.each([
    [-0.26, ['L6']],
    [-0.25, []],
    [0.25, []],
    [0.26, ['L6']],
  ])('L6: takes a cross %d of an interval beside its tick as %j', (by, ids) => {
    const drawing = drawRight(seedlings);
    expect(idsOf(withCross(drawing, 0, { at: drawing.crosses[0]!.at + by }))).toEqual(ids);
  });

  it('L6: measures the quarter on the line the child drew, where a step is two squares', () => {
    const right = drawRight(seedlings);
    const wide: Drawing = {
      ...right,
      bottom: {
        ...right.bottom,
        ticks: right.bottom.ticks.map((tick) => ({ ...tick, at: tick.at * 2 })),
      },
      crosses: right.crosses.map((cross) => ({ ...cross, at: cross.at * 2 })),
    };
    const at = wide.crosses[0]!.at;
    expect(idsOf(withCross(wide, 0, { at: at + 0.5 }))).toEqual([]);
    expect(idsOf(withCross(wide, 0, { at: at + 0.51 }))).toEqual(['L6']);
  });

  it('L6: takes a line that begins at 0, and one that goes on, as well as ours', () => {
    const right = drawRight(seedlings);
    const ticks = Array.from({ length: 13 }, (_, number) => ({ at: number, text: String(number) }));
    const crosses = right.crosses.map((cross) => ({ ...cross, at: cross.at + 2 }));
    expect(idsOf({ ...right, crosses, bottom: { ...right.bottom, ticks } })).toEqual([]);
  });

  it('L3: takes a line by twos, each number at its place, as fair', () => {
    const right = drawRight(seedlings);
    const ticks = [2, 4, 6, 8].map((number) => ({ at: number - 2, text: String(number) }));
    expect(idsOf({ ...right, bottom: { ...right.bottom, ticks } })).toEqual([]);
  });

  it('L3: asks for a number where a word stands', () => {
    const right = drawRight(seedlings);
    const ticks = right.bottom.ticks.with(1, { ...right.bottom.ticks[1]!, text: 'fve' });
    const [mistake] = lookAtLinePlot(seedlings, {
      ...right,
      bottom: { ...right.bottom, ticks },
    }).mistakes;
    expect(mistake).toEqual({
      id: 'L3',
      lookAt: { part: 'bottom-ticks', indexes: [1] },
      isSoft: false,
    });
  });

  // Common practice: wobble is no mistake; sizes and spaces may differ by up to 30 %.
  it('L7: takes crosses of a wobbling hand as equal', () => {
    const drawing = drawRight(quarters);
    const wobbling = drawing.crosses.map((cross, index) => ({
      ...cross,
      at: cross.at + ((index % 3) - 1) * 0.12,
      height: cross.height + ((index % 2) - 0.5) * 0.2,
      size: cross.size * (1 + (index % 3) * 0.1),
    }));
    expect(idsOf({ ...drawing, crosses: wobbling }, quarters)).toEqual([]);
  });

  it('L7: sees crosses drawn on top of each other', () => {
    const drawing = drawRight(seedlings);
    const crosses = drawing.crosses.map((cross) => ({ ...cross, height: 0.5 }));
    expect(idsOf({ ...drawing, crosses })).toEqual(['L7']);
  });

  it('L7: points at the crosses that differ', () => {
    const drawing = drawRight(seedlings);
    const { mistakes } = lookAtLinePlot(seedlings, withCross(drawing, 3, { size: 1.2 }));
    expect(mistakes.map(({ lookAt }) => lookAt)).toEqual([{ part: 'crosses', indexes: [3] }]);
  });

  it('L11: finds the unit beside the numbers too', () => {
    const right = drawRight(seedlings);
    const ticks = right.bottom.ticks.map((tick) => ({ ...tick, text: `${tick.text} in` }));
    expect(idsOf({ ...right, bottom: { label: '', ticks } })).toEqual([]);
  });

  it('L15: sees one cross with the mark of the other pot', () => {
    const drawing = drawRight(pots);
    const { mistakes } = lookAtLinePlot(pots, withCross(drawing, 7, { look: 'cross' }));
    expect(mistakes.map(({ id }) => id)).toEqual(['L15']);
    expect(mistakes[0]!.lookAt).toEqual({ part: 'crosses', indexes: [7] });
  });

  it('L15: lets the child choose which mark is whose', () => {
    const drawing = drawRight(pots);
    const other: Drawing = {
      ...drawing,
      seriesKey: [
        { series: 0, text: 'Shelf' },
        { series: 1, text: 'Window' },
      ],
      crosses: drawing.crosses.map((cross) => ({
        ...cross,
        look: cross.look === 'ring' ? ('cross' as const) : ('ring' as const),
      })),
    };
    expect(idsOf(other, pots)).toEqual([]);
  });

  it('L9: lets a side count the crosses', () => {
    const drawing = drawRight(seedlings);
    const ticks = [1, 2, 3, 4].map((number) => ({ at: number, text: String(number) }));
    expect(idsOf({ ...drawing, side: { label: 'how many', ticks } })).toEqual([]);
  });

  it('says what is not drawn yet last, and names no part as right before it is', () => {
    const empty = emptyDrawing('line-plot', { columns: 12, rows: 6 });
    expect(lookAtLinePlot(seedlings, empty)).toEqual({
      right: [],
      mistakes: [
        { id: 'L3', lookAt: { part: 'bottom-ticks', indexes: [] }, isSoft: false },
        { id: 'L8', lookAt: { part: 'whole' }, isSoft: false },
        { id: 'L11', lookAt: { part: 'bottom-label' }, isSoft: false },
        { id: 'P1', lookAt: { part: 'title' }, isSoft: false },
      ],
    });
  });

  it('says a cross out of place before those still to come', () => {
    const drawing = drawRight(seedlings);
    const begun = { ...drawing, crosses: drawing.crosses.slice(0, 4) };
    expect(idsOf(begun)).toEqual(['L8']);
    expect(idsOf(withCross(begun, 0, { at: begun.crosses[0]!.at - 0.5 }))).toEqual(['L6', 'L8']);
  });

  it('never calls a plot right whose crosses do not show the table', () => {
    const drawing = drawRight(seedlings);
    const scattered = drawing.crosses.map((cross, index) => ({ ...cross, at: 1 + (index % 6) }));
    expect(idsOf({ ...drawing, crosses: scattered })).not.toEqual([]);
    expect(lookAtLinePlot(seedlings, { ...drawing, crosses: scattered }).right).not.toContain(
      'every-value',
    );
  });
});
