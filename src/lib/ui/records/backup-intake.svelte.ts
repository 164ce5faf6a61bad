import { readBackupInSlices, type Backup, type BackupError } from '#core/exchange';
import type { NotebookState } from '#notebook';
import type { FileError } from '#ui/records-words';
import { backupContents, type BackupContents } from './backup-contents';
import { breathe, finishInSlices } from './in-slices';
import { readTextFile } from './read-text-file';

/** One backup file on its way in: chosen, read, looked at, added. The journal changes only at the end. */
export class BackupIntake {
  stage = $state.raw<BackupStage>({ kind: 'none' });
  readonly #notebook: NotebookState;
  #stopping = new AbortController();

  constructor(notebook: NotebookState) {
    this.#notebook = notebook;
  }

  async choose(file: File): Promise<void> {
    this.stop();
    const { signal } = (this.#stopping = new AbortController());
    const fileName = file.name;
    const show = (step: 'read' | 'look', done: number, all: number): void => {
      if (!signal.aborted) this.stage = { kind: 'reading', fileName, step, done, all };
    };
    show('read', 0, file.size);
    const text = await readTextFile(file, mostBytes, {
      signal,
      onprogress: (done) => show('read', done, file.size),
    });
    if (text === null || signal.aborted) return;
    if (!text.ok) {
      this.stage = { kind: 'refused', fileName, error: text.error };
      return;
    }
    await breathe();
    const backup = await finishInSlices(readBackupInSlices(text.value.text), {
      signal,
      onprogress: ({ looksDone, looksInAll }) => show('look', looksDone, looksInAll),
    });
    if (backup === null || signal.aborted) return;
    if (!backup.ok) this.stage = { kind: 'refused', fileName, error: backup.error };
    else this.stage = this.#found(fileName, backup.value);
  }

  stop(): void {
    this.#stopping.abort();
    this.stage = { kind: 'none' };
  }

  /** Adds what is new; the stage says how many lines were. A failure is the notebook's trouble. */
  async add(): Promise<void> {
    if (this.stage.kind !== 'found') return;
    const found = this.stage;
    this.stage = { kind: 'adding', fileName: found.fileName };
    await breathe();
    const done = await this.#notebook.bringIn(found.backup.entries);
    this.stage = done.ok ? { kind: 'added', fileName: found.fileName, ...done.value } : found;
    // A backup mends damaged records that carry its ids.
    if (done.ok && this.#notebook.damaged.length > 0) await this.#notebook.reload();
  }

  #found(fileName: string, backup: Backup): BackupStage {
    const contents = backupContents(backup.entries, this.#notebook.entries);
    return { kind: 'found', fileName, backup, contents };
  }
}

/** More than the notebook of a whole childhood: a hundred thousand lines are some 40 MB. */
const mostBytes = 200_000_000;

export type BackupStage =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'reading';
      readonly fileName: string;
      /** Bytes of the file are read, or what it says is looked at. */
      readonly step: 'read' | 'look';
      readonly done: number;
      readonly all: number;
    }
  | {
      readonly kind: 'refused';
      readonly fileName: string;
      readonly error: BackupError | FileError;
    }
  | {
      readonly kind: 'found';
      readonly fileName: string;
      readonly backup: Backup;
      readonly contents: BackupContents;
    }
  | { readonly kind: 'adding'; readonly fileName: string }
  | {
      readonly kind: 'added';
      readonly fileName: string;
      readonly added: number;
      readonly known: number;
    };
