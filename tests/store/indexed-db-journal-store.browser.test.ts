import { describeJournalStore } from './journal-store-contract';
import { newIndexedDbJournal } from './open-journal';

describeJournalStore('in IndexedDB', async () => newIndexedDbJournal());
