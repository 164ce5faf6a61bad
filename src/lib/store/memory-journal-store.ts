import { failed, ok, type Result } from '#core/base';
import type { DeviceId, JournalEntry } from '#core/journal';
import { decodeRecords, isReadable } from './decode-records';
import { newDeviceId } from './device-id';
import type { Appended, JournalStore, Kept, PutAway, StoreError } from './journal-store';
import { Listeners } from './listeners';

/** Where stores in memory keep their records. Stores on one shelf are to each other other tabs. */
export interface MemoryShelf {
  readonly device: DeviceId;
  /** By id, in the order they were appended. */
  readonly kept: Map<string, unknown>;
  readonly putAway: Map<string, unknown>;
  putAwayAtMs: number;
  readonly happened: Listeners<MemoryEvent>;
}

export const newMemoryShelf = (): MemoryShelf => ({
  device: newDeviceId(),
  kept: new Map(),
  putAway: new Map(),
  putAwayAtMs: 0,
  happened: new Listeners(),
});

/** A journal that lasts until the window is closed: for tests, and where nothing else is to be had. */
export const openMemoryJournalStore = (shelf = newMemoryShelf()): JournalStore =>
  new MemoryJournalStore(shelf);

class MemoryJournalStore implements JournalStore {
  readonly keeps = 'until-closed';
  readonly device: DeviceId;
  readonly #shelf: MemoryShelf;
  readonly #appended = new Listeners<readonly JournalEntry[]>();
  readonly #replaced = new Listeners<void>();
  readonly #stopHearing: () => void;
  #isClosed = false;

  constructor(shelf: MemoryShelf) {
    this.device = shelf.device;
    this.#shelf = shelf;
    this.#stopHearing = shelf.happened.add(({ by, appended }) => {
      if (by === this) return;
      if (appended === null) this.#replaced.tell();
      else this.#appended.tell(appended);
    });
  }

  readAll(): Promise<Result<Kept, StoreError>> {
    return this.#do(() => decodeRecords(structuredClone([...this.#shelf.kept.values()])));
  }

  append(entries: readonly JournalEntry[]): Promise<Result<Appended, StoreError>> {
    return this.#do(() => {
      const added = structuredClone(entries).filter((entry) => this.#add(entry));
      if (added.length > 0) this.#announce(added);
      return { added: added.length, known: entries.length - added.length };
    });
  }

  onAppendedElsewhere(listener: (entries: readonly JournalEntry[]) => void): () => void {
    return this.#appended.add(listener);
  }

  onReplacedElsewhere(listener: () => void): () => void {
    return this.#replaced.add(listener);
  }

  /** Nothing else closes it. */
  onClosed(): () => void {
    return () => {};
  }

  putAway(atMs: number): Promise<Result<PutAway, StoreError>> {
    return this.#do(() => {
      const { kept, putAway } = this.#shelf;
      for (const [id, record] of kept) putAway.set(id, record);
      kept.clear();
      this.#shelf.putAwayAtMs = atMs;
      this.#announce(null);
      return { atMs, entryCount: putAway.size };
    });
  }

  readPutAway(): Promise<Result<PutAway | null, StoreError>> {
    return this.#do(() => {
      const { putAway, putAwayAtMs } = this.#shelf;
      return putAway.size === 0 ? null : { atMs: putAwayAtMs, entryCount: putAway.size };
    });
  }

  putBack(): Promise<Result<Appended, StoreError>> {
    return this.#do(() => {
      const { kept, putAway } = this.#shelf;
      const back = [...putAway, ...kept];
      const added = putAway.size;
      kept.clear();
      putAway.clear();
      for (const [id, record] of back) kept.set(id, record);
      this.#announce(null);
      return { added, known: 0 };
    });
  }

  erasePutAway(): Promise<Result<null, StoreError>> {
    return this.#do(() => {
      this.#shelf.putAway.clear();
      return null;
    });
  }

  close(): void {
    this.#isClosed = true;
    this.#stopHearing();
  }

  /** Whether the entry was new here. */
  #add(entry: JournalEntry): boolean {
    const { kept, putAway } = this.#shelf;
    if (isReadable(kept.get(entry.id))) return false;
    const wasPutAway = putAway.get(entry.id);
    putAway.delete(entry.id);
    kept.delete(entry.id);
    kept.set(entry.id, isReadable(wasPutAway) ? wasPutAway : entry);
    return true;
  }

  async #do<Value>(work: () => Value): Promise<Result<Value, StoreError>> {
    if (this.#isClosed) return failed({ kind: 'closed', detail: 'closed by this page' });
    return ok(work());
  }

  /** Others hear of it after it is done, as in a browser. */
  #announce(appended: readonly JournalEntry[] | null): void {
    queueMicrotask(() => this.#shelf.happened.tell({ by: this, appended }));
  }
}

interface MemoryEvent {
  readonly by: JournalStore;
  /** The entries, or null where the journal was put away or put back. */
  readonly appended: readonly JournalEntry[] | null;
}
