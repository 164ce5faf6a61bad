import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import { failed, ok, type Result } from '#core/base';
import type { StoreError, WaitingError } from './journal-store';
import { openErrorOf } from './store-error';

/**
 * The database's form, in steps that are never edited: one of any age is brought forward by the
 * steps it has not seen. `entries` holds each entry as it came, under a sequence number that only
 * grows; `meta` holds this device's id, what is put away, and how often that changed.
 */
export const schemaSteps: readonly SchemaStep[] = [
  (database) => {
    const entries = database.createObjectStore('entries', { autoIncrement: true });
    entries.createIndex('by-id', 'id', { unique: true });
    database.createObjectStore('meta');
  },
];

/** Opens the database, however long that takes: another tab may have to be closed first. */
export async function openJournalDatabase(
  name: string,
  steps: readonly SchemaStep[],
  onBlocked = (): void => {},
): Promise<Result<JournalDatabase, StoreError>> {
  try {
    const database = await openDB<JournalSchema>(name, steps.length, {
      upgrade(older, oldVersion, _newVersion, transaction) {
        for (const step of steps.slice(oldVersion)) step(older, transaction);
      },
      blocked: onBlocked,
    });
    // Another tab with a newer program must not have to wait for this one.
    database.addEventListener('versionchange', () => database.close());
    return ok(database);
  } catch (thrown) {
    return failed(openErrorOf(thrown));
  }
}

/**
 * Opens the database, and gives up when it cannot be opened soon. A request that comes through
 * after that is closed at once, so that it holds up no other tab.
 */
export const openJournalDatabaseWithin = (
  openWithinMs: number,
  name: string,
  steps: readonly SchemaStep[],
): Promise<Result<JournalDatabase, StoreError | NotYet>> =>
  new Promise((answer) => {
    let gaveUp = false;
    const giveUp = (kind: NotYet['kind'], detail: string): void => {
      gaveUp = true;
      answer(failed({ kind, detail }));
    };
    const clock = setTimeout(
      () => giveUp('no-answer', `no answer in ${openWithinMs} ms`),
      openWithinMs,
    );
    const onBlocked = (): void =>
      giveUp('another-tab-holds-it', 'open elsewhere in an older form that did not let go');
    void openJournalDatabase(name, steps, onBlocked).then((opened) => {
      clearTimeout(clock);
      if (gaveUp && opened.ok) opened.value.close();
      else answer(opened);
    });
  });

export const isNotYet = (error: StoreError | NotYet): error is NotYet =>
  error.kind === 'another-tab-holds-it' || error.kind === 'no-answer';

export type NotYet = Pick<WaitingError, 'kind' | 'detail'>;

export interface JournalSchema extends DBSchema {
  entries: { key: number; value: unknown; indexes: { 'by-id': string } };
  meta: { key: 'device' | 'put-away' | 'replaced'; value: unknown };
}

export type StoreName = 'entries' | 'meta';
export type JournalDatabase = IDBPDatabase<JournalSchema>;
export type JournalTransaction<Mode extends IDBTransactionMode> = IDBPTransaction<
  JournalSchema,
  StoreName[],
  Mode
>;
export type SchemaStep = (
  database: JournalDatabase,
  transaction: JournalTransaction<'versionchange'>,
) => void;
