import { compareDays, type CivilDay } from '#core/calendar';
import { markById, type MarkId, type Unit } from '#core/measure';

/** One number of a log: a length in whole nanometres (or a count of things) on one day. */
export interface GrowthPoint {
  readonly day: CivilDay;
  /** Whole nanometres for a length, whole things for a count. */
  readonly exact: number;
  /** The unit it was read in. */
  readonly unit: Unit;
  /** The mark it was read to. */
  readonly mark: MarkId;
}

/**
 * The middle one of several points of one day, by size: of three the second, of four the second
 * (the lower of the two in the middle), so that the answer is always something that was read and
 * nothing has to be added or shared. This is the family rule "read three times, keep the middle
 * one" (common practice, no source). Points of equal size are told apart by mark and unit, so that
 * the order they come in never matters.
 * @example
 * middleOfDay([{ day: '2026-03-09', exact: 90000000, unit: 'cm', mark: '1 cm' }, { day: '2026-03-09', exact: 70000000, unit: 'cm', mark: '1 cm' }, { day: '2026-03-09', exact: 80000000, unit: 'cm', mark: '1 cm' }]).exact // => 80000000
 */
export const middleOfDay = <Point extends GrowthPoint>(
  points: readonly [Point, ...Point[]],
): Point => {
  const inOrder = [...points].sort(bySize);
  return inOrder[Math.floor((inOrder.length - 1) / 2)] as Point;
};

/**
 * The points in order of days with one for each day: the middle one where a day has several.
 * Throws when counts and lengths are mixed, since one log has one quantity.
 * @example
 * onePointPerDay([{ day: '2026-03-10', exact: 6, unit: 'count', mark: '1' }, { day: '2026-03-09', exact: 4, unit: 'count', mark: '1' }]).map((point) => point.exact) // => [4, 6]
 */
export const onePointPerDay = <Point extends GrowthPoint>(
  points: readonly Point[],
): readonly Point[] => {
  const counts = points.filter((point) => point.unit === 'count').length;
  if (counts !== 0 && counts !== points.length) {
    throw new Error('One log cannot hold both counts and lengths');
  }
  const pointsByDay = new Map<CivilDay, [Point, ...Point[]]>();
  for (const point of points) {
    const sameDay = pointsByDay.get(point.day);
    if (sameDay) sameDay.push(point);
    else pointsByDay.set(point.day, [point]);
  }
  return [...pointsByDay.values()]
    .map(middleOfDay)
    .sort((one, other) => compareDays(one.day, other.day));
};

/** The coarser of two marks: the one with the longer division. Not part of the public door. */
export const coarserMark = (one: MarkId, other: MarkId): MarkId =>
  markById(one).exact >= markById(other).exact ? one : other;

const bySize = (one: GrowthPoint, other: GrowthPoint): number =>
  one.exact - other.exact ||
  markById(one.mark).exact - markById(other.mark).exact ||
  Number(one.unit > other.unit) - Number(one.unit < other.unit);
