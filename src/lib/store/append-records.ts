import type { JournalEntry } from '#core/journal';
import { isReadable } from './decode-records';
import type { JournalTransaction } from './journal-database';
import { readPutAwayMark } from './put-away-mark';

/**
 * Adds the entries whose id is not there yet, as they came, and gives their sequence numbers.
 * Two ids are there and still need a new place at the end, where every tab finds it: one that is
 * put away comes back as it was kept, and a damaged record makes way for a good entry of its id.
 */
export async function appendRecords(
  transaction: JournalTransaction<'readwrite'>,
  entries: readonly JournalEntry[],
): Promise<readonly number[]> {
  const { upTo } = await readPutAwayMark(transaction);
  const sequences: number[] = [];
  const unique = firstOfEachId(entries);
  for (let start = 0; start < unique.length; start += roundSize) {
    const added = await appendRound(transaction, unique.slice(start, start + roundSize), upTo);
    sequences.push(...added);
  }
  return sequences;
}

/** Requests are sent many at a time: waiting for each costs a turn of the event loop. */
const roundSize = 1000;

async function appendRound(
  transaction: JournalTransaction<'readwrite'>,
  entries: readonly JournalEntry[],
  upTo: number,
): Promise<readonly number[]> {
  const store = transaction.objectStore('entries');
  const places = await Promise.all(entries.map((entry) => store.index('by-id').getKey(entry.id)));
  const records = await Promise.all(places.map((place) => place && store.get(place)));
  const added = entries.map(async (entry, index) => {
    const [place, record] = [places[index], records[index]];
    if (place === undefined) return store.add(entry);
    if (place > upTo && isReadable(record)) return null;
    const [, sequence] = await Promise.all([
      store.delete(place),
      store.add(isReadable(record) ? record : entry),
    ]);
    return sequence;
  });
  return (await Promise.all(added)).filter((sequence) => sequence !== null);
}

function firstOfEachId(entries: readonly JournalEntry[]): readonly JournalEntry[] {
  const entryById = new Map<string, JournalEntry>();
  for (const entry of entries) if (!entryById.has(entry.id)) entryById.set(entry.id, entry);
  return [...entryById.values()];
}
