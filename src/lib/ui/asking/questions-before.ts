import type { CivilDay } from '#core/calendar';
import type { EntryDraft } from '#core/journal';
import { questionsAboutEntry, type EntryQuestion, type Series } from '#core/series';

/** What is asked before a reading is written: it comes with the box that asks it. */
export const questionsBefore = (
  { measured, day }: Extract<EntryDraft, { kind: 'reading-taken' }>,
  today: CivilDay,
  series: Series,
): readonly EntryQuestion[] => questionsAboutEntry(measured, day, today, series);
