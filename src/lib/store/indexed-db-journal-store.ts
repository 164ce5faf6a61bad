import { failed, ok, type Result } from '#core/base';
import type { DeviceId, JournalEntry } from '#core/journal';
import { appendRecords } from './append-records';
import { CatchUp, readSeenSoFar, type SeenSoFar } from './catch-up';
import { decodeRecords, readRecords } from './decode-records';
import { keepDeviceId } from './device-id';
import { listenElsewhere, type ElsewhereSignal } from './elsewhere-signal';
import {
  isNotYet,
  openJournalDatabase,
  openJournalDatabaseWithin,
  schemaSteps,
  type JournalDatabase,
  type JournalTransaction,
  type SchemaStep,
} from './journal-database';
import type { Appended, JournalStore, Kept, OpenError, PutAway, StoreError } from './journal-store';
import { Listeners } from './listeners';
import { eraseAllPutAway, putAllBack, putAwayAll, readPutAway } from './put-away-mark';
import { transact } from './transact';

/**
 * Opens the journal kept in the browser's own database. Where it can be opened only later
 * (another tab still works in an older form, or the browser gives no answer), the error holds
 * the way to go on waiting.
 */
export async function openIndexedDbJournalStore(
  options: IndexedDbOptions = {},
): Promise<Result<JournalStore, OpenError>> {
  const { databaseName = 'morning-measure', steps = schemaSteps, openWithinMs = 8000 } = options;
  const opened = await openJournalDatabaseWithin(openWithinMs, databaseName, steps);
  if (opened.ok) return storeOn(opened.value);
  const { error } = opened;
  if (!isNotYet(error)) return failed(error);
  const whenOpen = async (): Promise<Result<JournalStore, OpenError>> => {
    const later = await openJournalDatabase(databaseName, steps);
    return later.ok ? storeOn(later.value) : later;
  };
  return failed({ ...error, whenOpen });
}

async function storeOn(database: JournalDatabase): Promise<Result<JournalStore, StoreError>> {
  const begun = await transact(database, 'readwrite', async (transaction) => ({
    device: await keepDeviceId(transaction),
    seen: await readSeenSoFar(transaction),
  }));
  if (begun.ok) return ok(new IndexedDbJournalStore(database, begun.value));
  database.close();
  return begun;
}

class IndexedDbJournalStore implements JournalStore {
  readonly keeps = 'on-this-device';
  readonly device: DeviceId;
  readonly #database: JournalDatabase;
  readonly #catchUp: CatchUp;
  readonly #signal: ElsewhereSignal;
  readonly #appended = new Listeners<readonly JournalEntry[]>();
  readonly #replaced = new Listeners<void>();
  readonly #closed = new Listeners<StoreError>();
  #isClosed = false;

  constructor(database: JournalDatabase, begun: Begun) {
    this.device = begun.device;
    this.#database = database;
    this.#catchUp = new CatchUp(database, begun.seen, {
      appended: (entries) => this.#appended.tell(entries),
      replaced: () => this.#replaced.tell(),
    });
    this.#signal = listenElsewhere(database.name, () => void this.#catchUp.look());
    database.addEventListener('versionchange', () =>
      this.#closeBecause('a newer program brings the journal into its form'),
    );
    database.addEventListener('close', () => this.#closeBecause('closed by the browser'));
  }

  async readAll(): Promise<Result<Kept, StoreError>> {
    const read = await this.#transact('readonly', readRecords);
    return read.ok ? ok(decodeRecords(read.value)) : read;
  }

  async append(entries: readonly JournalEntry[]): Promise<Result<Appended, StoreError>> {
    const appended = await this.#transact('readwrite', (transaction) =>
      appendRecords(transaction, entries),
    );
    if (!appended.ok) return appended;
    const added = appended.value.length;
    this.#catchUp.skipOwn(appended.value);
    if (added > 0) this.#signal.announce();
    return ok({ added, known: entries.length - added });
  }

  onAppendedElsewhere(listener: (entries: readonly JournalEntry[]) => void): () => void {
    return this.#appended.add(listener);
  }

  onReplacedElsewhere(listener: () => void): () => void {
    return this.#replaced.add(listener);
  }

  onClosed(listener: (why: StoreError) => void): () => void {
    return this.#closed.add(listener);
  }

  putAway(atMs: number): Promise<Result<PutAway, StoreError>> {
    return this.#replace((transaction) => putAwayAll(transaction, atMs));
  }

  readPutAway(): Promise<Result<PutAway | null, StoreError>> {
    return this.#transact('readonly', readPutAway);
  }

  putBack(): Promise<Result<Appended, StoreError>> {
    return this.#replace(putAllBack);
  }

  erasePutAway(): Promise<Result<null, StoreError>> {
    return this.#transact('readwrite', eraseAllPutAway);
  }

  close(): void {
    this.#isClosed = true;
    this.#signal.stop();
    this.#database.close();
    for (const listeners of [this.#appended, this.#replaced, this.#closed]) listeners.clear();
  }

  async #replace<Value>(
    work: (transaction: JournalTransaction<'readwrite'>) => Promise<Value>,
  ): Promise<Result<Value, StoreError>> {
    const replaced = await this.#transact('readwrite', work);
    if (!replaced.ok) return replaced;
    this.#catchUp.skipOwnReplacement();
    this.#signal.announce();
    return replaced;
  }

  async #transact<Mode extends 'readonly' | 'readwrite', Value>(
    mode: Mode,
    work: (transaction: JournalTransaction<Mode>) => Promise<Value>,
  ): Promise<Result<Value, StoreError>> {
    const end = await transact(this.#database, mode, work);
    // A connection can be lost without an event.
    if (!end.ok && end.error.kind === 'closed') this.#closeBecause(end.error.detail);
    return end;
  }

  #closeBecause(detail: string): void {
    if (this.#isClosed) return;
    this.#closed.tell({ kind: 'closed', detail });
    this.close();
  }
}

export interface IndexedDbOptions {
  readonly databaseName?: string;
  readonly steps?: readonly SchemaStep[];
  /** How long to wait for an answer before giving up. */
  readonly openWithinMs?: number;
}

interface Begun {
  readonly device: DeviceId;
  readonly seen: SeenSoFar;
}
