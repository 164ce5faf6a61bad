import { failed, ok, type Result } from '#core/base';
import { daysBetween, type CivilDay } from '#core/calendar';
import { exactPerUnit, isLengthUnit, markById, type MarkId, type Unit } from '#core/measure';
import { changesBetween } from './change';
import { onePointPerDay, type GrowthPoint } from './growth-point';
import { leastSquares, rSquaredOf } from './least-squares';
import { residualsOf, type Line } from './line';
import { median } from './median';
import { medianOfSlopes } from './median-of-slopes';
import type { UndefinedStatistic } from './undefined-statistic';

export const trendNeeds = { readings: 5, days: 7 } as const;

/** What a grown-up can be told about a log: for the parent's page, not the child's. */
export interface Trend {
  /** The unit of every plain number here. */
  readonly unit: Unit;
  /** The points it rests on: one for each day, in order. */
  readonly points: readonly GrowthPoint[];
  readonly firstDay: CivilDay;
  readonly spanDays: number;
  /** Days since the first day, for each point: the x of both lines. */
  readonly daysSinceFirst: readonly number[];
  /** The size of each point: the y of both lines. */
  readonly values: readonly number[];
  readonly gaps: readonly number[];
  readonly leastSquares: TrendLine;
  readonly medianOfSlopes: TrendLine;
  /** Of the least-squares line; undefined for a level log, which has no spread. */
  readonly rSquared: Result<number, UndefinedStatistic>;
  readonly smallest: number;
  readonly largest: number;
  /** The median, over neighbouring readings, of the change per day. */
  readonly medianGrowthPerDay: number;
  readonly finestMark: MarkId;
  readonly coarsestMark: MarkId;
  readonly unitsMixed: boolean;
}

export interface TrendLine {
  readonly growthPerDay: number;
  /** The height of the line on the first day. */
  readonly onFirstDay: number;
  /** How far each point lies above the line. */
  readonly residuals: readonly number[];
}

/**
 * The trend of a log: a least-squares line and a median-of-slopes line through size against days
 * since the first day (never against the number of the reading), with what is left over. Points
 * may come in any order; the middle one of a day counts (`middleOfDay`).
 *
 * Plain numbers are in the unit given, or that of the last point. Logs in mixed units are exact on
 * one scale and allowed, but flagged. Throws when a length is asked for in counts or the reverse.
 * Errors: `too-few` days with a reading (5 are needed), or `too-short` a time (7 days from first
 * to last), as for a prediction (common practice, no source).
 * @example
 * trendOf([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 5 } }
 */
export const trendOf = (
  points: readonly GrowthPoint[],
  options: { readonly unit?: Unit } = {},
): Result<Trend, TrendError> => {
  const inOrder = onePointPerDay(points);
  const first = inOrder.at(0);
  const last = inOrder.at(-1);
  if (!first || !last || inOrder.length < trendNeeds.readings) {
    return failed({ kind: 'too-few', have: inOrder.length, need: trendNeeds.readings });
  }
  const spanDays = daysBetween(first.day, last.day);
  if (spanDays < trendNeeds.days) {
    return failed({ kind: 'too-short', days: spanDays, need: trendNeeds.days });
  }

  const unit = options.unit ?? last.unit;
  if (isLengthUnit(unit) !== isLengthUnit(last.unit)) {
    throw new Error(`A log in ${last.unit} cannot be told in ${unit}`);
  }
  const exactInUnit = exactPerUnit(unit);
  const changes = changesBetween(inOrder);
  const daysSinceFirst = inOrder.map((point) => daysBetween(first.day, point.day));
  // Lines are fitted to whole exact numbers, which keeps the dust of binary fractions out of them.
  const exacts = inOrder.map((point) => point.exact);
  const squares = sure(leastSquares(daysSinceFirst, exacts));
  const slopes = sure(medianOfSlopes(daysSinceFirst, exacts));
  const inUnit = (line: Line): TrendLine => ({
    growthPerDay: line.slope / exactInUnit,
    onFirstDay: line.intercept / exactInUnit,
    residuals: residualsOf(line, daysSinceFirst, exacts).map((exact) => exact / exactInUnit),
  });
  const marksFromFine = inOrder
    .map((point) => point.mark)
    .sort((one, other) => markById(one).exact - markById(other).exact);
  const values = exacts.map((exact) => exact / exactInUnit);
  return ok({
    unit,
    points: inOrder,
    firstDay: first.day,
    spanDays,
    daysSinceFirst,
    values,
    gaps: changes.map((change) => change.gapDays),
    leastSquares: inUnit(squares),
    medianOfSlopes: inUnit(slopes),
    rSquared: rSquaredOf(squares, daysSinceFirst, exacts),
    smallest: Math.min(...values),
    largest: Math.max(...values),
    medianGrowthPerDay:
      sure(median(changes.map((change) => change.exact / change.gapDays))) / exactInUnit,
    finestMark: marksFromFine.at(0) as MarkId,
    coarsestMark: marksFromFine.at(-1) as MarkId,
    unitsMixed: inOrder.some((point) => point.unit !== last.unit),
  });
};

/** Five different days with whole numbers always have a line and a median. */
const sure = <Value>(result: Result<Value, UndefinedStatistic>): Value => {
  if (!result.ok) throw new Error(`No trend for a log that is long enough: ${result.error.kind}`);
  return result.value;
};

export type TrendError =
  | { readonly kind: 'too-few'; readonly have: number; readonly need: 5 }
  | { readonly kind: 'too-short'; readonly days: number; readonly need: 7 };
