import type { DoubtAnswered, Notebook, Reading } from '#core/journal';
import type { Doubt } from './doubt';
import { candidateOf } from './doubt-candidate';
import { doubtsWith, logToDoubt, otherLogsOf } from './doubts-about';
import type { Series } from './series';

/** A reading and what may be asked about it. */
export interface OpenDoubt {
  readonly reading: Reading;
  readonly doubts: readonly [Doubt, ...Doubt[]];
}

/**
 * The readings with a doubt that nobody has settled since their number last changed, the oldest
 * first: the grown-up's list. "I read that" settles it; wanting to look again does not, until the
 * number changes. Each is held against the readings of the days before it only.
 *
 * @param others the logs of the same investigation, this one among them or not
 * @example
 * openDoubts(foldEntries([]), { specimen: { id: 'bean' }, investigation: { quantity: 'plant-height' }, days: [], points: [] }, []) // => []
 */
export const openDoubts = (
  notebook: Pick<Notebook, 'doubtAnswers'>,
  series: Series,
  others: readonly Series[],
): readonly OpenDoubt[] =>
  doubtedReadings(series, others).filter(
    ({ reading }) =>
      !answersSinceChange(notebook, reading).some(({ answer }) => answer === 'read-so'),
  );

/**
 * Every reading with a doubt, answered or not, the oldest first.
 *
 * @example
 * doubtedReadings({ specimen: { id: 'bean' }, investigation: { quantity: 'plant-height' }, days: [], points: [] }, []) // => []
 */
export function doubtedReadings(series: Series, others: readonly Series[]): readonly OpenDoubt[] {
  const log = logToDoubt(series);
  const otherLogs = otherLogsOf(series, others);
  return series.days.flatMap(({ readings }) =>
    readings.flatMap((reading): readonly OpenDoubt[] => {
      const [first, ...more] = doubtsWith(candidateOf(reading), log, otherLogs);
      return first ? [{ reading, doubts: [first, ...more] }] : [];
    }),
  );
}

/**
 * What was answered about a reading since its number last changed. A correction of its day or
 * time alone leaves the answers standing.
 *
 * @example
 * answersSinceChange(foldEntries([]), { id: 'r', counted: { exact: 1 }, crossedOut: [] }) // => []
 */
export function answersSinceChange(
  { doubtAnswers }: Pick<Notebook, 'doubtAnswers'>,
  { id, counted, crossedOut }: Reading,
): readonly DoubtAnswered[] {
  const answers = doubtAnswers.get(id) ?? [];
  const changed = crossedOut.findLast((was, index) => {
    const next = crossedOut[index + 1]?.counted ?? counted;
    return was.counted.exact !== next.exact || was.counted.unit !== next.unit;
  });
  return changed ? answers.filter(({ at }) => at > changed.at) : answers;
}
