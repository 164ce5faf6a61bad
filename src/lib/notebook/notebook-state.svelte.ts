import { ok, type Result } from '#core/base';
import { civilDayAt, clockTimeAt, type CivilDay, type ClockTime } from '#core/calendar';
import {
  foldEntries,
  mergeEntries,
  momentOfStamp,
  type AnyId,
  type Entry,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
  type Notebook,
  type PersonId,
  type SpecimenId,
  type Stamp,
} from '#core/journal';
import { seriesOf, type Series } from '#core/series';
import type { DamagedRecord, JournalStore, StoreError } from '#store';
import type { Clock } from './clock';
import type { DeviceMemory } from './device-memory';
import { freshId, writeEntries, type WritableDraft } from './entry-writer';

/**
 * The running notebook: the journal in memory, what it adds up to, and the commands the screens
 * call. What a screen shows is always folded from entries that are already durable.
 */
export class NotebookState {
  #entries = $state.raw<readonly JournalEntry[]>([]);
  #damaged = $state.raw<readonly DamagedRecord[]>([]);
  #lastWritten: Stamp | null = null;
  #onTheirWay: Promise<unknown> = Promise.resolve();
  #undoable = $state.raw<Deed | null>(null);
  readonly contents: Notebook = $derived(foldEntries(this.#entries));

  /** The day it is where the family is; it moves on at midnight while the page stays open. */
  today = $state() as CivilDay;
  /** The last saving that failed. What was to be saved is still on the screen that tried. */
  trouble = $state.raw<StoreError | null>(null);
  #author = $state<PersonId | 'nobody' | null>(null);

  constructor(
    readonly store: JournalStore,
    readonly clock: Clock,
    readonly memory: DeviceMemory,
    /** Told of entries that this window wrote, when they are durable. */
    readonly onwritten: (entries: readonly Entry[]) => void = () => {},
  ) {
    this.today = this.#readToday();
    this.#author = (memory.read('author') || null) as PersonId | null;
  }

  /** Reads the journal and begins to follow other tabs. Returns the way to stop. */
  async open(): Promise<() => void> {
    const stopAppended = this.store.onAppendedElsewhere((entries) => this.#take(entries));
    const stopReplaced = this.store.onReplacedElsewhere(() => void this.reload());
    const stopClosed = this.store.onClosed((why) => (this.trouble = why));
    await this.reload();
    return () => {
      stopAppended();
      stopReplaced();
      stopClosed();
      this.store.close();
    };
  }

  async reload(): Promise<void> {
    const kept = await this.store.readAll();
    this.trouble = kept.ok ? null : kept.error;
    if (!kept.ok) return;
    this.#entries = mergeEntries(kept.value.entries);
    this.#damaged = kept.value.damaged;
    this.#undoable = null;
  }

  get entries(): readonly JournalEntry[] {
    return this.#entries;
  }

  /** Records in storage that are no entries any more: reported, never shown as data. */
  get damaged(): readonly DamagedRecord[] {
    return this.#damaged;
  }

  /** Whether this device's clock stands before the last entry: it was set back, or another's is fast. */
  get clockIsBehind(): boolean {
    const { lastStamp } = this.contents;
    return lastStamp !== null && momentOfStamp(lastStamp) > this.clock.nowMs() + anHourMs;
  }

  /** Writes entries, all or none. They are durable, and on every screen, when this resolves. */
  write(...drafts: readonly WritableDraft[]): Promise<Result<readonly EntryId[], StoreError>> {
    return this.writeAll(drafts);
  }

  /** The same for a long list, which not every browser can spread into a call. */
  async writeAll(
    drafts: readonly WritableDraft[],
  ): Promise<Result<readonly EntryId[], StoreError>> {
    const done = await this.#append(drafts);
    if (done.ok) this.#undoable = { entries: done.value, undone: null };
    return done;
  }

  /** Writes what has its own way back on the page, so that "undo the last thing" does not name it. */
  async writeQuietly(
    ...drafts: readonly WritableDraft[]
  ): Promise<Result<readonly EntryId[], StoreError>> {
    const done = await this.#append(drafts);
    if (done.ok) this.#undoable = null;
    return done;
  }

  /** Resolves when nothing is on its way to the store any more: what was left behind is kept. */
  async settled(): Promise<void> {
    await this.#onTheirWay;
  }

  /** What the last deed in this window was, and whether it was undone. */
  get lastDeed(): 'nothing' | 'done' | 'undone' {
    if (this.#undoable === null) return 'nothing';
    return this.#undoable.undone === null ? 'done' : 'undone';
  }

  /** Takes back the last thing done in this window, by new entries; nothing is erased. */
  async undo(): Promise<Result<null, StoreError>> {
    const deed = this.#undoable;
    if (deed === null || deed.undone !== null) return ok(null);
    const done = await this.#append(takingBack(deed.entries));
    if (!done.ok) return done;
    this.#undoable = { ...deed, undone: done.value };
    return ok(null);
  }

  /** Brings back what `undo` took away. */
  async redo(): Promise<Result<null, StoreError>> {
    const deed = this.#undoable;
    if (deed === null || deed.undone === null) return ok(null);
    const done = await this.#append(takingBack(deed.undone));
    if (!done.ok) return done;
    this.#undoable = { ...deed, undone: null };
    return ok(null);
  }

  /** Adds entries from a backup file or another device, as they are. */
  async bringIn(
    entries: readonly JournalEntry[],
  ): Promise<Result<{ added: number; known: number }, StoreError>> {
    const done = await this.store.append(entries);
    this.trouble = done.ok ? null : done.error;
    if (done.ok) this.#take(entries);
    return done;
  }

  newId<Id extends AnyId>(): Id {
    return freshId<Id>(this.clock);
  }

  /**
   * Who is writing: readings carry their name. While nobody was chosen it is the only person of the
   * notebook, if there is just one.
   */
  get author(): PersonId | null {
    const { people } = this.contents;
    if (this.#author === 'nobody') return null;
    if (this.#author && people.has(this.#author)) return this.#author;
    const [first] = people.keys();
    return people.size === 1 ? (first ?? null) : null;
  }

  /** Null: somebody who has no name in this notebook, until another is chosen or the page is left. */
  chooseAuthor(person: PersonId | null): void {
    this.#author = person ?? 'nobody';
    this.memory.write('author', person ?? '');
  }

  /** Nobody was ever chosen: for a notebook that begins anew. */
  forgetAuthor(): void {
    this.#author = null;
    this.memory.write('author', '');
  }

  /** Looks at the calendar again: called when the page wakes and once a minute. */
  lookAtCalendar(): void {
    const today = this.#readToday();
    if (today !== this.today) this.today = today;
  }

  /** The time of day where the family is, such as `08:05`. */
  clockTime(): ClockTime {
    return clockTimeAt(this.clock.nowMs(), this.clock.timeZone());
  }

  seriesOf(specimen: SpecimenId): Series | null {
    return seriesOf(this.contents, specimen, this.today);
  }

  async #append(drafts: readonly WritableDraft[]): Promise<Result<readonly EntryId[], StoreError>> {
    const { author, clock, store } = this;
    const after = this.#last();
    const entries = writeEntries(drafts, { author, clock, device: store.device, after });
    this.#lastWritten = entries.at(-1)?.at ?? this.#lastWritten;
    const saving = store.append(entries);
    this.#onTheirWay = Promise.allSettled([this.#onTheirWay, saving]);
    const done = await saving;
    this.trouble = done.ok ? null : done.error;
    if (!done.ok) return done;
    this.#take(entries);
    this.onwritten(entries);
    return ok(entries.map((entry) => entry.id));
  }

  #take(entries: readonly JournalEntry[]): void {
    this.#entries = mergeEntries(this.#entries, entries);
  }

  /** The latest stamp seen or given out, also for entries still on their way to the store. */
  #last(): Stamp | null {
    const { lastStamp } = this.contents;
    if (lastStamp === null || this.#lastWritten === null) return lastStamp ?? this.#lastWritten;
    return lastStamp > this.#lastWritten ? lastStamp : this.#lastWritten;
  }

  #readToday(): CivilDay {
    return civilDayAt(this.clock.nowMs(), this.clock.timeZone());
  }
}

const anHourMs = 60 * 60 * 1000;

const takingBack = (entries: readonly EntryId[]): EntryDraft[] =>
  [...entries].reverse().map((entry) => ({ kind: 'entry-taken-back', entry }));

interface Deed {
  readonly entries: readonly EntryId[];
  /** The entries that took the deed back, if it was undone. */
  readonly undone: readonly EntryId[] | null;
}
