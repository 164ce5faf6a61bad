import { exactPerUnit } from '#core/measure';
import { remarkOn, remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import type { LinePlotParts } from './line-plot-parts';
import type { CrossOfSeries, MatchedCrosses, MeasuredValue } from './match-crosses';
import { showsOnScale } from './place-on-scale';

/**
 * What there is to say about crosses that show no value and values without a cross. A cross that
 * could stand for a value nearby is a misplaced one (L6), whatever else it may be; every other
 * one, and every value left, makes the number of crosses differ (L8). Not part of the public door.
 */
export const remarksOnPlotValues = (
  plot: LinePlotParts,
  { strays, missing }: MatchedCrosses,
): readonly DrawnRemark[] => {
  const [zeros, others] = inventedZeros(plot, strays, missing);
  const remarks: DrawnRemark[] = [];
  if (zeros.length > 0) remarks.push(remarkOn('L12', 'crosses', indexesOf(zeros)));
  if (others.length > 0 && missing.length > 0) {
    remarks.push(remarkOn('L6', 'crosses', indexesOf(others)));
  }
  if (others.length > missing.length) remarks.push(remarkOn('L8', 'crosses', indexesOf(others)));
  if (missing.length > others.length) {
    remarks.push(
      others.length === 0 && isEachOnce(plot, missing)
        ? remarkOnWhole('L2', 'whole')
        : tooFew(plot, missing.length - others.length),
    );
  }
  return remarks;
};

/**
 * Whether the crosses stand at the numbers of the days (1, 2, 3 and so on, each once) and not at
 * what was measured. One such cross alone is a misplaced one. Not part of the public door.
 */
export const areDayNumbers = (
  { drawing, table, risingScale }: LinePlotParts,
  { strays }: MatchedCrosses,
): boolean => {
  if (!risingScale || strays.length === 0) return false;
  const unit = exactPerUnit(table.unit);
  const numbers = drawing.crosses.map(({ at }) => {
    const number = Math.round(risingScale.valueAt(at) / unit);
    return showsOnScale(risingScale, at, number * unit) ? number : 0;
  });
  const days = table.values.length + table.unmeasured.length;
  const measured = new Set(table.values.map(({ exact }) => exact / unit));
  return (
    numbers.filter((number) => !measured.has(number)).length > 1 &&
    numbers.includes(1) &&
    new Set(numbers).size === numbers.length &&
    numbers.every((number) => number >= 1 && number <= days)
  );
};

const tooFew = ({ drawing, table }: LinePlotParts, count: number): DrawnRemark => {
  const remark = remarkOnWhole('L8', 'whole');
  const isCounted = count === 1 && drawing.crosses.length > 0 && table.values.length > 2;
  return isCounted ? remark : yetToDraw(remark);
};

/** Crosses at 0 that stand for days without a number; not one that slid from a value beside 0. */
const inventedZeros = (
  { table, risingScale }: LinePlotParts,
  strays: readonly CrossOfSeries[],
  missing: readonly MeasuredValue[],
): readonly [readonly CrossOfSeries[], readonly CrossOfSeries[]] => {
  if (!risingScale || table.unmeasured.length === 0) return [[], strays];
  const first = risingScale.ticks[0];
  const isZero = ({ at }: CrossOfSeries): boolean =>
    showsOnScale(risingScale, at, 0) ||
    (first !== undefined && first.value > 0 && at < first.at - risingScale.space / 4 && at <= 0.25);
  const zeros = strays.filter(isZero);
  const isSlid =
    missing.length === strays.length &&
    missing.every(({ exact }) => exact <= risingScale.step * 1.01);
  return isSlid ? [[], strays] : [zeros, strays.filter((cross) => !isZero(cross))];
};

/** Every value that came is marked, once, however often it came. */
const isEachOnce = ({ table }: LinePlotParts, missing: readonly MeasuredValue[]): boolean => {
  const kindOf = ({ series, exact }: MeasuredValue): string => `${series} ${exact}`;
  const kinds = new Set(table.values.map(kindOf));
  if (table.values.length - missing.length !== kinds.size) return false;
  return [...kinds].every((kind) => {
    const times = table.values.filter((value) => kindOf(value) === kind).length;
    return missing.filter((value) => kindOf(value) === kind).length === times - 1;
  });
};

const indexesOf = (crosses: readonly CrossOfSeries[]): readonly number[] =>
  crosses.map(({ index }) => index);
