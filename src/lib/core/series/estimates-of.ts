import type { CivilDay } from '#core/calendar';
import {
  compareEntries,
  type Estimate,
  type Notebook,
  type PersonId,
  type Reading,
  type SpecimenId,
} from '#core/journal';
import { canCompare, missOf, type Miss } from './miss-of';

/** An estimate, and how it came out once the thing was measured. */
export type EstimateOutcome = AnsweredEstimate | UnansweredEstimate;

export interface AnsweredEstimate extends Miss {
  readonly estimate: Estimate;
  readonly reading: Reading;
}

export interface UnansweredEstimate {
  readonly estimate: Estimate;
  readonly reading: null;
}

/**
 * The estimates of a specimen in the order they were made, each with the reading that answered it:
 * the first one of the specimen that was written after it, on its day, by the same author (nobody
 * named counts as one author). A correction of that reading changes the miss, not the answer.
 * What was taken back, estimate or reading, is left out, and a count never answers a length.
 * @example
 * estimatesOf(foldEntries([]), 'no-such-bean') // => []
 */
export const estimatesOf = (
  notebook: Notebook,
  specimenId: SpecimenId,
): readonly EstimateOutcome[] => {
  const readings = notebook.logBySpecimen.get(specimenId)?.readings ?? [];
  const standing = readings.filter((reading) => reading.takenBack === null);
  return (notebook.estimates.get(specimenId) ?? [])
    .filter((estimate) => estimate.takenBack === null)
    .map((estimate) => outcomeOf(estimate, standing));
};

/**
 * Whether an estimate has been measured.
 * @example
 * isAnswered({ estimate: {}, reading: null }) // => false
 */
export const isAnswered = (outcome: EstimateOutcome): outcome is AnsweredEstimate =>
  outcome.reading !== null;

/**
 * The estimates of one person over every specimen, in the order they were made; null for those
 * that nobody put a name to. Guesses are never set beside those of somebody else.
 * @example
 * estimatesBy(foldEntries([]), null) // => []
 */
export const estimatesBy = (
  notebook: Notebook,
  author: PersonId | null,
): readonly EstimateOutcome[] =>
  [...notebook.estimates.keys()]
    .flatMap((specimenId) => estimatesOf(notebook, specimenId))
    .filter(({ estimate }) => estimate.author === author)
    .sort((one, other) => compareEntries(one.estimate, other.estimate));

/**
 * The estimate somebody made for that day that still waits for its reading; of several the last.
 * @example
 * openEstimate(foldEntries([]), 'no-such-bean', '2026-03-09', null) // => null
 */
export const openEstimate = (
  notebook: Notebook,
  specimenId: SpecimenId,
  day: CivilDay,
  author: PersonId | null,
): Estimate | null =>
  estimatesOf(notebook, specimenId).findLast(
    ({ estimate, reading }) =>
      reading === null && estimate.day === day && estimate.author === author,
  )?.estimate ?? null;

const outcomeOf = (estimate: Estimate, readings: readonly Reading[]): EstimateOutcome => {
  const reading = readings.find(
    (each) =>
      each.day === estimate.day &&
      each.author === estimate.author &&
      compareEntries(each, estimate) > 0 &&
      canCompare(estimate.measured, each.counted),
  );
  return reading
    ? { estimate, reading, ...missOf(estimate.measured, reading.counted) }
    : { estimate, reading: null };
};
