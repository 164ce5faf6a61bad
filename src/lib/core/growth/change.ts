import { failed, ok, type Result } from '#core/base';
import { daysBetween, type CivilDay } from '#core/calendar';
import { exactPerUnit, type Unit } from '#core/measure';
import { onePointPerDay, type GrowthPoint } from './growth-point';
import { minimumGapDays } from './minimum-gap-days';

/** What changed from one reading to a later one. It always carries its gap in days. */
export interface Change {
  readonly from: GrowthPoint;
  readonly to: GrowthPoint;
  /** Civil days from the one to the other, 1 or more. */
  readonly gapDays: number;
  /** The later less the earlier: whole nanometres or things; negative when it became less. */
  readonly exact: number;
  readonly perDay: PerDay;
  /** The two were read in different units: the difference is right, but no child can subtract it. */
  readonly unitsMixed: boolean;
  /** The gap is long enough for the coarser of the two marks: see `minimumGapDays`. */
  readonly longEnough: boolean;
}

/**
 * Growth per day as an exact share: `exact` over `days`, not reduced and never rounded. It is
 * shared by the days that passed, not by the number of readings: Friday to Monday is 3.
 */
export interface PerDay {
  readonly exact: number;
  readonly days: number;
}

/**
 * The change from each reading to the next, in order of days. The points may come in any order;
 * where a day has several, the middle one counts (`middleOfDay`). Fewer than two days with a
 * reading have no change between them.
 * @example
 * changesBetween([{ day: '2026-03-09', exact: 4, unit: 'count', mark: '1' }, { day: '2026-03-06', exact: 2, unit: 'count', mark: '1' }]).map((change) => change.perDay) // => [{ exact: 2, days: 3 }]
 */
export const changesBetween = (points: readonly GrowthPoint[]): readonly Change[] => {
  const inOrder = onePointPerDay(points);
  return inOrder.slice(1).map((to, index) => changeFrom(inOrder[index] as GrowthPoint, to));
};

/**
 * The change between two days that both have a reading; nothing is guessed for a day without one.
 * Errors: `no-reading` with the days that have none; `not-after` when the second day is not later.
 * @example
 * growthBetween([{ day: '2026-03-06', exact: 2, unit: 'count', mark: '1' }], '2026-03-06', '2026-03-09') // => { ok: false, error: { kind: 'no-reading', days: ['2026-03-09'] } }
 */
export const growthBetween = (
  points: readonly GrowthPoint[],
  fromDay: CivilDay,
  toDay: CivilDay,
): Result<Change, GrowthBetweenError> => {
  if (daysBetween(fromDay, toDay) <= 0) return failed({ kind: 'not-after', fromDay, toDay });
  const inOrder = onePointPerDay(points);
  const from = inOrder.find((point) => point.day === fromDay);
  const to = inOrder.find((point) => point.day === toDay);
  if (from && to) return ok(changeFrom(from, to));
  return failed({
    kind: 'no-reading',
    days: [...(from ? [] : [fromDay]), ...(to ? [] : [toDay])],
  });
};

/**
 * The change from the first reading to the last: its `perDay` is the growth per day of the whole
 * log. Needs readings on two days.
 * @example
 * growthPerDay([{ day: '2026-03-09', exact: 4, unit: 'count', mark: '1' }]) // => { ok: false, error: { kind: 'too-few', have: 1, need: 2 } }
 */
export const growthPerDay = (
  points: readonly GrowthPoint[],
): Result<Change, { readonly kind: 'too-few'; readonly have: number; readonly need: 2 }> => {
  const inOrder = onePointPerDay(points);
  const first = inOrder.at(0);
  const last = inOrder.at(-1);
  if (!first || !last || inOrder.length < 2) {
    return failed({ kind: 'too-few', have: inOrder.length, need: 2 });
  }
  return ok(changeFrom(first, last));
};

/**
 * A share per day as a plain number in a unit, for drawing and for comparing. It may be rounded in
 * the last binary place.
 * @example
 * perDayIn({ exact: 30000000, days: 4 }, 'cm') // => 0.75
 */
export const perDayIn = (perDay: PerDay, unit: Unit): number =>
  perDay.exact / (perDay.days * exactPerUnit(unit));

/** The change between two points of different days, the earlier first. Not in the public door. */
export const changeFrom = (from: GrowthPoint, to: GrowthPoint): Change => {
  const gapDays = daysBetween(from.day, to.day);
  const exact = to.exact - from.exact;
  return {
    from,
    to,
    gapDays,
    exact,
    perDay: { exact, days: gapDays },
    unitsMixed: from.unit !== to.unit,
    longEnough: gapDays >= Math.max(minimumGapDays(from.mark), minimumGapDays(to.mark)),
  };
};

export type GrowthBetweenError =
  | { readonly kind: 'no-reading'; readonly days: readonly CivilDay[] }
  | { readonly kind: 'not-after'; readonly fromDay: CivilDay; readonly toDay: CivilDay };
