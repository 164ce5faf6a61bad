import type { Result } from '#core/base';
import type { DeviceId, JournalEntry } from '#core/journal';

/**
 * Where a journal is kept. A port of a few verbs; adapters hold no rules of the notebook.
 * Entries are only ever added. `append` is done when the entries are durable, and appending an
 * entry that is already there changes nothing. What it promises is numbered in SPEC.md.
 */
export interface JournalStore {
  /** Whether what is appended is still there after the window closes. */
  readonly keeps: 'on-this-device' | 'until-closed';
  /** This device's own id, made at the first opening. */
  readonly device: DeviceId;
  /** Everything kept, in the order it was appended, and what could not be read. */
  readAll(): Promise<Result<Kept, StoreError>>;
  append(entries: readonly JournalEntry[]): Promise<Result<Appended, StoreError>>;
  /**
   * Told of entries that another tab appended since this store was opened. Listen first, then
   * read: an entry may be told that was read already. Returns the way to stop listening.
   */
  onAppendedElsewhere(listener: (entries: readonly JournalEntry[]) => void): () => void;
  /** Told when the journal was put away or put back in another tab: read it again. */
  onReplacedElsewhere(listener: () => void): () => void;
  /** Told when the store was closed by anything but `close`: it has to be opened again. */
  onClosed(listener: (why: StoreError) => void): () => void;
  /** Puts the whole journal away, out of sight, so that it can still be put back. */
  putAway(atMs: number): Promise<Result<PutAway, StoreError>>;
  /** What was put away and can be put back, or null. */
  readPutAway(): Promise<Result<PutAway | null, StoreError>>;
  putBack(): Promise<Result<Appended, StoreError>>;
  /** Erases for good what was put away. */
  erasePutAway(): Promise<Result<null, StoreError>>;
  close(): void;
}

export interface Kept {
  readonly entries: readonly JournalEntry[];
  readonly damaged: readonly DamagedRecord[];
}

/** A record that is not an entry any more: reported, kept where it is, never shown as data. */
export interface DamagedRecord {
  readonly record: unknown;
  readonly field: string;
  readonly expected: string;
}

export interface Appended {
  /** Entries that were new. */
  readonly added: number;
  /** Entries that were there already. */
  readonly known: number;
}

export interface PutAway {
  readonly atMs: number;
  readonly entryCount: number;
}

export interface StoreError {
  readonly kind: 'no-room' | 'interrupted' | 'closed' | 'newer-program-has-it' | 'unavailable';
  /** For a grown-up who reports it: the browser's own words, not for the screen. */
  readonly detail: string;
}

/** Why a store could not be opened. */
export type OpenError = StoreError | WaitingError;

/** It could not be opened yet: another tab still works in the older form, or nothing answers. */
export interface WaitingError {
  readonly kind: 'another-tab-holds-it' | 'no-answer';
  readonly detail: string;
  /** Goes on waiting, as long as it takes, and opens it then. */
  whenOpen(): Promise<Result<JournalStore, OpenError>>;
}
