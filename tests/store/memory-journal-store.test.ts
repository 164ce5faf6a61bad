import { newMemoryShelf, openMemoryJournalStore } from '#store';
import { describeJournalStore } from './journal-store-contract';

describeJournalStore('in memory', async () => {
  const shelf = newMemoryShelf();
  return {
    open: async () => openMemoryJournalStore(shelf),
    plant: async (record) => void shelf.kept.set(record.id, record),
    remove: async () => {},
  };
});
