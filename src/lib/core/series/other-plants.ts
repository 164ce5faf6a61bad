import type { Slip } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { daysBefore, type NumberHistory } from './number-history';
import { isWithin, plausibleWindows } from './plausible-window';
import type { Series } from './series';

/** Another log that a number may have been meant for. */
export interface OtherLog {
  readonly specimen: Series['specimen'];
  readonly history: NumberHistory;
}

/** The other plants whose height it could well be. Not part of the public door. */
export const otherPlants = (
  candidate: DoubtCandidate,
  others: readonly OtherLog[],
): readonly Slip[] =>
  others.flatMap(({ specimen: { id, name }, history }) => {
    const before = daysBefore(history, candidate.day).map((day) => day.middle);
    const [window, ...more] = plausibleWindows(before, candidate);
    if (!window) return [];
    const fits = [window, ...more].some((each) => isWithin(each, candidate.measured.exact));
    return fits ? [{ kind: 'other-plant', specimen: id, name, itsLast: window.last }] : [];
  });
