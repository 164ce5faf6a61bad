import { readBackup } from '#core/exchange';
import { openMemoryJournalStore, type JournalStore } from '#store';

/** The sample in a store of its own, or null where it cannot be fetched or read. */
export async function openSampleStore(fetchFile: typeof fetch): Promise<JournalStore | null> {
  try {
    const answer = await fetchFile('/sample-notebook.json');
    const backup = readBackup(await answer.text());
    if (!backup.ok) return null;
    const store = openMemoryJournalStore();
    await store.append(backup.value.entries);
    return store;
  } catch {
    return null;
  }
}
