import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isId, type JournalEntry } from '#core/journal';
import type { JournalStore, Kept, StoreError } from '#store';
import type { Result } from '#core/base';
import { noteEntries, noteEntry } from './sample-entries';

/** One journal, and the stores that a test opens on it. */
export interface Journal {
  /** Opens a further store on the same journal, as another tab does. */
  open(): Promise<JournalStore>;
  /** Puts a record among the entries without looking at it. */
  plant(record: { readonly id: string }): Promise<void>;
  /** Closes what was opened, and removes the journal. */
  remove(): Promise<void>;
}

/** What every adapter of the port promises: S1 to S16 in the store's SPEC.md. */
export function describeJournalStore(adapter: string, newJournal: () => Promise<Journal>): void {
  describe(`a journal store ${adapter}`, () => {
    let journal: Journal;
    let store: JournalStore;

    beforeEach(async () => {
      journal = await newJournal();
      store = await journal.open();
    });
    afterEach(() => journal.remove());

    it('S1 begins empty', async () => {
      expect(await kept(store)).toEqual({ entries: [], damaged: [] });
    });

    it('S1 has kept every entry when it says so, for another tab to read', async () => {
      expect(await value(store.append(noteEntries(1, 3)))).toEqual({ added: 3, known: 0 });
      expect((await kept(await journal.open())).entries).toEqual(noteEntries(1, 3));
    });

    it('S1 has nothing to do for no entries', async () => {
      expect(await value(store.append([]))).toEqual({ added: 0, known: 0 });
    });

    it('S2 keeps an entry once, however often it is appended', async () => {
      await value(store.append([noteEntry(1), noteEntry(2)]));
      const again = await value(store.append([noteEntry(2), noteEntry(3), noteEntry(1)]));
      expect(again).toEqual({ added: 1, known: 2 });
      expect((await kept(store)).entries).toEqual(noteEntries(1, 3));
    });

    it('S2 keeps the first of two entries with one id in one call', async () => {
      const twice = [noteEntry(1, 'first'), noteEntry(2), noteEntry(1, 'second')];
      expect(await value(store.append(twice))).toEqual({ added: 2, known: 1 });
      expect((await kept(store)).entries).toEqual([noteEntry(1, 'first'), noteEntry(2)]);
    });

    it('S2 leaves the kept entry as it is when a different one comes with its id', async () => {
      await value(store.append([noteEntry(1, 'as it was written')]));
      expect(await value(store.append([noteEntry(1, 'rewritten')]))).toEqual({
        added: 0,
        known: 1,
      });
      expect((await kept(store)).entries).toEqual([noteEntry(1, 'as it was written')]);
    });

    it('S2 keeps each entry once when two tabs append the same ones at the same time', async () => {
      const other = await journal.open();
      const [here, there] = await Promise.all([
        value(store.append(noteEntries(1, 30))),
        value(other.append(noteEntries(1, 30))),
      ]);
      expect(here.added + there.added).toBe(30);
      expect(here.known + there.known).toBe(30);
      expect((await kept(store)).entries).toEqual(noteEntries(1, 30));
    });

    it('S4 keeps fields, kinds and versions that this program does not know', async () => {
      const strangers = [
        { ...noteEntry(1), weatherBadge: { sky: ['grey', 'blue'] }, kind: 'moon-seen', phase: 0.5 },
        { ...noteEntry(2), v: 7, text: undefined, pages: [1, null, { deep: true }] },
        { ...noteEntry(3), addedLater: 'a field of the next version' },
      ] as unknown as JournalEntry[];
      await value(store.append(strangers));
      expect(await kept(store)).toStrictEqual({ entries: strangers, damaged: [] });
    });

    it('S5 gives the entries in the order they were appended, whatever their stamps', async () => {
      await value(store.append([noteEntry(5), noteEntry(2)]));
      await value(store.append([noteEntry(9), noteEntry(1)]));
      const order = [noteEntry(5), noteEntry(2), noteEntry(9), noteEntry(1)];
      expect((await kept(store)).entries).toEqual(order);
    });

    it('S6 reports a record that is no entry and reads the others', async () => {
      const torn = { ...noteEntry(2), day: '31 February' };
      await value(store.append([noteEntry(1)]));
      await journal.plant(torn);
      await value(store.append([noteEntry(3)]));
      const read = await kept(store);
      expect(read.entries).toEqual([noteEntry(1), noteEntry(3)]);
      expect(read.damaged).toMatchObject([{ record: torn, field: 'day' }]);
      expect((await kept(await journal.open())).damaged).toMatchObject([{ record: torn }]);
    });

    it('S7 lets a good entry take the place of a damaged record with its id', async () => {
      const undated = { ...noteEntry(1), at: 'some time' };
      await journal.plant(undated);
      expect(await value(store.append([noteEntry(1)]))).toEqual({ added: 1, known: 0 });
      expect(await kept(store)).toEqual({ entries: [noteEntry(1)], damaged: [] });
    });

    it('S8 is not changed by what a caller does to an entry afterwards', async () => {
      const mine = { ...noteEntry(1) } as { text: string } & JournalEntry;
      await value(store.append([mine]));
      mine.text = 'changed';
      const read = (await kept(store)).entries[0] as { text: string };
      read.text = 'changed too';
      expect((await kept(store)).entries).toEqual([noteEntry(1)]);
    });

    it('S9 tells other tabs what was appended, and not the one that did it', async () => {
      const other = await journal.open();
      const [here, there] = [heard(store), heard(other)];
      await value(store.append(noteEntries(1, 2)));
      await vi.waitFor(() => expect(there.appended).toEqual(noteEntries(1, 2)));
      await value(other.append([noteEntry(3)]));
      await vi.waitFor(() => expect(here.appended).toEqual([noteEntry(3)]));
      expect(there.appended).toEqual(noteEntries(1, 2));
      expect([here.replaced, there.replaced]).toEqual([0, 0]);
    });

    it('S9 tells each of two busy tabs all that the other appended, each entry once', async () => {
      const other = await journal.open();
      const [here, there] = [heard(store), heard(other)];
      const turns = Array.from({ length: 20 }, (_, n) => [
        store.append([noteEntry(n)]),
        other.append([noteEntry(100 + n)]),
      ]).flat();
      await Promise.all(turns.map(value));
      await vi.waitFor(() => expect(here.appended).toEqual(noteEntries(100, 119)));
      await vi.waitFor(() => expect(there.appended).toEqual(noteEntries(0, 19)));
    });

    it('S9 does not tell of entries that were known already', async () => {
      const other = await journal.open();
      const there = heard(other);
      await value(store.append([noteEntry(1)]));
      await vi.waitFor(() => expect(there.appended).toEqual([noteEntry(1)]));
      await value(store.append([noteEntry(1)]));
      await value(store.append([noteEntry(2)]));
      await vi.waitFor(() => expect(there.appended).toEqual(noteEntries(1, 2)));
    });

    it('S9 does not tell one that stopped listening', async () => {
      const other = await journal.open();
      const early: JournalEntry[] = [];
      const stop = other.onAppendedElsewhere((entries) => early.push(...entries));
      const late = heard(other);
      stop();
      await value(store.append([noteEntry(1)]));
      await vi.waitFor(() => expect(late.appended).toEqual([noteEntry(1)]));
      expect(early).toEqual([]);
    });

    it('S10 tells other tabs that the journal was put away and put back', async () => {
      const other = await journal.open();
      const [here, there] = [heard(store), heard(other)];
      await value(store.append([noteEntry(1)]));
      await value(store.putAway(1000));
      await vi.waitFor(() => expect(there.replaced).toBe(1));
      expect((await kept(other)).entries).toEqual([]);
      await value(store.putBack());
      await vi.waitFor(() => expect(there.replaced).toBe(2));
      expect((await kept(other)).entries).toEqual([noteEntry(1)]);
      expect(here.replaced).toBe(0);
    });

    it('S11 puts the journal away and back with nothing lost', async () => {
      await value(store.append(noteEntries(1, 5)));
      expect(await value(store.putAway(1234))).toEqual({ atMs: 1234, entryCount: 5 });
      expect((await kept(store)).entries).toEqual([]);
      expect(await value(store.readPutAway())).toEqual({ atMs: 1234, entryCount: 5 });
      expect(await value((await journal.open()).readPutAway())).toEqual({
        atMs: 1234,
        entryCount: 5,
      });
      expect(await value(store.putBack())).toEqual({ added: 5, known: 0 });
      expect((await kept(store)).entries).toEqual(noteEntries(1, 5));
      expect(await value(store.readPutAway())).toBeNull();
    });

    it('S11 puts damaged records away and back too', async () => {
      const torn = { ...noteEntry(2), v: 'one' };
      await value(store.append([noteEntry(1)]));
      await journal.plant(torn);
      await value(store.putAway(1));
      expect(await kept(store)).toEqual({ entries: [], damaged: [] });
      await value(store.putBack());
      expect((await kept(store)).entries).toEqual([noteEntry(1)]);
      expect((await kept(store)).damaged).toMatchObject([{ record: torn, field: 'v' }]);
    });

    it('S12 adds to what is put away when a second journal is put away', async () => {
      await value(store.append(noteEntries(1, 2)));
      await value(store.putAway(1000));
      await value(store.append(noteEntries(3, 5)));
      expect(await value(store.putAway(2000))).toEqual({ atMs: 2000, entryCount: 5 });
      expect((await kept(store)).entries).toEqual([]);
      await value(store.putBack());
      expect((await kept(store)).entries).toEqual(noteEntries(1, 5));
    });

    it('S12 adds what is put back to what was written meanwhile', async () => {
      await value(store.append(noteEntries(1, 2)));
      await value(store.putAway(1000));
      await value(store.append([noteEntry(3)]));
      expect(await value(store.putBack())).toEqual({ added: 2, known: 0 });
      expect((await kept(store)).entries).toEqual(noteEntries(1, 3));
    });

    it('S12 has nothing to put back where nothing is put away', async () => {
      await value(store.append([noteEntry(1)]));
      expect(await value(store.readPutAway())).toBeNull();
      expect(await value(store.putBack())).toEqual({ added: 0, known: 0 });
      expect((await kept(store)).entries).toEqual([noteEntry(1)]);
    });

    it('S12 puts an empty journal away as nothing', async () => {
      expect(await value(store.putAway(1000))).toEqual({ atMs: 1000, entryCount: 0 });
      expect(await value(store.readPutAway())).toBeNull();
    });

    it('S13 brings an entry that is put away back into sight, once', async () => {
      const other = await journal.open();
      await value(store.append([noteEntry(1, 'as it was written'), noteEntry(2)]));
      await value(store.putAway(1000));
      const again = [noteEntry(1, 'rewritten'), noteEntry(3)];
      expect(await value(store.append(again))).toEqual({ added: 2, known: 0 });
      const inSight = [noteEntry(1, 'as it was written'), noteEntry(3)];
      expect((await kept(store)).entries).toEqual(inSight);
      expect(await value(store.readPutAway())).toEqual({ atMs: 1000, entryCount: 1 });
      expect((await kept(other)).entries).toEqual(inSight);
      expect(await value(store.putBack())).toEqual({ added: 1, known: 0 });
      expect((await kept(store)).entries).toHaveLength(3);
    });

    it('S14 erases what is put away and nothing else', async () => {
      await value(store.append(noteEntries(1, 3)));
      await value(store.putAway(1000));
      await value(store.append([noteEntry(4)]));
      expect(await value(store.erasePutAway())).toBeNull();
      expect(await value(store.readPutAway())).toBeNull();
      expect(await value(store.putBack())).toEqual({ added: 0, known: 0 });
      expect((await kept(store)).entries).toEqual([noteEntry(4)]);
    });

    it('S14 keeps an entry that is appended again after it was erased', async () => {
      await value(store.append([noteEntry(1)]));
      await value(store.putAway(1000));
      await value(store.erasePutAway());
      expect(await value(store.append([noteEntry(1)]))).toEqual({ added: 1, known: 0 });
      expect((await kept(await journal.open())).entries).toEqual([noteEntry(1)]);
    });

    it('S15 answers every verb with closed after it was closed', async () => {
      store.close();
      const answers: readonly Result<unknown, StoreError>[] = await Promise.all([
        store.readAll(),
        store.append([noteEntry(1)]),
        store.putAway(1000),
        store.readPutAway(),
        store.putBack(),
        store.erasePutAway(),
      ]);
      for (const answer of answers) expect(answer).toMatchObject({ error: { kind: 'closed' } });
      expect((await kept(await journal.open())).entries).toEqual([]);
    });

    it('S15 finishes what it was saving when it is closed', async () => {
      const saving = store.append(noteEntries(1, 3));
      store.close();
      expect(await value(saving)).toEqual({ added: 3, known: 0 });
      expect((await kept(await journal.open())).entries).toEqual(noteEntries(1, 3));
    });

    it('S15 tells a closed store nothing more', async () => {
      const other = await journal.open();
      const witness = heard(await journal.open());
      const there = heard(other);
      const closed = vi.fn();
      other.onClosed(closed);
      other.close();
      await value(store.append([noteEntry(1)]));
      await value(store.putAway(1000));
      await vi.waitFor(() => expect(witness.replaced).toBe(1));
      expect(there).toEqual({ appended: [], replaced: 0 });
      expect(closed).not.toHaveBeenCalled();
    });

    it('S16 gives every tab of a device the same device id', async () => {
      const others = await Promise.all([journal.open(), journal.open()]);
      expect(isId(store.device)).toBe(true);
      expect(others.map((other) => other.device)).toEqual([store.device, store.device]);
    });
  });
}

/** What a store tells its listeners from now on. */
export function heard(store: JournalStore): {
  readonly appended: JournalEntry[];
  replaced: number;
} {
  const told = { appended: [] as JournalEntry[], replaced: 0 };
  store.onAppendedElsewhere((entries) => told.appended.push(...entries));
  store.onReplacedElsewhere(() => told.replaced++);
  return told;
}

export async function value<Value>(answer: Promise<Result<Value, unknown>>): Promise<Value> {
  const result = await answer;
  if (!result.ok) throw new Error(`Not expected to fail: ${JSON.stringify(result.error)}`);
  return result.value;
}

export const kept = (store: JournalStore): Promise<Kept> => value(store.readAll());
