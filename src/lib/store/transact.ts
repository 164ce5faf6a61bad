import { failed, ok, type Result } from '#core/base';
import type { StoreError } from './journal-store';
import type { JournalDatabase, JournalTransaction, StoreName } from './journal-database';
import { storeErrorOf } from './store-error';

/**
 * Does work in one transaction: all of it is kept, or none. The answer comes when the transaction
 * is complete, and a writing one asks the browser to have it on the disk by then, where the
 * browser can ('strict'). A failure of the database is an error value; a mistake of our own is
 * thrown, after everything was undone.
 */
export async function transact<Mode extends 'readonly' | 'readwrite', Value>(
  database: JournalDatabase,
  mode: Mode,
  work: (transaction: JournalTransaction<Mode>) => Promise<Value>,
): Promise<Result<Value, StoreError>> {
  let transaction: JournalTransaction<Mode>;
  try {
    transaction = database.transaction(everyStore, mode, { durability: 'strict' });
  } catch (thrown) {
    return failed(storeErrorOf(thrown));
  }
  // The transaction may fail before the work has been waited for.
  const done = transaction.done.then(
    () => ok(null),
    (thrown: unknown) => failed(thrown),
  );
  try {
    const value = await work(transaction);
    const end = await done;
    return end.ok ? ok(value) : failed(storeErrorOf(end.error));
  } catch (thrown) {
    abort(transaction);
    await done;
    // A request that fell with its transaction says less than the transaction does.
    return failed(storeErrorOf(transaction.error ?? thrown));
  }
}

const everyStore: StoreName[] = ['entries', 'meta'];

function abort(transaction: JournalTransaction<'readonly' | 'readwrite'>): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}
