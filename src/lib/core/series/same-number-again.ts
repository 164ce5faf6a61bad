import { daysBetween } from '#core/calendar';
import { exactPerUnit, markById } from '#core/measure';
import type { SameNumberAgain } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { plausibleWindow } from './plausible-window';
import type { SeriesPoint } from './series';

/** Asked at the fourth day with the number, and not again at the fifth. */
const askedAtDays = 4;

/**
 * How fast the plant has to have grown up to the day the number was first read: faster than a
 * plant that stops of itself. Found by simulation (tests/core/series/doubt-simulation.long.test.ts).
 */
const fastPerDayExact = 1.5 * exactPerUnit('cm');

/**
 * Whether the same number is written for the fourth day in a row although the plant grew fast
 * just before: one doubt, or none. Whole inches may well stand still that long and are not asked
 * about. Not part of the public door.
 *
 * @param before one number for each earlier day, in order
 */
export function sameNumberAgain(
  before: readonly SeriesPoint[],
  { day, measured }: DoubtCandidate,
): readonly SameNumberAgain[] {
  if (markById(measured.mark).exact >= exactPerUnit('in')) return [];
  const from = before.length - (askedAtDays - 1);
  const first = before[from];
  if (!first || before[from - 1]?.exact === measured.exact) return [];
  const isSame = before.slice(from).every(({ exact }) => exact === measured.exact);
  if (!isSame || daysBetween(first.day, day) < askedAtDays - 1) return [];
  const growth = plausibleWindow(before.slice(0, from + 1), { day, measured })?.growthPerDayExact;
  if (growth === undefined || growth < fastPerDayExact) return [];
  return [
    {
      ...{ kind: 'same-number-again', days: askedAtDays, since: first.day },
      growthPerDayBeforeExact: growth,
    },
  ];
}
