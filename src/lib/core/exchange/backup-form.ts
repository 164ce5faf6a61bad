import type { JournalEntry } from '#core/journal';
import { checksumOf } from './checksum';

/** The name that every backup of a notebook begins with. */
export const backupFormat = 'morning-measure-notebook';

/** The version of the form that this program writes. */
export const backupVersion = 1;

/** A whole journal out of a backup. */
export interface Backup {
  /** Every entry, also those this program does not understand, just as they were written. */
  readonly entries: readonly JournalEntry[];
  /** When the backup was made: 2026-03-02T08:00:00.000Z. */
  readonly made: string;
}

/**
 * The checksum of a backup covers what the file says, not how it is laid out: the version of the
 * form, the moment it was made, and every entry, written again without blanks.
 */
export const backupChecksum = (made: string, entryTexts: readonly string[]): string =>
  `crc32:${checksumOf([`${backupVersion} ${made}`, ...entryTexts.flatMap((text) => ['\n', text])])}`;
