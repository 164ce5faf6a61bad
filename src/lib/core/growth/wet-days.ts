import type { CivilDay } from '#core/calendar';
import { exactPerUnit, markById } from '#core/measure';
import type { SeriesPoint } from '#core/series';

/** How many days were wet. What counts as wet differs, so each usual threshold is told apart. */
export interface WetDays {
  /** Days that have a reading of their own. */
  readonly daysRead: number;
  readonly moreThanNothing: number;
  readonly atLeastAHundredthInch: number;
  readonly atLeastOneMillimetre: number;
  /** Totals of several days: nobody can say on which of them it rained, so none is counted. */
  readonly severalDayTotals: number;
  /** The most rain read for a single day, and on which days; null when none was above 0. */
  readonly wettest: { readonly exact: number; readonly days: readonly CivilDay[] } | null;
}

/**
 * Counts the wet days among the readings that stand for a single day: more than 0; at least
 * 0.01 in, the least a US National Weather Service gauge is read to (0.254 mm); and at least 1 mm
 * (the World Meteorological Organization's "days with precipitation", WMO-No. 1203, from memory).
 * Two readings of one day add up. A trace is no reading: it is wet, and counted by none of these.
 * @example
 * wetDays([{ day: '2026-03-02', exact: 900000, unit: 'mm', mark: '0.1 mm', spanDays: 1 }, { day: '2026-03-03', exact: 0, unit: 'mm', mark: '0.1 mm', spanDays: 1 }]) // => { daysRead: 2, moreThanNothing: 1, atLeastAHundredthInch: 1, atLeastOneMillimetre: 0, severalDayTotals: 0, wettest: { exact: 900000, days: ['2026-03-02'] } }
 */
export const wetDays = (points: readonly SeriesPoint[]): WetDays => {
  const exactByDay = new Map<CivilDay, number>();
  const single = points.filter(({ spanDays }) => spanDays === 1);
  for (const { day, exact } of single) exactByDay.set(day, (exactByDay.get(day) ?? 0) + exact);
  const amounts = [...exactByDay.values()];
  const countFrom = (least: number): number => amounts.filter((exact) => exact >= least).length;
  const most = amounts.reduce((largest, exact) => Math.max(largest, exact), 0);
  return {
    daysRead: amounts.length,
    moreThanNothing: amounts.filter((exact) => exact > 0).length,
    atLeastAHundredthInch: countFrom(markById('0.01 in').exact),
    atLeastOneMillimetre: countFrom(exactPerUnit('mm')),
    severalDayTotals: points.length - single.length,
    wettest:
      most > 0
        ? {
            exact: most,
            days: [...exactByDay.keys()].filter((day) => exactByDay.get(day) === most),
          }
        : null,
  };
};
