import { daysBetween, type CivilDay } from '#core/calendar';
import type { Notebook, SecondMeasure } from '#core/journal';
import { fairTestOf } from './fair-test';
import type { Series } from './series';

export interface SecondMeasureDue {
  readonly measure: SecondMeasure;
  /** The last day it was written down; null when it never was. */
  readonly lastDay: CivilDay | null;
  /** Days with a height since then, in order: those that lack it. No list of things to catch up. */
  readonly daysWithout: readonly CivilDay[];
  readonly isDue: boolean;
}

/**
 * The second measures a fair test wants of a specimen, and whether each is due today. Leaves come
 * from the readings, colour and standing from looks. Once a week is enough (common practice, no
 * source): one is due when it was never written down, or last a week ago or more. There are none
 * without a fair test, before the first height, and after the log has ended. Days after today do
 * not count.
 * @example
 * secondMeasuresDue(foldEntries([]), { specimen: { ended: null }, investigation: { id: 'no-such-test', ended: null }, days: [], points: [] }, '2026-03-09') // => []
 */
export const secondMeasuresDue = (
  notebook: Notebook,
  series: Series,
  today: CivilDay,
): readonly SecondMeasureDue[] => {
  const { specimen, investigation } = series;
  if (specimen.ended || investigation.ended) return [];
  const test = fairTestOf(notebook, investigation.id);
  const measured = series.days
    .filter(({ day, readings }) => day <= today && readings.length > 0)
    .map(({ day }) => day);
  if (!test || measured.length === 0) return [];
  return test.second.map((measure) => {
    const noted = daysNoted(notebook, series, measure).filter((day) => day <= today);
    const lastDay = noted.reduce<CivilDay | null>(
      (latest, day) => (latest && latest > day ? latest : day),
      null,
    );
    const daysWithout = measured.filter((day) => lastDay === null || day > lastDay);
    const isDue = lastDay === null || daysBetween(lastDay, today) >= enoughEveryDays;
    return { measure, lastDay, daysWithout, isDue };
  });
};

const daysNoted = (
  notebook: Notebook,
  { specimen, days }: Series,
  measure: SecondMeasure,
): readonly CivilDay[] => {
  if (measure === 'leaves') {
    return days
      .filter(({ readings }) => readings.some((reading) => reading.leaves !== undefined))
      .map(({ day }) => day);
  }
  return (notebook.looks.get(specimen.id) ?? [])
    .filter((look) => look.takenBack === null && look[measure] !== undefined)
    .map(({ day }) => day);
};

const enoughEveryDays = 7;
