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
  const store = transaction.objectStore('entries');
  const { upTo } = await readPutAwayMark(transaction);
  const entryById = firstOfEachId(entries);
  const keptById = await findKept(transaction, [...entryById.keys()]);
  const added: JournalEntry[] = [];
  const removed: number[] = [];
  for (const [id, entry] of entryById) {
    const kept = keptById.get(id);
    const isGood = kept !== undefined && isReadable(kept.record);
    if (isGood && kept.sequence > upTo) continue;
    if (kept) removed.push(kept.sequence);
    added.push(isGood ? (kept.record as JournalEntry) : entry);
  }
  await Promise.all(removed.map((sequence) => store.delete(sequence)));
  const sequences: number[] = [];
  for (let start = 0; start < added.length; start += atOnce) {
    // Async, so that a request that throws leaves none of the others without a handler.
    const round = added.slice(start, start + atOnce).map(async (record) => store.add(record));
    sequences.push(...(await Promise.all(round)));
  }
  return sequences;
}

/** Requests sent without waiting for each: few enough that the page stays awake. */
const atOnce = 1000;

function firstOfEachId(entries: readonly JournalEntry[]): ReadonlyMap<string, JournalEntry> {
  const entryById = new Map<string, JournalEntry>();
  for (const entry of entries) if (!entryById.has(entry.id)) entryById.set(entry.id, entry);
  return entryById;
}

/** The records kept under these ids, and maybe more. */
async function findKept(
  transaction: JournalTransaction<'readwrite'>,
  ids: readonly string[],
): Promise<ReadonlyMap<unknown, KeptRecord>> {
  const byId = transaction.objectStore('entries').index('by-id');
  const found = await Promise.all(
    rangesOver(ids).map((range) => Promise.all([byId.getAllKeys(range), byId.getAll(range)])),
  );
  return new Map(
    found.flatMap(([sequences, records]) =>
      sequences.map((sequence, index) => {
        const record = records[index];
        return [(record as { id: unknown }).id, { sequence, record }] as const;
      }),
    ),
  );
}

/** Many ids are found sooner by one read of everything between them than one by one. */
function rangesOver(ids: readonly string[]): readonly IDBKeyRange[] {
  if (ids.length <= fewIds) return ids.map((id) => IDBKeyRange.only(id));
  const sorted = [...ids].sort();
  return [IDBKeyRange.bound(sorted[0], sorted.at(-1))];
}

const fewIds = 200;

interface KeptRecord {
  readonly sequence: number;
  readonly record: unknown;
}
