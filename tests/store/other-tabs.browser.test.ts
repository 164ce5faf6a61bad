import { afterEach, describe, expect, it, vi } from 'vitest';
import { openIndexedDbJournalStore } from '#store';
import { heard, value } from './journal-store-contract';
import { newIndexedDbJournal } from './open-journal';
import { noteEntries, noteEntry } from './sample-entries';

describe('two tabs on one journal', () => {
  const journal = newIndexedDbJournal();
  afterEach(async () => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    await journal.remove();
  });

  it('S18 shows an entry in the other tab within a second', async () => {
    const [store, other] = [await journal.open(), await journal.open()];
    const there = heard(other);
    const delaysMs: number[] = [];
    for (let n = 1; n <= 10; n += 1) {
      await value(store.append([noteEntry(n)]));
      const savedAt = performance.now();
      await vi.waitFor(() => expect(there.appended).toHaveLength(n), {
        timeout: 1000,
        interval: 1,
      });
      delaysMs.push(performance.now() - savedAt);
    }
    report('S18 with BroadcastChannel', delaysMs);
    expect(Math.max(...delaysMs)).toBeLessThan(1000);
  });

  it('S18 shows an entry within a second where there is no BroadcastChannel', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const [store, other] = [await journal.open(), await journal.open()];
    const there = heard(other);
    const delaysMs: number[] = [];
    for (let n = 1; n <= 5; n += 1) {
      await value(store.append([noteEntry(n)]));
      const savedAt = performance.now();
      await vi.waitFor(() => expect(there.appended).toHaveLength(n), {
        timeout: 1500,
        interval: 1,
      });
      delaysMs.push(performance.now() - savedAt);
    }
    report('S18 without BroadcastChannel', delaysMs);
    expect(Math.max(...delaysMs)).toBeLessThan(1000);
  });

  it('S18 leaves a hidden page in peace, and looks when it comes to the front', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const visibility = vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    const [store, other] = [await journal.open(), await journal.open()];
    const there = heard(other);
    await value(store.append([noteEntry(1)]));
    await new Promise((resolve) => setTimeout(resolve, 1500));
    expect(there.appended).toEqual([]);
    visibility.mockReturnValue('visible');
    document.dispatchEvent(new Event('visibilitychange', { bubbles: true }));
    await vi.waitFor(() => expect(there.appended).toEqual([noteEntry(1)]), { timeout: 300 });
  });

  it('S18 looks when the page is focused or shown again, though its message was lost', async () => {
    const [store, other] = [await journal.open(), await journal.open()];
    const there = heard(other);
    const lost = vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockReturnValue();
    for (const [n, event] of ['focus', 'pageshow'].entries()) {
      await value(store.append([noteEntry(n)]));
      await new Promise((resolve) => setTimeout(resolve, 100));
      expect(there.appended).toHaveLength(n);
      window.dispatchEvent(new Event(event));
      await vi.waitFor(() => expect(there.appended).toHaveLength(n + 1), { timeout: 300 });
    }
    expect(lost).toHaveBeenCalledTimes(2);
  });

  it('S9 tells of entries between its own ones, and not of its own', async () => {
    const [store, other] = [await journal.open(), await journal.open()];
    const here = heard(store);
    vi.spyOn(BroadcastChannel.prototype, 'postMessage').mockReturnValue();
    await value(store.append(noteEntries(1, 2)));
    await value(other.append([noteEntry(3)]));
    await value(store.append(noteEntries(4, 5)));
    await value(other.append([noteEntry(6)]));
    await value(store.append([noteEntry(7)]));
    window.dispatchEvent(new Event('focus'));
    await vi.waitFor(() => expect(here.appended).toEqual([noteEntry(3), noteEntry(6)]));
    expect(here.replaced).toBe(0);
  });

  it('S10 tells of a replacement that happened together with one of its own', async () => {
    const [store, other] = [await journal.open(), await journal.open()];
    const [here, there] = [heard(store), heard(other)];
    await value(store.append([noteEntry(1)]));
    await Promise.all([value(store.putAway(1000)), value(other.putBack())]);
    await vi.waitFor(() => expect([here.replaced, there.replaced]).toEqual([1, 1]));
  });

  it('S15 leaves no listener, no channel and no clock behind when it is closed', async () => {
    const added = vi.spyOn(globalThis, 'addEventListener');
    const removed = vi.spyOn(globalThis, 'removeEventListener');
    const channelsClosed = vi.spyOn(BroadcastChannel.prototype, 'close');
    (await journal.open()).close();
    expect(added.mock.calls.map(([event]) => event)).toEqual([
      'visibilitychange',
      'focus',
      'pageshow',
    ]);
    expect(removed.mock.calls.map(([event, listener]) => [event, listener])).toEqual(
      added.mock.calls.map(([event, listener]) => [event, listener]),
    );
    expect(channelsClosed).toHaveBeenCalledOnce();

    vi.stubGlobal('BroadcastChannel', undefined);
    const started = vi.spyOn(globalThis, 'setInterval');
    const stopped = vi.spyOn(globalThis, 'clearInterval');
    (await journal.open()).close();
    expect(stopped.mock.calls[0]?.[0]).toBe(started.mock.results[0]?.value);
  });

  it('S16 makes one device id when many tabs open a new journal at once', async () => {
    const { databaseName } = journal;
    const stores = await Promise.all(
      Array.from({ length: 5 }, () => value(openIndexedDbJournalStore({ databaseName }))),
    );
    expect(new Set(stores.map((store) => store.device)).size).toBe(1);
    for (const store of stores) store.close();
  });
});

const report = (what: string, delaysMs: readonly number[]): void =>
  console.info(what, delaysMs.map((delay) => `${delay.toFixed(1)} ms`).join(', '));
