import { mergeEntries, type JournalEntry } from '#core/journal';
import { backupChecksum, backupFormat, backupVersion } from './backup-form';

/**
 * A whole journal as one file: a JSON document with one entry on each line, so that a person can
 * read it too. Entries that this program does not understand are written as they are. An entry
 * given twice is written once.
 *
 * @param madeAtMs the moment it is made, in milliseconds since 1970
 * @example
 * JSON.parse(writeBackup([], 1772438400000)) // => { format: 'morning-measure-notebook', version: 1, made: '2026-03-02T08:00:00.000Z', entryCount: 0, checksum: 'crc32:38f67f4f', entries: [] }
 */
export function writeBackup(entries: readonly JournalEntry[], madeAtMs: number): string {
  const texts = mergeEntries(entries).map((entry) => JSON.stringify(entry));
  const made = new Date(madeAtMs).toISOString();
  const head = {
    format: backupFormat,
    version: backupVersion,
    made,
    entryCount: texts.length,
    checksum: backupChecksum(made, texts),
  };
  const fields = Object.entries(head).map(([key, value]) => `"${key}": ${JSON.stringify(value)},`);
  const body = texts.length === 0 ? '[]' : `[\n${texts.join(',\n')}\n]`;
  return `{\n${fields.join('\n')}\n"entries": ${body}\n}\n`;
}
