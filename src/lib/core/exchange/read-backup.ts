import { failed, ok, type Result } from '#core/base';
import { decodeEntry, type JournalEntry } from '#core/journal';
import type { BackupError } from './backup-error';
import { backupChecksum, type Backup } from './backup-form';
import { readBackupHead } from './backup-head';
import { findJsonFault } from './json-fault';

/**
 * Reads a backup, all of it or nothing. Blanks and line breaks between the parts do not matter;
 * any other change to the file is noticed. Adding the entries to a journal is `mergeEntries`:
 * reading the same backup twice changes nothing.
 *
 * Errors, in the order they are looked for: `empty`; `not-json` (where it goes wrong, and whether
 * the file just ends too early); `not-a-backup` (the field that tells); `newer-version`;
 * `wrong-count`; `checksum-mismatch` (the file was changed or damaged after it was made);
 * `damaged-entry` (which one, counted from 0, and which field); `same-id-twice` (two different
 * entries under one id).
 * @example
 * readBackup(writeBackup([], 1772438400000)) // => { ok: true, value: { entries: [], made: '2026-03-02T08:00:00.000Z' } }
 * readBackup('{"format": "morn').error // => { kind: 'not-json', position: 16, isCutShort: true }
 * readBackup('{"day": 3}').error // => { kind: 'not-a-backup', field: 'format' }
 */
export function readBackup(text: string): Result<Backup, BackupError> {
  const reading = readBackupInSlices(text);
  let step = reading.next();
  while (!step.done) step = reading.next();
  return step.value;
}

/**
 * The same in slices, for the backup of a long notebook: each step looks at some more entries and
 * reports progress, so that the caller can let the page draw in between; the last one returns
 * what `readBackup` does. Each entry is looked at twice, for the checksum and for what it says.
 * @example
 * [...readBackupInSlices(writeBackup([], 1772438400000))] // => [{ looksDone: 0, looksInAll: 0 }]
 */
export function* readBackupInSlices(
  text: string,
  entriesPerSlice = 1000,
): Generator<BackupProgress, Result<Backup, BackupError>, void> {
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  if (json.trim() === '') return failed({ kind: 'empty' });
  const parsed = parseJson(json);
  if (!parsed.ok) return parsed;
  const head = readBackupHead(parsed.value);
  if (!head.ok) return head;
  const { made, entryCount, checksum, entries } = head.value;
  if (entries.length !== entryCount) {
    return failed({ kind: 'wrong-count', expected: entryCount, found: entries.length });
  }
  const looksInAll = 2 * entryCount;
  const texts: string[] = [];
  for (const [index, entry] of entries.entries()) {
    if (index % entriesPerSlice === 0) yield { looksDone: index, looksInAll };
    const written = rewritten(entry);
    if (written === null) return failed(tooDeep(index));
    texts.push(written);
  }
  yield { looksDone: entryCount, looksInAll };
  if (backupChecksum(made, texts) !== checksum) return failed({ kind: 'checksum-mismatch' });
  const decoder = new BackupDecoder(texts);
  for (const [index, data] of withoutNegativeZero(json, entries, texts).entries()) {
    if (index % entriesPerSlice === 0) yield { looksDone: entryCount + index, looksInAll };
    const error = decoder.add(data, index);
    if (error) return failed(error);
  }
  return ok({ entries: decoder.entries, made });
}

export interface BackupProgress {
  readonly looksDone: number;
  readonly looksInAll: number;
}

function parseJson(json: string): Result<unknown, BackupError> {
  try {
    return ok(JSON.parse(json) as unknown);
  } catch {
    const fault = findJsonFault(json);
    // An engine may give up on JSON that is right but nested without end: no backup is.
    return failed(fault ? { kind: 'not-json', ...fault } : { kind: 'not-a-backup', field: '' });
  }
}

/** An entry as it was written, without blanks; null when it is nested too deep to be written. */
function rewritten(entry: unknown): string | null {
  try {
    return JSON.stringify(entry);
  } catch {
    return null;
  }
}

/** JSON can say -0, which writes as 0 and so escapes the checksum: it is read as 0. */
const withoutNegativeZero = (
  json: string,
  entries: readonly unknown[],
  texts: readonly string[],
): readonly unknown[] =>
  /-0(?:\.0*)?(?:e[+-]?\d+)?\s*[,\]}]/i.test(json)
    ? texts.map((text) => JSON.parse(text) as unknown)
    : entries;

/** Decodes entry after entry; an entry given twice is kept once. */
class BackupDecoder {
  readonly entries: JournalEntry[] = [];
  readonly #indexById = new Map<string, number>();
  readonly #texts: readonly string[];

  constructor(texts: readonly string[]) {
    this.#texts = texts;
  }

  add(data: unknown, index: number): BackupError | null {
    const entry = decodeEntry(data);
    if (!entry.ok) {
      const { field, expected } = entry.error;
      return { kind: 'damaged-entry', index, field, expected };
    }
    const { id } = entry.value;
    const earlier = this.#indexById.get(id);
    if (earlier === undefined) {
      this.entries.push(entry.value);
      this.#indexById.set(id, index);
      return null;
    }
    const isSame = this.#texts[earlier] === this.#texts[index];
    return isSame ? null : { kind: 'same-id-twice', id, earlier, index };
  }
}

const tooDeep = (index: number): BackupError => ({
  kind: 'damaged-entry',
  index,
  field: '',
  expected: 'less nesting',
});
