import type { CivilDay } from '#core/calendar';
import { middleReading, type EntryDraft } from '#core/journal';
import { doubtsAbout, questionsAboutEntry, type EntryQuestion, type Series } from '#core/series';

/**
 * What is asked before a reading is written. A number that will be asked about when it is written
 * down is not asked about here too: once is enough, and the later question knows more.
 */
export function questionsBefore(
  entry: Extract<EntryDraft, { kind: 'reading-taken' }>,
  today: CivilDay,
  series: Series,
): readonly EntryQuestion[] {
  const measured = middleReading([entry.measured, ...(entry.again ?? [])]);
  const questions = questionsAboutEntry(measured, entry.day, today, series);
  const isDoubted = () => doubtsAbout({ ...entry, measured }, series, []).length > 0;
  return questions.some(isAboutTheNumber) && isDoubted()
    ? questions.filter((question) => !isAboutTheNumber(question))
    : questions;
}

const isAboutTheNumber = ({ kind }: EntryQuestion): boolean => kind === 'past-the-ruler';
