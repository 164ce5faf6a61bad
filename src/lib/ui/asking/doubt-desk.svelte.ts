import type { EntryId, Reading } from '#core/journal';
import {
  answersSinceChange,
  candidateOf,
  doubtsAbout,
  type Doubt,
  type Series,
} from '#core/series';
import type { NotebookState } from '#notebook';
import type { DoubtDeed } from '#ui/doubt-words';
import { doubtDrafts, lookedAgainDrafts } from './doubt-drafts';

/**
 * The asking about a reading that was just written. It is in the journal already: nothing here can
 * block or lose it. It is asked about once; an answer given in another window ends the asking.
 */
export class DoubtDesk {
  #asked = $state.raw<EntryId | null>(null);
  #step = $state(0);
  /** The doubt that was answered with a second look, while the pad is open for it. */
  #lookingAt = $state.raw<Doubt['kind'] | null>(null);
  /** An answer is on its way: the question has gone, and what comes of it is not there yet. */
  #isWriting = $state(false);
  #seen: readonly EntryId[] = [];

  constructor(readonly notebook: NotebookState) {}

  /** The reading in hand as it stands; null when nothing is asked, or it was taken back. */
  readonly reading: Reading | null = $derived.by(() =>
    this.#asked === null ? null : findReading(this.notebook, this.#asked),
  );

  readonly series: Series | null = $derived.by(
    () => this.reading && this.notebook.seriesOf(this.reading.specimen),
  );

  readonly #doubts: readonly Doubt[] = $derived.by(() =>
    this.reading && this.series ? openDoubtsOf(this.notebook, this.reading, this.series) : [],
  );

  /** The question to ask now, or null. */
  readonly doubt: Doubt | null = $derived.by(() =>
    this.#lookingAt === null ? (this.#doubts[this.#step] ?? null) : null,
  );

  /** Whether another explanation fits as well. */
  readonly hasMore: boolean = $derived.by(() => this.#step + 1 < this.#doubts.length);

  /** Whether the pad is open for a second look. */
  readonly isLooking: boolean = $derived.by(
    () => this.#lookingAt !== null && this.reading !== null,
  );

  readonly isOpen: boolean = $derived.by(
    () => this.#isWriting || this.isLooking || this.doubt !== null,
  );

  /** Asks about a reading, once; answers whether there is something to ask. */
  ask(reading: EntryId): boolean {
    if (this.#seen.includes(reading)) return false;
    this.#seen = [...this.#seen, reading];
    this.#asked = reading;
    this.#step = 0;
    this.#lookingAt = null;
    return this.isOpen;
  }

  somethingElse(): void {
    if (this.hasMore) this.#step += 1;
  }

  /** Writes the answer. Where it cannot be saved, the question stays. */
  async answer(deed: DoubtDeed): Promise<void> {
    const { reading, doubt } = this;
    if (!reading || !doubt) return;
    this.#isWriting = true;
    const written = await this.notebook.write(...doubtDrafts(deed, doubt, reading));
    this.#isWriting = false;
    if (!written.ok) return;
    if (deed === 'look-again') this.#lookingAt = doubt.kind;
    else this.#close();
  }

  /** Writes what the second look read. Where it cannot be saved, it stays on the pad. */
  async lookedAgain(to: Parameters<typeof lookedAgainDrafts>[2]): Promise<void> {
    const { reading } = this;
    if (!reading || this.#lookingAt === null) return;
    const drafts = lookedAgainDrafts(reading, this.#lookingAt, to);
    if ((await this.notebook.write(...drafts)).ok) this.#close();
  }

  #close(): void {
    this.#asked = null;
    this.#lookingAt = null;
  }
}

function findReading({ contents }: NotebookState, id: EntryId): Reading | null {
  for (const { readings } of contents.logBySpecimen.values()) {
    const found = readings.find((reading) => reading.id === id);
    if (found) return found.takenBack ? null : found;
  }
  return null;
}

function openDoubtsOf(notebook: NotebookState, reading: Reading, series: Series): readonly Doubt[] {
  if (answersSinceChange(notebook.contents, reading).length > 0) return [];
  return doubtsAbout(candidateOf(reading), series, sameInvestigation(notebook, series));
}

/** The logs of the other specimens of the same investigation. */
const sameInvestigation = (
  notebook: NotebookState,
  { specimen, investigation }: Series,
): readonly Series[] =>
  [...notebook.contents.specimens.values()]
    .filter(({ id, investigation: of }) => of === investigation.id && id !== specimen.id)
    .flatMap(({ id }) => notebook.seriesOf(id) ?? []);
