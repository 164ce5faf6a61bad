import { daysBetween } from '#core/calendar';
import { exactPerUnit, markById, systemOf } from '#core/measure';
import type { DoubtCandidate } from './doubt-candidate';
import type { SeriesPoint } from './series';

/** Which heights are believed without a question. All are whole or broken nanometres. */
export interface PlausibleWindow {
  readonly last: SeriesPoint;
  readonly gapDays: number;
  /** Over the last two stretches between days with a number; never below 0. */
  readonly growthPerDayExact: number;
  readonly lowExact: number;
  readonly highExact: number;
  /** Above this, a number that a slip explains well is asked about although it could be. */
  readonly highIfExplainedExact: number;
  /** What it would be if it went on as it did, and how near to that an explanation has to come. */
  readonly expectedExact: number;
  readonly nearExact: number;
  /** One unit of noise: a centimetre, or the coarser mark where that is more (a whole inch). */
  readonly unitExact: number;
}

/**
 * The heights that are believed after those of earlier days, or null with fewer than two of them:
 * the first two numbers of a log have nothing to be held against.
 *
 * No lower than the last by 1.5 cm (0.6 in) or one unit; no higher than the last, and for each day
 * since 2 cm (0.8 in) or 1 3/4 times the growth per day so far, and 2 cm (0.8 in) or a fifth more
 * than the coarser mark. Growth is taken over the last three numbers, end to end. The constants
 * are found by simulation (tests/core/series/doubt-simulation.long.test.ts), not from field data.
 *
 * @param before one number for each earlier day, in order; only the last three are looked at
 * @example
 * plausibleWindow([], { day: '2026-03-09', measured: { exact: 1, unit: 'cm', mark: '1 cm' } }) // => null
 */
export function plausibleWindow(
  before: readonly SeriesPoint[],
  { day, measured }: Pick<DoubtCandidate, 'day' | 'measured'>,
): PlausibleWindow | null {
  const last = before.at(-1);
  const first = before.at(-3) ?? before.at(-2);
  if (!last || !first) return null;
  const inInches = [last, measured].some(({ unit }) => systemOf(unit) === 'customary');
  const { dayExact, slackExact, shrinkExact } = inInches ? inchSizes : centimetreSizes;
  const coarserExact = Math.max(markById(last.mark).exact, markById(measured.mark).exact);
  const unitExact = Math.max(exactPerUnit('cm'), coarserExact);
  const gapDays = daysBetween(last.day, day);
  const growth = (last.exact - first.exact) / daysBetween(first.day, last.day);
  const growthPerDayExact = Math.max(0, growth);
  const upTo = (factor: number, dailyExact: number, extraExact: number): number =>
    last.exact + gapDays * Math.max(dailyExact, factor * growthPerDayExact) + extraExact;
  return {
    ...{ last, gapDays, growthPerDayExact, unitExact },
    lowExact: last.exact - Math.max(shrinkExact, unitExact),
    highExact: upTo(1.75, dayExact, Math.max(slackExact, 1.2 * coarserExact)),
    highIfExplainedExact: upTo(1.5, 0.75 * dayExact, unitExact),
    expectedExact: last.exact + gapDays * growthPerDayExact,
    nearExact: unitExact + (gapDays / 4) * Math.max(dayExact / 2, growthPerDayExact),
  };
}

/**
 * The windows a number may fall in. A last number that was itself out of place (and left standing)
 * must not put the next one out of place too: then the window without it counts as well.
 * Not part of the public door.
 */
export function plausibleWindows(
  before: readonly SeriesPoint[],
  candidate: Pick<DoubtCandidate, 'day' | 'measured'>,
): readonly PlausibleWindow[] {
  const window = plausibleWindow(before, candidate);
  const last = before.at(-1);
  if (!window || !last) return [];
  const without = before.slice(0, -1);
  const ofLast = plausibleWindow(without, { day: last.day, measured: { ...last, text: '' } });
  if (!ofLast || isWithin(ofLast, last.exact)) return [window];
  const older = plausibleWindow(without, candidate);
  return older ? [window, older] : [window];
}

/** Whether a height is believed. Not part of the public door. */
export const isWithin = ({ lowExact, highExact }: PlausibleWindow, exact: number): boolean =>
  exact >= lowExact && exact <= highExact;

const centimetreSizes = {
  dayExact: 2 * exactPerUnit('cm'),
  slackExact: 2 * exactPerUnit('cm'),
  shrinkExact: 1.5 * exactPerUnit('cm'),
};

/** For a log that has any inches: they are the coarser of the two. */
const inchSizes = {
  dayExact: 0.8 * exactPerUnit('in'),
  slackExact: 0.8 * exactPerUnit('in'),
  shrinkExact: 0.6 * exactPerUnit('in'),
};
