import { exactPerUnit } from '#core/measure';
import { remarkOn, yetToDraw, type DrawnRemark } from './drawn-remark';
import { countedQuarters, misplacedFractions } from './line-plot-fractions';
import type { LinePlotParts, PlotTick } from './line-plot-parts';
import { spreadOf } from './spread';
import type { WrittenScale } from './written-scale';

/**
 * What there is to say about the number line itself: at most one remark, the first a teacher would
 * make. L14 before L5 and L13, since quarters counted on are out of order too. Not part of the
 * public door.
 */
export const remarkOnPlotLine = (plot: LinePlotParts): DrawnRemark | null => {
  const { ticks, scale } = plot;
  if (ticks.length === 0) return yetToDraw(remarkOn('L3', 'bottom-ticks', []));
  const quarters = countedQuarters(ticks);
  if (quarters.length > 0) return remarkOn('L14', 'bottom-ticks', quarters);
  const unread = ticks.filter(({ exact }) => exact === null);
  if (unread.length > 0) return remarkOn('L3', 'bottom-ticks', indexesOf(unread));
  if (!scale) return remarkOn('L3', 'bottom-ticks', indexesOf(ticks));
  const falling = fallingTicks(ticks);
  if (falling.length > 0) {
    const isOfFractions = isInOrder(ticks.filter((tick) => isWhole(tick, plot)));
    const hasFractions = ticks.some((tick) => !isWhole(tick, plot));
    const id = isOfFractions && hasFractions ? 'L13' : 'L5';
    return remarkOn(id, 'bottom-ticks', indexesOf(falling));
  }
  return remarkOnSteps(plot, scale) ?? remarkOnReach(plot, scale);
};

const remarkOnSteps = (plot: LinePlotParts, scale: WrittenScale): DrawnRemark | null => {
  const onlyData = isOnlyData(plot);
  const skips = onlyData && scale.step > plot.right.scale.step * 1.5;
  if (scale.hasEvenSteps && scale.hasEvenSpaces) {
    return skips ? remarkOn('L3', 'bottom-ticks', afterEvery(plot.ticks)) : null;
  }
  if (scale.hasEvenSteps) {
    const fractions = misplacedFractions(plot);
    if (fractions.length > 0) return remarkOn('L13', 'bottom-ticks', fractions);
    return remarkOn('L4', 'bottom-ticks', unevenTicks(plot.ticks));
  }
  const jumps = jumpsOf(plot.ticks);
  if (scale.isFair) return remarkOn('L3', 'bottom-ticks', jumps, !onlyData);
  const spaces = plot.ticks.slice(1).map(({ at }, index) => at - (plot.ticks[index]?.at ?? 0));
  const isSkipped = onlyData || spreadOf(spaces) <= 0.2;
  return isSkipped
    ? remarkOn('L3', 'bottom-ticks', jumps)
    : remarkOn('L4', 'bottom-ticks', unevenTicks(plot.ticks));
};

/** A line that ends before the largest measure, or begins after the smallest. */
const remarkOnReach = (
  { table, ticks }: LinePlotParts,
  scale: WrittenScale,
): DrawnRemark | null => {
  const values = table.values.map(({ exact }) => exact);
  const [first, last] = [scale.ticks[0], scale.ticks.at(-1)];
  const spare = scale.step / 4;
  const isShort = Math.max(...values) > (last?.value ?? 0) + spare;
  const isLate = Math.min(...values) < (first?.value ?? 0) - spare;
  if (!isShort && !isLate) return null;
  const ends = [...(isLate ? [ticks[0]] : []), ...(isShort ? [ticks.at(-1)] : [])];
  return remarkOn('L3', 'bottom-ticks', indexesOf(ends.filter((tick) => tick !== undefined)));
};

/** Nothing but the numbers that were measured stand on the line. */
const isOnlyData = ({ table, ticks }: LinePlotParts): boolean => {
  const measured = new Set(table.values.map(({ exact }) => exact));
  return ticks.length === measured.size && ticks.every(({ exact }) => measured.has(exact ?? -1));
};

const isWhole = ({ exact }: PlotTick, { table }: LinePlotParts): boolean =>
  (exact ?? 0) % exactPerUnit(table.unit) === 0;

const stepAt = (ticks: readonly PlotTick[], index: number): number =>
  (ticks[index]?.exact ?? 0) - (ticks[index - 1]?.exact ?? 0);

const isInOrder = (ticks: readonly PlotTick[]): boolean => fallingTicks(ticks).length === 0;

const fallingTicks = (ticks: readonly PlotTick[]): readonly PlotTick[] =>
  ticks.filter((_, index) => index > 0 && stepAt(ticks, index) <= 0);

/** The numbers before which others were left out. */
const jumpsOf = (ticks: readonly PlotTick[]): readonly number[] => {
  const smallest = Math.min(...ticks.slice(1).map((_, index) => stepAt(ticks, index + 1)));
  return indexesOf(ticks.filter((_, index) => index > 0 && stepAt(ticks, index) > smallest * 1.5));
};

const afterEvery = (ticks: readonly PlotTick[]): readonly number[] => indexesOf(ticks.slice(1));

/** The numbers whose distance to the one before differs most from the others. */
const unevenTicks = (ticks: readonly PlotTick[]): readonly number[] => {
  const rates = ticks.slice(1).map((tick, index) => ({
    tick,
    rate: (tick.at - (ticks[index]?.at ?? 0)) / stepAt(ticks, index + 1),
  }));
  const middle = rates.map(({ rate }) => rate).sort((one, other) => one - other)[
    Math.floor(rates.length / 2)
  ] as number;
  const far = rates.filter(({ rate }) => Math.abs(rate - middle) > 0.1 * middle);
  return indexesOf(far.map(({ tick }) => tick));
};

const indexesOf = (ticks: readonly PlotTick[]): readonly number[] =>
  ticks.map(({ index }) => index);
