import type { Appended, PutAway } from './journal-store';
import type { JournalTransaction } from './journal-database';

/**
 * What is put away stays where it is: a mark says up to which sequence number the journal is out
 * of sight. Sequence numbers only grow, so that what is appended later lies beyond the mark.
 * Putting away and back are one small write however long the journal is, and nothing is moved
 * that could be lost on the way.
 */
export interface PutAwayMark {
  readonly upTo: number;
  readonly atMs: number;
}

/** A mark that cannot be read hides nothing. */
export async function readPutAwayMark(
  transaction: JournalTransaction<IDBTransactionMode>,
): Promise<PutAwayMark> {
  const mark = (await transaction.objectStore('meta').get('put-away')) as
    Partial<PutAwayMark> | undefined;
  return Number.isSafeInteger(mark?.upTo) && Number.isFinite(mark?.atMs)
    ? (mark as PutAwayMark)
    : { upTo: 0, atMs: 0 };
}

/** Everything kept so far goes out of sight, with what was put away before. */
export async function putAwayAll(
  transaction: JournalTransaction<'readwrite'>,
  atMs: number,
): Promise<PutAway> {
  const upTo = Math.max(await lastSequence(transaction), (await readPutAwayMark(transaction)).upTo);
  await transaction.objectStore('meta').put({ upTo, atMs } satisfies PutAwayMark, 'put-away');
  await countReplaced(transaction);
  return { atMs, entryCount: await countUpTo(transaction, upTo) };
}

export async function readPutAway(
  transaction: JournalTransaction<'readonly'>,
): Promise<PutAway | null> {
  const { upTo, atMs } = await readPutAwayMark(transaction);
  const entryCount = await countUpTo(transaction, upTo);
  return entryCount === 0 ? null : { atMs, entryCount };
}

/** No id is both put away and in sight, so that everything put back is new there. */
export async function putAllBack(transaction: JournalTransaction<'readwrite'>): Promise<Appended> {
  const { upTo } = await readPutAwayMark(transaction);
  const added = await countUpTo(transaction, upTo);
  await countReplaced(transaction);
  await transaction.objectStore('meta').delete('put-away');
  return { added, known: 0 };
}

export async function eraseAllPutAway(transaction: JournalTransaction<'readwrite'>): Promise<null> {
  const { upTo } = await readPutAwayMark(transaction);
  await transaction.objectStore('entries').delete(IDBKeyRange.upperBound(upTo));
  await transaction.objectStore('meta').delete('put-away');
  return null;
}

/** How often the journal was put away or back: by this another tab knows to read it again. */
export async function readReplacedCount(
  transaction: JournalTransaction<IDBTransactionMode>,
): Promise<number> {
  const count = await transaction.objectStore('meta').get('replaced');
  return typeof count === 'number' ? count : 0;
}

/** The greatest sequence number in use, or 0. */
export async function lastSequence(
  transaction: JournalTransaction<IDBTransactionMode>,
): Promise<number> {
  const cursor = await transaction.objectStore('entries').openKeyCursor(null, 'prev');
  return cursor?.primaryKey ?? 0;
}

async function countReplaced(transaction: JournalTransaction<'readwrite'>): Promise<void> {
  const count = await readReplacedCount(transaction);
  await transaction.objectStore('meta').put(count + 1, 'replaced');
}

const countUpTo = (
  transaction: JournalTransaction<IDBTransactionMode>,
  upTo: number,
): Promise<number> => transaction.objectStore('entries').count(IDBKeyRange.upperBound(upTo));
