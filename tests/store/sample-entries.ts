import { stampOf, type JournalEntry } from '#core/journal';

/** The n-th of a row of made-up notes; `id` and `at` follow n. */
export const noteEntry = (n: number, text = `The bean has ${n} leaves`): JournalEntry =>
  ({
    id: `0195a000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`,
    at: stampOf(Date.UTC(2026, 2, 2) + n * 1000),
    device: '0195a000-0000-7000-9000-000000000001',
    author: null,
    kind: 'note-written',
    v: 1,
    day: '2026-03-02',
    text,
  }) as JournalEntry;

export const noteEntries = (first: number, last: number): readonly JournalEntry[] =>
  Array.from({ length: last - first + 1 }, (_, index) => noteEntry(first + index));
