import type { CivilDay } from '#core/calendar';
import type { Reading } from '#core/journal';
import type { Measured } from '#core/measure';
import { questionsAboutEntry, type EntryQuestion } from './entry-questions';
import type { Series } from './series';

/**
 * The questions about a correction before it is written. Only what it changes is asked about: a
 * reading whose number is fixed is not asked about its day again, and never whether the day
 * should keep both.
 *
 * @param reading the reading as it stands
 * @param to what is to be written beside it
 * @example
 * questionsAboutCorrection({ id: 'r', day: '2026-03-09', counted: { exact: 1 } }, { day: '2026-03-11', measured: { exact: 1 } }, '2026-03-10', { specimen: { startedOn: '2026-03-02' }, investigation: { quantity: 'shadow' }, days: [], points: [] }) // => [{ kind: 'day-not-come-yet', day: '2026-03-11', today: '2026-03-10' }]
 */
export function questionsAboutCorrection(
  reading: Reading,
  to: { readonly day: CivilDay; readonly measured: Measured },
  today: CivilDay,
  series: Series,
): readonly EntryQuestion[] {
  const movesDay = to.day !== reading.day;
  const changesNumber = to.measured.exact !== reading.counted.exact;
  return questionsAboutEntry(to.measured, to.day, today, withoutReading(series, reading)).filter(
    (question) => (question.kind === 'past-the-ruler' ? changesNumber : movesDay),
  );
}

/** The series as it would be without the reading: what stands beside the correction. */
const withoutReading = (series: Series, { id }: Reading): Series => ({
  ...series,
  days: series.days.map((day) =>
    day.readings.some((each) => each.id === id)
      ? { ...day, readings: day.readings.filter((each) => each.id !== id) }
      : day,
  ),
  points: series.points.filter((point) => point.reading !== id),
});
