import { openIndexedDbJournalStore } from '#store';
import { noteEntries } from './sample-entries';

/**
 * Runs in a page or a worker of its own, named after its database: appends entries for ever, ten at
 * a time, and reports the last one of every ten that the store said were kept.
 */
const opened = await openIndexedDbJournalStore({ databaseName: self.name });
const report = (message: unknown): void => (self.parent ?? self).postMessage(message);
if (!opened.ok) report({ error: opened.error });
else
  for (let first = 1; ; first += 10) {
    const appended = await opened.value.append(noteEntries(first, first + 9));
    report(appended.ok ? { keptUpTo: first + 9 } : { error: appended.error });
  }

export {};
