export { openIndexedDbJournalStore, type IndexedDbOptions } from './indexed-db-journal-store';
export type {
  Appended,
  DamagedRecord,
  JournalStore,
  Kept,
  OpenError,
  PutAway,
  StoreError,
  WaitingError,
} from './journal-store';
export { keepPersistent, type Persistence } from './keep-persistent';
export { newMemoryShelf, openMemoryJournalStore, type MemoryShelf } from './memory-journal-store';
export { openJournalStore, type OpenedStore } from './open-journal-store';
export { readRoom, type Room } from './read-room';
