import { failed, ok, type Result } from '#core/base';
import { addDays, daysBetween, type CivilDay } from '#core/calendar';
import { changeFrom, type Change } from './change';
import { onePointPerDay, type GrowthPoint } from './growth-point';
import { minimumGapDays } from './minimum-gap-days';

/**
 * The latest change that can be told to a child: between two readings in one unit, with a gap long
 * enough for their marks (`minimumGapDays`). It ends as late as it can, and of those that end
 * there it is the shortest.
 * Errors: `too-few` days with a reading; `too-soon`, with the first day on which a reading in the
 * unit of the newest pair would be far enough from an earlier one; `units-mixed`, when no two
 * readings have the same unit.
 * @example
 * latestChange([{ day: '2026-03-03', exact: 2, unit: 'count', mark: '1' }, { day: '2026-03-06', exact: 5, unit: 'count', mark: '1' }]).value.gapDays // => 3
 * latestChange([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 2 } }
 */
export const latestChange = (points: readonly GrowthPoint[]): Result<Change, LatestChangeError> => {
  const inOrder = onePointPerDay(points);
  if (inOrder.length < 2) return failed({ kind: 'too-few', have: inOrder.length, need: 2 });
  for (let last = inOrder.length - 1; last > 0; last -= 1) {
    const change = shortestTrusted(inOrder, last);
    if (change) return ok(change);
  }
  const paired = inOrder.findLast(
    (point, index) => inOrder.findIndex((other) => other.unit === point.unit) < index,
  );
  if (!paired) return failed({ kind: 'units-mixed' });
  const measureOn = inOrder
    .filter((point) => point.unit === paired.unit)
    .map((point) => addDays(point.day, minimumGapDays(point.mark)))
    .reduce((earliest, day) => (day < earliest ? day : earliest));
  return failed({ kind: 'too-soon', measureOn });
};

/**
 * The log in steps that are each long enough to trust: from the first reading to the next one far
 * enough away, and on from there. What is left at the end is too short and not told. Fewer than
 * two such readings have no step.
 * @example
 * longEnoughChanges([{ day: '2026-03-03', exact: 2, unit: 'count', mark: '1' }, { day: '2026-03-06', exact: 5, unit: 'count', mark: '1' }]).map((change) => change.exact) // => [3]
 */
export const longEnoughChanges = (points: readonly GrowthPoint[]): readonly Change[] => {
  const [first, ...others] = onePointPerDay(points);
  if (!first) return [];
  const changes: Change[] = [];
  let from = first;
  for (const to of others) {
    const change = changeFrom(from, to);
    if (!change.longEnough) continue;
    changes.push(change);
    from = to;
  }
  return changes;
};

const shortestTrusted = (inOrder: readonly GrowthPoint[], last: number): Change | undefined => {
  const to = inOrder[last] as GrowthPoint;
  for (let index = last - 1; index >= 0; index -= 1) {
    const from = inOrder[index] as GrowthPoint;
    if (from.unit !== to.unit) continue;
    const neededDays = Math.max(minimumGapDays(from.mark), minimumGapDays(to.mark));
    if (daysBetween(from.day, to.day) >= neededDays) return changeFrom(from, to);
  }
  return undefined;
};

export type LatestChangeError =
  | { readonly kind: 'too-few'; readonly have: number; readonly need: 2 }
  | { readonly kind: 'too-soon'; readonly measureOn: CivilDay }
  | { readonly kind: 'units-mixed' };
