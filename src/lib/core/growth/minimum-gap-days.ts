import { markById, type MarkId } from '#core/measure';

/**
 * How many days two readings must lie apart before their difference says something about growth
 * per day, given the mark they were read to.
 *
 * Each reading is rounded to its mark, so a difference can be off by a whole mark, and over one day
 * that is as much as a bean grows. Simulated growth per day was off by about 0.2 to 0.3 cm at these
 * gaps (derived for this project): 3 days for centimetres, half inches and anything finer, 5 days
 * for whole inches. Coarser marks keep the whole inch's proportion, 5 days for each inch of mark
 * (our choice). Things that are counted are not rounded: 1 day.
 * @example
 * minimumGapDays('1 cm') // => 3
 * minimumGapDays('1/2 in') // => 3
 * minimumGapDays('1 in') // => 5
 */
export const minimumGapDays = (mark: MarkId): number => {
  const { exact, unit } = markById(mark);
  if (unit === 'count') return 1;
  if (exact <= markById('1/2 in').exact) return 3;
  return Math.ceil((5 * exact) / markById('1 in').exact);
};
