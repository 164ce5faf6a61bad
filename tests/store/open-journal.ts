import { deleteDB, openDB } from 'idb';
import { openIndexedDbJournalStore, type JournalStore } from '#store';
import { value, type Journal } from './journal-store-contract';

let journalCount = 0;

/** A journal of its own in the browser's database, for one test. */
export const newDatabaseName = (): string =>
  `morning-measure-test-${Date.now()}-${(journalCount += 1)}`;

export function newIndexedDbJournal(databaseName = newDatabaseName()): Journal & {
  readonly databaseName: string;
} {
  const opened: JournalStore[] = [];
  return {
    databaseName,
    async open() {
      const store = await value(openIndexedDbJournalStore({ databaseName }));
      opened.push(store);
      return store;
    },
    async plant(record) {
      const database = await openDB(databaseName);
      await database.add('entries', record);
      database.close();
    },
    async remove() {
      for (const store of opened) store.close();
      await deleteDB(databaseName);
    },
  };
}
