import { failed, ok, type Result } from '#core/base';
import { addDays } from '#core/calendar';
import { markById, type MarkId } from '#core/measure';
import { changeFrom, changesBetween, type Change } from './change';
import { coarserMark, onePointPerDay, type GrowthPoint } from './growth-point';

/** The outcome of holding stretches of equal length against each other. */
export interface FastestStretch {
  /**
   * `one-fastest`: one stretch leads clearly. `about-the-same`: two or more are too close to tell.
   * `no-growth`: none of them became more.
   */
  readonly kind: 'one-fastest' | 'about-the-same' | 'no-growth';
  /** The leader, or all that cannot be told from it, in order of days; none for `no-growth`. */
  readonly leaders: readonly Change[];
  /** How many days each compared stretch has. */
  readonly gapDays: number;
  readonly compared: readonly Change[];
  /** Stretches of another length, which it would be unfair to compare: say so when there are any. */
  readonly leftOut: readonly Change[];
  /** The lead that was asked for: this many of the coarsest mark among the compared readings. */
  readonly neededMarks: number;
  readonly coarsestMark: MarkId;
}

/**
 * Between which two neighbouring readings it grew most. Only stretches of equal length are held
 * against each other: all of them when the gaps are equal, else those of the most common gap (of
 * two equally common, the longer, which is the surer). A one-day stretch must lead by 2 marks, a
 * longer one by 1, because a difference of two readings can be off by a whole mark (common practice, no source).
 * Errors: `too-few` (fewer than two stretches); `unequal-gaps` (no two have the same length).
 * @example
 * fastestStretch([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 2 } }
 */
export const fastestStretch = (
  points: readonly GrowthPoint[],
): Result<FastestStretch, FastestStretchError> => {
  const changes = changesBetween(points);
  if (changes.length < 2) return failed({ kind: 'too-few', have: changes.length, need: 2 });
  const gapDays = mostCommonGap(changes);
  const compared = changes.filter((change) => change.gapDays === gapDays);
  if (compared.length < 2) {
    return failed({ kind: 'unequal-gaps', gaps: changes.map((change) => change.gapDays) });
  }
  const leftOut = changes.filter((change) => change.gapDays !== gapDays);
  return ok(compare(compared, leftOut, gapDays));
};

/**
 * The window of so many days in which it grew most, among all windows that begin and end on a day
 * with a reading; windows may overlap. For logs kept daily, where neighbours are too close to
 * compare. Needs two windows.
 * @example
 * fastestWindow([], 7) // => { ok: false, error: { kind: 'too-few', have: 0, need: 2 } }
 */
export const fastestWindow = (
  points: readonly GrowthPoint[],
  windowDays: number,
): Result<FastestStretch, TooFewStretches> => {
  if (!Number.isInteger(windowDays) || windowDays < 1) {
    throw new RangeError(`A window of ${windowDays} days cannot be compared`);
  }
  const inOrder = onePointPerDay(points);
  const pointByDay = new Map(inOrder.map((point) => [point.day, point]));
  const lastDay = inOrder.at(-1)?.day;
  const windows = inOrder.flatMap((from) => {
    const to = lastDay && from.day < lastDay && pointByDay.get(addDays(from.day, windowDays));
    return to ? [changeFrom(from, to)] : [];
  });
  return windows.length < 2
    ? failed({ kind: 'too-few', have: windows.length, need: 2 })
    : ok(compare(windows, [], windowDays));
};

const compare = (
  compared: readonly Change[],
  leftOut: readonly Change[],
  gapDays: number,
): FastestStretch => {
  const coarsestMark = compared.flatMap(({ from, to }) => [from.mark, to.mark]).reduce(coarserMark);
  const neededMarks = gapDays === 1 ? 2 : 1;
  const most = compared.reduce((best, change) => Math.max(best, change.exact), -Infinity);
  const neededLead = neededMarks * markById(coarsestMark).exact;
  const leaders = most > 0 ? compared.filter((change) => most - change.exact < neededLead) : [];
  const kind = most <= 0 ? 'no-growth' : leaders.length === 1 ? 'one-fastest' : 'about-the-same';
  return { kind, leaders, gapDays, compared, leftOut, neededMarks, coarsestMark };
};

const mostCommonGap = (changes: readonly Change[]): number => {
  const countByGap = new Map<number, number>();
  for (const { gapDays } of changes) countByGap.set(gapDays, (countByGap.get(gapDays) ?? 0) + 1);
  const [first] = [...countByGap].sort(
    ([oneGap, oneCount], [otherGap, otherCount]) => otherCount - oneCount || otherGap - oneGap,
  );
  return (first as [number, number])[0];
};

export interface TooFewStretches {
  readonly kind: 'too-few';
  /** How many stretches there are to compare. */
  readonly have: number;
  readonly need: 2;
}

export type FastestStretchError =
  TooFewStretches | { readonly kind: 'unequal-gaps'; readonly gaps: readonly number[] };
