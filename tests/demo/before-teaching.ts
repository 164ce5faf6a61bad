import type { JournalEntry } from '#core/journal';

const taught = new Set<string>([
  ...['lesson-made', 'lesson-changed', 'lesson-given', 'question-answered', 'question-written'],
  ...['review-answered', 'evidence-noted', 'drawing-begun', 'drawing-saved', 'drawing-finished'],
]);

/** A made-up notebook before anybody drew or taught with it: what is, is each test's own. */
export const beforeTeaching = (entries: readonly JournalEntry[]): readonly JournalEntry[] =>
  entries.filter(({ kind }) => !taught.has(kind));
