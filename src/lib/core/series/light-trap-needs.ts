import { daysBetween, type CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { fairTestOf, lightTrapDays } from './fair-test';
import { secondMeasuresDue } from './second-measures-due';
import type { Series } from './series';

/** What a light test still lacks before its heights may be talked about. */
export type LightTrapNeed = 'second-measure' | 'three-weeks';

/**
 * What is still missing before anybody asks which of two plants did better in a test where light
 * differs: something looked at beside the height of every plant that is up, and three weeks from
 * the first height on, because a seedling in the dark is the taller one at first (common practice,
 * no source). Nothing is missing where light does not differ.
 *
 * @param allSeries the logs of one investigation
 * @example
 * lightTrapNeeds(foldEntries([]), [], '2026-03-09') // => []
 */
export const lightTrapNeeds = (
  notebook: Notebook,
  allSeries: readonly Series[],
  today: CivilDay,
): readonly LightTrapNeed[] => {
  const [any] = allSeries;
  const test = any && fairTestOf(notebook, any.investigation.id);
  if (!test?.lightTrap) return [];
  const up = allSeries.filter(({ points }) => points.some(({ day }) => day <= today));
  const firstDay = up
    .map(({ points }) => points[0]!.day)
    .reduce<CivilDay | null>((first, day) => (first && first < day ? first : day), null);
  const isLookedAt = (series: Series): boolean =>
    secondMeasures(notebook, series, today).some(({ lastDay }) => lastDay !== null);
  const needs: LightTrapNeed[] = [];
  if (up.length === 0 || !up.every(isLookedAt)) needs.push('second-measure');
  if (!firstDay || daysBetween(firstDay, today) < lightTrapDays) needs.push('three-weeks');
  return needs;
};

/** Also of a log that has ended: what was looked at stays looked at. */
const secondMeasures = (notebook: Notebook, series: Series, today: CivilDay) =>
  secondMeasuresDue(
    notebook,
    {
      ...series,
      specimen: { ...series.specimen, ended: null },
      investigation: { ...series.investigation, ended: null },
    },
    today,
  );
