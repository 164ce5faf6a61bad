import type { CivilDay } from '#core/calendar';
import type { Series } from '#core/series';

/** A log cut to some of its days, both included. Not part of the public door. */
export const cutToDays = (
  series: Series,
  { from, to }: { readonly from: CivilDay; readonly to: CivilDay },
): Series => {
  const isChosen = ({ day }: { readonly day: CivilDay }): boolean => from <= day && day <= to;
  return {
    ...series,
    days: series.days.filter(isChosen),
    points: series.points.filter(isChosen),
  };
};
