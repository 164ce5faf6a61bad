import { isLengthUnit } from '#core/measure';
import type { Doubt } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { numberHistory, type NumberHistory } from './number-history';
import type { OtherLog } from './other-plants';
import { plantDoubts } from './plant-doubts';
import { rainDoubts } from './rain-doubts';
import { shadowDoubts } from './shadow-doubts';
import type { Series } from './series';

/**
 * What is worth asking once about a number that was written: every question can be answered with
 * "yes, that is what I read", and nothing is changed or held back. None for an ordinary number,
 * which is nearly always: "no change" and a shrink of one unit are ordinary.
 *
 * A number is held only against those of earlier days (a shadow, also against that morning). A
 * plain length may be of anything, and a count has no ruler: neither is ever asked about.
 *
 * @param series with or without the number itself, which is left out by its `reading`
 * @param others the logs of the same investigation, this one among them or not
 * @example
 * doubtsAbout({ day: '2026-03-09', measured: { exact: 0, unit: 'cm', mark: '1 cm' }, time: '10:00' }, { specimen: { id: 'stick' }, investigation: { quantity: 'shadow' }, days: [], points: [] }, []) // => [{ kind: 'shadow-zero' }]
 */
export const doubtsAbout = (
  candidate: DoubtCandidate,
  series: Series,
  others: readonly Series[],
): readonly Doubt[] => doubtsWith(candidate, logToDoubt(series), otherLogsOf(series, others));

/** A log made ready, so that many of its numbers can be doubted. Not part of the public door. */
export interface LogToDoubt {
  readonly series: Series;
  readonly history: NumberHistory;
}

/** Not part of the public door. */
export const logToDoubt = (series: Series): LogToDoubt => ({
  series,
  history: numberHistory(series),
});

/** Not part of the public door. */
export const otherLogsOf = (
  { specimen, investigation }: Series,
  others: readonly Series[],
): readonly OtherLog[] =>
  others
    .filter((other) => other.specimen.id !== specimen.id)
    .filter((other) => other.investigation.quantity === investigation.quantity)
    .map((other) => ({ specimen: other.specimen, history: numberHistory(other) }));

/** Not part of the public door. */
export function doubtsWith(
  candidate: DoubtCandidate,
  { series, history }: LogToDoubt,
  others: readonly OtherLog[],
): readonly Doubt[] {
  if (!isLengthUnit(candidate.measured.unit)) return [];
  switch (series.investigation.quantity) {
    case 'plant-height':
      return plantDoubts(candidate, series.specimen, history, others);
    case 'rain':
      return rainDoubts(candidate, history);
    case 'shadow':
      return shadowDoubts(candidate, series.specimen, history);
    case 'length':
    case 'daily-kind':
      return [];
  }
}
