import * as v from 'valibot';
import { failed, ok, type Result } from '#core/base';
import { entrySchemas, envelopeSchema, type Entry, type EntryKind } from './entry-schema';
import type { DeviceId, EntryId } from './id';
import type { Stamp } from './stamp';

/** An entry of a kind or version made by a later program: kept and passed on, not understood. */
export interface UnknownEntry {
  readonly id: EntryId;
  readonly at: Stamp;
  readonly device: DeviceId;
  readonly kind: string;
  readonly v: number;
  readonly [field: string]: unknown;
}

/** Anything the journal can hold. */
export type JournalEntry = Entry | UnknownEntry;

/**
 * Looks at unknown data (from storage, a file, another device) and says what entry it is.
 * A later program's entry comes back as it was; a damaged one is an error that names the field.
 *
 * @example
 * decodeEntry({ kind: 'reading-taken' }).error.kind // => 'not-an-entry'
 */
export function decodeEntry(data: unknown): Result<JournalEntry, DecodeError> {
  const envelope = v.safeParse(envelopeSchema, data);
  if (!envelope.success) return failed(describe('not-an-entry', envelope.issues));
  const { kind, v: version } = envelope.output;
  if (!isEntryKind(kind) || version > 1) return ok(data as UnknownEntry);
  const entry = v.safeParse(entrySchemas[kind], data);
  return entry.success ? ok(data as Entry) : failed(describe('damaged-entry', entry.issues, kind));
}

/**
 * Whether this version understands an entry.
 * @example
 * isUnderstood({ kind: 'moon-seen', v: 1 }) // => false
 */
export const isUnderstood = (entry: JournalEntry): entry is Entry =>
  isEntryKind(entry.kind) && entry.v === 1;

const entryKinds: ReadonlySet<string> = new Set(Object.keys(entrySchemas));

const isEntryKind = (kind: string): kind is EntryKind => entryKinds.has(kind);

const describe = (
  kind: DecodeError['kind'],
  issues: readonly [v.BaseIssue<unknown>, ...v.BaseIssue<unknown>[]],
  entryKind?: string,
): DecodeError => ({
  kind,
  ...(entryKind === undefined ? {} : { entryKind }),
  field: v.getDotPath(issues[0]) ?? '',
  expected: issues[0].expected ?? issues[0].message,
});

export interface DecodeError {
  readonly kind: 'not-an-entry' | 'damaged-entry';
  readonly entryKind?: string;
  /** Which field, as a path with dots; empty for the whole. */
  readonly field: string;
  readonly expected: string;
}
