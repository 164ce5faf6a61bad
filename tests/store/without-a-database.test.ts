import { describe, expect, it } from 'vitest';
import { keepPersistent, openJournalStore, readRoom } from '#store';
import { storeErrorOf } from '../../src/lib/store/store-error';
import { kept, value } from './journal-store-contract';
import { noteEntry } from './sample-entries';

describe('where there is no database', () => {
  it('S24 works in memory, and says why', async () => {
    const { store, fallback } = await openJournalStore();
    expect(store.keeps).toBe('until-closed');
    expect(fallback?.reason.kind).toBe('unavailable');
    expect(fallback?.reason.detail).toContain('indexedDB is not defined');
    await value(store.append([noteEntry(1)]));
    expect((await kept(store)).entries).toEqual([noteEntry(1)]);
  });

  it('S24 gives every window a journal of its own in memory', async () => {
    const [here, there] = [await openJournalStore(), await openJournalStore()];
    await value(here.store.append([noteEntry(1)]));
    expect((await kept(there.store)).entries).toEqual([]);
    expect(there.store.device).not.toBe(here.store.device);
  });
});

describe('asking the browser to keep the data', () => {
  it.each([
    ['granted', { persist: (): Promise<boolean> => Promise.resolve(true) }],
    ['refused', { persist: (): Promise<boolean> => Promise.resolve(false) }],
    ['not-available', undefined],
    ['not-available', {}],
    ['not-available', { persist: () => Promise.reject(new TypeError('insecure')) }],
  ] as const)('S25 answers %s', async (answer, storage) => {
    expect(await keepPersistent(storage)).toBe(answer);
  });

  it('S25 reads how much room there is, in bytes', async () => {
    const room = await readRoom({ estimate: async () => ({ usage: 2048, quota: 1_000_000 }) });
    expect(room).toEqual({ usageBytes: 2048, quotaBytes: 1_000_000 });
  });

  it.each([
    ['it is not there', {}],
    ['it says nothing', { estimate: async () => ({}) }],
    ['it fails', { estimate: () => Promise.reject(new TypeError('insecure')) }],
  ])('S25 knows no room where %s', async (_, storage) => {
    expect(await readRoom(storage)).toBeNull();
  });
});

describe('a failure of the database', () => {
  it.each([
    ['QuotaExceededError', 'no-room'],
    ['AbortError', 'interrupted'],
    ['TransactionInactiveError', 'interrupted'],
    ['UnknownError', 'interrupted'],
    ['InvalidStateError', 'closed'],
    ['VersionError', 'newer-program-has-it'],
    ['NotFoundError', 'unavailable'],
  ])('S17 means for %s: %s', (name, kind) => {
    const error = storeErrorOf(new DOMException('said the browser', name));
    expect(error).toEqual({ kind, detail: `${name}: said the browser` });
  });

  it('S17 is thrown on where no database can have caused it', () => {
    expect(() => storeErrorOf(new TypeError('x is not a function'))).toThrow(TypeError);
  });
});
