import { afterEach, describe, expect, it, vi } from 'vitest';
import type { JournalEntry } from '#core/journal';
import type { JournalStore } from '#store';
import { heard, kept, value } from './journal-store-contract';
import { newIndexedDbJournal } from './open-journal';
import { noteEntries, noteEntry } from './sample-entries';

describe('a write that fails', () => {
  const journal = newIndexedDbJournal();
  afterEach(async () => {
    vi.restoreAllMocks();
    await journal.remove();
    vi.unstubAllGlobals();
  });

  it('S3 leaves nothing of a call when its transaction is aborted on the way', async () => {
    const [store, other] = [await journal.open(), await journal.open()];
    const there = heard(other);
    await value(store.append([noteEntry(0)]));
    abortAtAdd(1500);
    const answer = await store.append(noteEntries(1, 2500));
    expect(answer).toMatchObject({ ok: false, error: { kind: 'interrupted' } });
    vi.restoreAllMocks();
    expect((await kept(store)).entries).toEqual([noteEntry(0)]);
    expect(await value(store.append(noteEntries(1, 2)))).toEqual({ added: 2, known: 0 });
    await vi.waitFor(() => expect(there.appended).toEqual(noteEntries(0, 2)));
  });

  it('S3 leaves the journal in sight when putting it away is interrupted', async () => {
    const store = await journal.open();
    await value(store.append(noteEntries(1, 3)));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...what
    ) {
      const request = put.apply(this, what);
      if (what[1] === 'replaced') this.transaction.abort();
      return request;
    });
    expect(await store.putAway(1000)).toMatchObject({ error: { kind: 'interrupted' } });
    vi.restoreAllMocks();
    expect((await kept(store)).entries).toEqual(noteEntries(1, 3));
    expect(await value(store.readPutAway())).toBeNull();
  });

  const reopen = (store: JournalStore): Promise<JournalStore> => {
    store.close();
    return journal.open();
  };

  it('S17 says that there is no room, keeps what was there, and goes on when there is', async () => {
    const room = await smallRoom(1_000_000);
    vi.stubGlobal('indexedDB', room.indexedDB);
    const store = await journal.open();
    await value(store.append([noteEntry(0)]));
    await value(store.append(largeEntries(1, 100)));
    await value(store.putAway(1000));

    let next = 101;
    const fill = () => store.append(largeEntries(next, next + 49));
    let answer = await fill();
    while (answer.ok && next < 2000) {
      next += 50;
      answer = await fill();
    }
    expect(answer).toMatchObject({ ok: false, error: { kind: 'no-room' } });
    expect((await kept(store)).entries).toHaveLength(next - 101);
    expect(await value(store.readPutAway())).toEqual({ atMs: 1000, entryCount: 101 });

    const reopened = await reopen(store);
    expect((await kept(reopened)).entries).toHaveLength(next - 101);

    // Erasing is the way out of a full device, so that it must not need room itself.
    await value(reopened.erasePutAway());
    await value(reopened.append([noteEntry(1)]));
    expect((await kept(reopened)).entries.at(-1)).toEqual(noteEntry(1));
  });

  it('S17 answers no room when a single request is refused', async () => {
    const store = await journal.open();
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    expect(await store.append([noteEntry(1)])).toEqual({
      ok: false,
      error: { kind: 'no-room', detail: 'QuotaExceededError: full' },
    });
  });

  it('S17 throws a mistake of our own, and keeps nothing of its call', async () => {
    const store = await journal.open();
    const uncopiable = { ...noteEntry(2), draw: () => {} } as unknown as JournalEntry;
    await expect(store.append([noteEntry(1), uncopiable])).rejects.toThrow(DOMException);
    expect((await kept(store)).entries).toEqual([]);
  });
});

/** As the browser does when the device fails it, after so many entries of one call. */
function abortAtAdd(at: number): void {
  const add = IDBObjectStore.prototype.add;
  let count = 0;
  vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
    this: IDBObjectStore,
    ...what
  ) {
    const request = add.apply(this, what);
    count += 1;
    if (count === at) this.transaction.abort();
    return request;
  });
}

/** A place of its own for databases, with a limit that the browser enforces. */
async function smallRoom(quota: number): Promise<{ readonly indexedDB: IDBFactory }> {
  const { storageBuckets } = navigator as unknown as {
    storageBuckets: {
      open(name: string, how: { quota: number }): Promise<{ indexedDB: IDBFactory }>;
    };
  };
  return storageBuckets.open(`small-${Date.now()}`, { quota });
}

/** With text that does not get smaller when the browser packs it. */
const largeEntries = (first: number, last: number): readonly JournalEntry[] =>
  noteEntries(first, last).map((entry) => ({ ...entry, text: randomText() }));

const randomText = (): string =>
  Array.from(crypto.getRandomValues(new Uint32Array(600)), (bits) => bits.toString(36)).join('');
