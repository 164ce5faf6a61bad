import { isLengthUnit } from '#core/measure';
import type { GrowthPoint } from './growth-point';

/**
 * The points that can be held against the newest one: all lengths, or all counts. A log changes
 * its kind only when its plan is changed from the one to the other; the older points stay in the
 * log, and a page says how many it left out.
 * @example
 * comparablePoints([{ day: '2026-03-09', exact: 4, unit: 'count', mark: '1' }]).leftOut // => 0
 */
export const comparablePoints = <Point extends GrowthPoint>(
  points: readonly Point[],
): { readonly points: readonly Point[]; readonly leftOut: number } => {
  const newest = points.reduce<Point | undefined>(
    (latest, point) => (latest && latest.day > point.day ? latest : point),
    undefined,
  );
  const kept = points.filter(
    (point) => newest && isLengthUnit(point.unit) === isLengthUnit(newest.unit),
  );
  return { points: kept, leftOut: points.length - kept.length };
};
