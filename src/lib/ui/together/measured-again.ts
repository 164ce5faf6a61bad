import type { Series, SpreadOfDay } from '#core/series';

/**
 * Whether somebody measured again that day in the same unit: the table has one number of each then,
 * and the one to draw from has every number that is not crossed out.
 */
export const measuredAgain = (
  { days }: Pick<Series, 'days'>,
  { day, unit, readings }: Pick<SpreadOfDay, 'day' | 'unit' | 'readings'>,
): boolean => {
  const found = days.find((each) => each.day === day)?.readings ?? [];
  const all = found.filter(({ counted }) => counted.unit === unit).flatMap((each) => each.all);
  return all.length > readings.length;
};
