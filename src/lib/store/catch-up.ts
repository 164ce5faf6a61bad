import type { JournalEntry } from '#core/journal';
import { decodeRecords } from './decode-records';
import type { JournalDatabase, JournalTransaction } from './journal-database';
import { lastSequence, readReplacedCount } from './put-away-mark';
import { transact } from './transact';

/** How far a tab has seen the journal grow, and how often it was put away or back. */
export interface SeenSoFar {
  readonly sequence: number;
  readonly replacedCount: number;
}

export const readSeenSoFar = async (
  transaction: JournalTransaction<IDBTransactionMode>,
): Promise<SeenSoFar> => ({
  sequence: await lastSequence(transaction),
  replacedCount: await readReplacedCount(transaction),
});

/** Finds what other tabs kept since this one last looked, leaving out what it kept itself. */
export class CatchUp {
  readonly #database: JournalDatabase;
  readonly #tell: CatchUpListener;
  readonly #ownSequences = new Set<number>();
  #seen: SeenSoFar;
  #isLooking = false;
  #isAskedAgain = false;

  constructor(database: JournalDatabase, seen: SeenSoFar, tell: CatchUpListener) {
    this.#database = database;
    this.#seen = seen;
    this.#tell = tell;
  }

  /** To be called as soon as the transaction that added them is complete. */
  skipOwn(sequences: readonly number[]): void {
    for (const sequence of sequences) this.#ownSequences.add(sequence);
  }

  skipOwnReplacement(): void {
    this.#seen = { ...this.#seen, replacedCount: this.#seen.replacedCount + 1 };
  }

  /** One look at a time; whoever asks meanwhile is served by one more look after it. */
  async look(): Promise<void> {
    this.#isAskedAgain = true;
    if (this.#isLooking) return;
    this.#isLooking = true;
    try {
      while (this.#isAskedAgain) {
        this.#isAskedAgain = false;
        await this.#lookOnce();
      }
    } finally {
      this.#isLooking = false;
    }
  }

  async #lookOnce(): Promise<void> {
    const read = await transact(this.#database, 'readonly', (transaction) =>
      this.#readOthers(transaction),
    );
    // A look that fails is made good by the next one; a closed store was told of already.
    if (!read.ok) return;
    const { seen, records } = read.value;
    const isReplaced = seen.replacedCount !== this.#seen.replacedCount;
    this.#seen = seen;
    if (isReplaced) return this.#tell.replaced();
    const { entries } = decodeRecords(records);
    if (entries.length > 0) this.#tell.appended(entries);
  }

  async #readOthers(
    transaction: JournalTransaction<'readonly'>,
  ): Promise<{ readonly seen: SeenSoFar; readonly records: readonly unknown[] }> {
    const store = transaction.objectStore('entries');
    const unseen = IDBKeyRange.lowerBound(this.#seen.sequence, true);
    const [replacedCount, sequences] = await Promise.all([
      readReplacedCount(transaction),
      store.getAllKeys(unseen),
    ]);
    const others = sequences.filter((sequence) => !this.#ownSequences.delete(sequence));
    const records =
      others.length === sequences.length
        ? await store.getAll(unseen)
        : await Promise.all(others.map((sequence) => store.get(sequence)));
    return { seen: { sequence: sequences.at(-1) ?? this.#seen.sequence, replacedCount }, records };
  }
}

interface CatchUpListener {
  appended(entries: readonly JournalEntry[]): void;
  replaced(): void;
}
