import { decodeEntry, type JournalEntry } from '#core/journal';
import type { DamagedRecord, Kept } from './journal-store';
import type { JournalTransaction } from './journal-database';
import { readPutAwayMark } from './put-away-mark';

/** The records that are not put away, in the order they were appended. */
export async function readRecords(
  transaction: JournalTransaction<'readonly'>,
): Promise<readonly unknown[]> {
  const { upTo } = await readPutAwayMark(transaction);
  return transaction.objectStore('entries').getAll(IDBKeyRange.lowerBound(upTo, true));
}

/** What was kept, looked at again: the entries as they came, and the records that are none. */
export function decodeRecords(records: readonly unknown[]): Kept {
  const entries: JournalEntry[] = [];
  const damaged: DamagedRecord[] = [];
  for (const record of records) {
    const decoded = decodeEntry(record);
    if (decoded.ok) entries.push(decoded.value);
    else damaged.push({ record, field: decoded.error.field, expected: decoded.error.expected });
  }
  return { entries, damaged };
}

export const isReadable = (record: unknown): boolean => decodeEntry(record).ok;
