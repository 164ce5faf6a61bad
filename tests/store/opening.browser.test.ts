import { deleteDB, openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isId } from '#core/journal';
import { openIndexedDbJournalStore, openJournalStore, type OpenError } from '#store';
import { schemaSteps } from '../../src/lib/store/journal-database';
import { kept, value } from './journal-store-contract';
import { newDatabaseName } from './open-journal';
import { noteEntries, noteEntry } from './sample-entries';

/** A step that a later program could bring. */
const laterSteps = [
  ...schemaSteps,
  ((database) => void database.createObjectStore('later' as 'meta')) as (typeof schemaSteps)[0],
];

describe('opening a journal in the browser', () => {
  let databaseName: string;
  beforeEach(() => {
    databaseName = newDatabaseName();
  });
  afterEach(async () => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    await deleteDB(databaseName);
  });

  it('S16 keeps the device id from one opening to the next', async () => {
    const first = await value(openIndexedDbJournalStore({ databaseName }));
    first.close();
    const second = await value(openIndexedDbJournalStore({ databaseName }));
    second.close();
    expect(isId(first.device)).toBe(true);
    expect(second.device).toBe(first.device);
  });

  it('S16 makes its id with what a page on plain http has', async () => {
    vi.stubGlobal('crypto', {
      getRandomValues: (bytes: Uint8Array<ArrayBuffer>) => bytes.fill(7),
    });
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    store.close();
    expect(store.device).toMatch(/-7707-8707-070707070707$/);
  });

  it('S16 makes a new device id where the kept one is damaged', async () => {
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    store.close();
    await overwriteMeta(databaseName, 'device', 'my tablet');
    const again = await value(openIndexedDbJournalStore({ databaseName }));
    again.close();
    expect(isId(again.device)).toBe(true);
  });

  it('S11 hides nothing where the mark of what is put away is damaged', async () => {
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    await value(store.append(noteEntries(1, 3)));
    await value(store.putAway(1000));
    await overwriteMeta(databaseName, 'put-away', { upTo: 'all', atMs: 1000 });
    expect((await kept(store)).entries).toEqual(noteEntries(1, 3));
    expect(await value(store.readPutAway())).toBeNull();
    expect(await value(store.erasePutAway())).toBeNull();
    expect((await kept(store)).entries).toEqual(noteEntries(1, 3));
    store.close();
  });

  it('S19 closes itself for a newer program, finishes what it is saving, and says so', async () => {
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    const closed = vi.fn();
    store.onClosed(closed);
    const saving = store.append(noteEntries(1, 500));
    const newer = await value(openIndexedDbJournalStore({ databaseName, steps: laterSteps }));
    expect(await value(saving)).toEqual({ added: 500, known: 0 });
    expect((await kept(newer)).entries).toEqual(noteEntries(1, 500));
    expect(newer.device).toBe(store.device);
    expect(closed).toHaveBeenCalledOnce();
    expect(closed).toHaveBeenCalledWith(expect.objectContaining({ kind: 'closed' }));
    expect(await store.append([noteEntry(501)])).toMatchObject({ error: { kind: 'closed' } });
    newer.close();
  });

  it('S19 says so when the browser closes it', async () => {
    const opened: IDBDatabase[] = [];
    const request = IDBFactory.prototype.open;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (this: IDBFactory, ...how) {
      const opening = request.apply(this, how);
      opening.addEventListener('success', () => opened.push(opening.result));
      return opening;
    });
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    const closed = vi.fn();
    store.onClosed(closed);
    opened[0]!.dispatchEvent(new Event('close'));
    expect(closed).toHaveBeenCalledWith({ kind: 'closed', detail: 'closed by the browser' });
    expect(await store.readAll()).toMatchObject({ error: { kind: 'closed' } });
  });

  it('S19 says so when it finds its connection gone', async () => {
    const store = await value(openIndexedDbJournalStore({ databaseName }));
    const closed = vi.fn();
    store.onClosed(closed);
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    });
    expect(await store.append([noteEntry(1)])).toMatchObject({ error: { kind: 'closed' } });
    expect(closed).toHaveBeenCalledOnce();
  });

  it('S20 does not wait for a tab that holds an older form, and opens when it let go', async () => {
    const holder = await openDB(databaseName, 1, {
      upgrade: (database, _old, _new, transaction) =>
        schemaSteps[0]!(database as never, transaction as never),
    });
    const opened = await openIndexedDbJournalStore({ databaseName, steps: laterSteps });
    const error = waiting(opened);
    expect(error.kind).toBe('another-tab-holds-it');
    const whenOpen = error.whenOpen();
    const early = vi.fn();
    void whenOpen.then(early);
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(early).not.toHaveBeenCalled();
    holder.close();
    const store = await value(whenOpen);
    expect(await value(store.append([noteEntry(1)]))).toEqual({ added: 1, known: 0 });
    store.close();
  });

  it('S20 closes a connection that came after it was given up', async () => {
    const holder = await openDB(databaseName, 1);
    waiting(await openIndexedDbJournalStore({ databaseName, steps: laterSteps }));
    const closed = vi.spyOn(IDBDatabase.prototype, 'close');
    holder.close();
    expect(closed).toHaveBeenCalledTimes(1);
    await vi.waitFor(() => expect(closed).toHaveBeenCalledTimes(2));
  });

  it('S20 gives up when there is no answer, and can go on waiting', async () => {
    const holder = await openDB(databaseName, 1);
    // A deletion that waits for its turn holds up every later opening, and tells it nothing.
    const deleting = deleteDB(databaseName);
    const opened = await openIndexedDbJournalStore({ databaseName, openWithinMs: 100 });
    const error = waiting(opened);
    expect(error.kind).toBe('no-answer');
    holder.close();
    await deleting;
    const store = await value(error.whenOpen());
    expect(await kept(store)).toEqual({ entries: [], damaged: [] });
    store.close();
  });

  it("S21 leaves a newer program's journal untouched", async () => {
    const newer = await value(openIndexedDbJournalStore({ databaseName, steps: laterSteps }));
    await value(newer.append(noteEntries(1, 3)));
    newer.close();
    expect(await openIndexedDbJournalStore({ databaseName })).toMatchObject({
      ok: false,
      error: { kind: 'newer-program-has-it' },
    });
    const again = await value(openIndexedDbJournalStore({ databaseName, steps: laterSteps }));
    expect((await kept(again)).entries).toEqual(noteEntries(1, 3));
    again.close();
  });

  it('S24 opens the journal on this device where there is one', async () => {
    const { store, fallback } = await openJournalStore({ databaseName });
    expect(fallback).toBeNull();
    expect(store.keeps).toBe('on-this-device');
    store.close();
  });

  it('S24 works in memory where the browser refuses, and says why', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
      throw new DOMException('access denied', 'SecurityError');
    });
    const { store, fallback } = await openJournalStore({ databaseName });
    expect(store.keeps).toBe('until-closed');
    expect(fallback?.reason).toEqual({
      kind: 'unavailable',
      detail: 'SecurityError: access denied',
    });
    expect(await value(store.append([noteEntry(1)]))).toEqual({ added: 1, known: 0 });
  });
});

async function overwriteMeta(databaseName: string, key: string, data: unknown): Promise<void> {
  const database = await openDB(databaseName);
  await database.put('meta', data, key);
  database.close();
}

function waiting(
  opened: Awaited<ReturnType<typeof openIndexedDbJournalStore>>,
): Extract<OpenError, { whenOpen: unknown }> {
  if (opened.ok || !('whenOpen' in opened.error)) throw new Error('Expected to have to wait');
  return opened.error;
}
