import type { Series, SpreadOfDay } from '#core/series';

/** Whether somebody read again that day in the same unit, so that an earlier number is left out. */
export const measuredAgain = (
  { days }: Pick<Series, 'days'>,
  { day, unit, readings }: Pick<SpreadOfDay, 'day' | 'unit' | 'readings'>,
): boolean => {
  const all = days.find((each) => each.day === day)?.readings ?? [];
  return all.filter(({ counted }) => counted.unit === unit).length > readings.length;
};
