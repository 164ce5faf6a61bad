import { openIndexedDbJournalStore, type IndexedDbOptions } from './indexed-db-journal-store';
import type { JournalStore, OpenError } from './journal-store';

/**
 * Opens the journal kept on this device. Where that cannot be had (a private window, storage
 * switched off, a newer program's journal, another tab in the way) there is a journal in memory
 * to work with, and the reason, so that the page can say that nothing will be kept. A journal
 * in memory is empty: what is on the device stays untouched.
 */
export async function openJournalStore(options?: IndexedDbOptions): Promise<OpenedStore> {
  const opened = await openIndexedDbJournalStore(options);
  if (opened.ok) return { store: opened.value, fallback: null };
  // Few need it, so nobody else is sent it.
  const { openMemoryJournalStore } = await import('./memory-journal-store');
  return { store: openMemoryJournalStore(), fallback: { reason: opened.error } };
}

export interface OpenedStore {
  readonly store: JournalStore;
  /** Null where entries are kept on this device; otherwise why they are not. */
  readonly fallback: { readonly reason: OpenError } | null;
}
