import { failed, ok, type Result } from '#core/base';
import type { BackupError } from './backup-error';
import { backupFormat, backupVersion } from './backup-form';

/** What stands around the entries of a backup. */
export interface BackupHead {
  readonly made: string;
  readonly entryCount: number;
  readonly checksum: string;
  readonly entries: readonly unknown[];
}

/** Reads it out of any JSON document; which field tells that it is no backup, if it is none. */
export function readBackupHead(document: unknown): Result<BackupHead, BackupError> {
  const field = (name: string): unknown =>
    typeof document === 'object' && document !== null && Object.hasOwn(document, name)
      ? (document as Readonly<Record<string, unknown>>)[name]
      : undefined;
  const [made, entryCount, checksum, entries] = ['made', 'entryCount', 'checksum', 'entries'].map(
    field,
  );
  const version = field('version');
  const missing = (name: string) => failed({ kind: 'not-a-backup', field: name } as const);
  if (field('format') !== backupFormat) return missing('format');
  if (!isCount(version) || version < 1) return missing('version');
  if (version > backupVersion) return failed({ kind: 'newer-version', version });
  if (typeof made !== 'string' || !isMoment(made)) return missing('made');
  if (!isCount(entryCount)) return missing('entryCount');
  if (typeof checksum !== 'string') return missing('checksum');
  if (!Array.isArray(entries)) return missing('entries');
  return ok({ made, entryCount, checksum, entries });
}

const isCount = (value: unknown): value is number =>
  Number.isSafeInteger(value) && Number(value) >= 0;

const isMoment = (text: string): boolean =>
  /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(text) && !Number.isNaN(Date.parse(text));
