import { daysBetween } from '#core/calendar';
import { exactPerUnit, systemOf } from '#core/measure';
import type { BigJump, Doubt, PastTheCap, Shrank } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { clearExplanations, explanations } from './doubt-explanations';
import { daysBefore, type NumberHistory } from './number-history';
import type { OtherLog } from './other-plants';
import {
  isWithin,
  plausibleWindow,
  plausibleWindows,
  type PlausibleWindow,
} from './plausible-window';
import { sameNumberAgain } from './same-number-again';
import type { Series } from './series';

/** The doubts about the height of a plant. Not part of the public door. */
export function plantDoubts(
  candidate: DoubtCandidate,
  specimen: Series['specimen'],
  history: NumberHistory,
  others: readonly OtherLog[],
): readonly Doubt[] {
  const before = daysBefore(history, candidate.day).map((day) => day.middle);
  const window = plausibleWindow(before, candidate);
  if (!window) return pastTheCap(candidate, specimen);
  const again = sameNumberAgain(before, candidate);
  const { exact } = candidate.measured;
  if (isWithin(window, exact)) return [...clearExplanations(candidate, window, specimen), ...again];
  const windows = plausibleWindows(before, candidate);
  if (windows.some((each) => isWithin(each, exact))) return again;
  const slips = explanations(candidate, windows, specimen, others);
  const shrank = slips.some(({ kind }) => kind === 'zero-or-missed')
    ? []
    : shrankBy(candidate, window);
  return [...slips, ...again, ...shrank, ...(slips.length === 0 ? bigJump(candidate, window) : [])];
}

/** A shrink of one unit is the noise of reading, and never asked about. */
function shrankBy(
  { measured }: DoubtCandidate,
  { last, unitExact }: PlausibleWindow,
): readonly Shrank[] {
  const lessExact = last.exact - measured.exact;
  return lessExact >= 2 * unitExact ? [{ kind: 'shrank', last, lessExact }] : [];
}

function bigJump(
  { measured }: DoubtCandidate,
  { last, gapDays, highExact }: PlausibleWindow,
): readonly BigJump[] {
  const moreExact = measured.exact - last.exact;
  return measured.exact > highExact ? [{ kind: 'big-jump', last, moreExact, gapDays }] : [];
}

/** The first two numbers are held against nothing but this: 100 cm, or 40 in, in the first month. */
function pastTheCap(
  { day, measured }: DoubtCandidate,
  { startedOn }: Series['specimen'],
): readonly PastTheCap[] {
  const capExact =
    systemOf(measured.unit) === 'customary' ? 40 * exactPerUnit('in') : 100 * exactPerUnit('cm');
  const isEarly = daysBetween(startedOn, day) <= firstMonthDays;
  return isEarly && measured.exact > capExact ? [{ kind: 'past-the-cap', capExact }] : [];
}

const firstMonthDays = 31;
