import { afterEach, describe, expect, it } from 'vitest';
import { kept, value } from './journal-store-contract';
import { newIndexedDbJournal } from './open-journal';
import { noteEntries, noteEntry } from './sample-entries';

describe('a long journal', () => {
  const journal = newIndexedDbJournal();
  afterEach(() => journal.remove());

  it('S23 appends to 10 000 entries in a twentieth of a second', { timeout: 60_000 }, async () => {
    const store = await journal.open();
    const inEmptyMs = await medianOf(21, (n) => value(store.append([noteEntry(n)])));
    await value(store.append(noteEntries(100, 10_099)));
    const inLongMs = await medianOf(21, (n) => value(store.append([noteEntry(20_000 + n)])));
    console.info(`S23 one append: ${inEmptyMs} ms in none, ${inLongMs} ms in 10 000`);
    // Felt as at once. Measured: 1 to 2 ms, and 10 ms on a busy machine; the rest is for slow disks.
    expect(inLongMs).toBeLessThan(50);
  });

  it('S23 puts 100 000 entries away and back whole', { timeout: 120_000 }, async () => {
    const store = await journal.open();
    const entries = noteEntries(1, 100_000);
    const took = async (what: string, work: () => Promise<unknown>): Promise<number> => {
      const startMs = performance.now();
      await work();
      const tookMs = performance.now() - startMs;
      console.info(`S23 100 000 entries, ${what}: ${tookMs.toFixed(0)} ms`);
      return tookMs;
    };
    await took('appended in one call', () => value(store.append(entries)));
    const awayMs = await took('put away', () => value(store.putAway(1000)));
    expect((await kept(store)).entries).toEqual([]);
    expect(await value(store.readPutAway())).toEqual({ atMs: 1000, entryCount: 100_000 });
    const backMs = await took('put back', () => value(store.putBack()));
    await took('read', async () => expect((await kept(store)).entries).toHaveLength(100_000));
    expect((await kept(store)).entries[99_999]).toEqual(noteEntry(100_000));
    await value(store.putAway(2000));
    await took('erased', () => value(store.erasePutAway()));
    expect(await value(store.putBack())).toEqual({ added: 0, known: 0 });
    // Both are one small write; moving the records would take seconds.
    expect(Math.max(awayMs, backMs)).toBeLessThan(1000);
  });
});

async function medianOf(times: number, work: (n: number) => Promise<unknown>): Promise<number> {
  const tookMs: number[] = [];
  for (let n = 0; n < times; n += 1) {
    const startMs = performance.now();
    await work(n);
    tookMs.push(performance.now() - startMs);
  }
  tookMs.sort((left, right) => left - right);
  return Number(tookMs[Math.floor(times / 2)]!.toFixed(2));
}
