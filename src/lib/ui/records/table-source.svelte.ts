import { readCsvInSlices, type CsvError, type CsvRow, type Separator } from '#core/exchange';
import type { FileError } from '#ui/records-words';
import { finishInSlices } from './in-slices';
import { readTextFile } from './read-text-file';

/** The table on its way in: a file chosen or text pasted, read into rows. */
export class TableSource {
  stage = $state.raw<TableStage>({ kind: 'none' });
  #stopping = new AbortController();

  /** The table in a file; null when it was refused or stopped. */
  async choose(file: File): Promise<ReadTable | null> {
    const signal = this.#begin();
    const name = file.name;
    const onprogress = (done: number): void => {
      if (!signal.aborted) this.stage = { kind: 'reading', name, done, all: file.size };
    };
    onprogress(0);
    const read = await readTextFile(file, mostBytes, { signal, onprogress });
    if (read === null || signal.aborted) return null;
    if (read.ok) return this.#readTable(name, read.value.text, read.value.isGuess, signal);
    this.stage = { kind: 'refused', name, error: read.error };
    return null;
  }

  async paste(text: string): Promise<ReadTable | null> {
    return this.#readTable('the pasted text', text, false, this.#begin());
  }

  stop(): void {
    this.#stopping.abort();
    this.stage = { kind: 'none' };
  }

  #begin(): AbortSignal {
    this.stop();
    this.#stopping = new AbortController();
    return this.#stopping.signal;
  }

  async #readTable(
    name: string,
    text: string,
    isGuessedText: boolean,
    signal: AbortSignal,
  ): Promise<ReadTable | null> {
    const table = await finishInSlices(readCsvInSlices(text, { sliceLength: 100_000, mostRows }), {
      signal,
      onprogress: ({ charactersRead, charactersInAll }) => {
        this.stage = { kind: 'reading', name, done: charactersRead, all: charactersInAll };
      },
    });
    if (table === null || signal.aborted) return null;
    this.stage = table.ok ? { kind: 'none' } : { kind: 'refused', name, error: table.error };
    return table.ok ? { name, isGuessedText, ...table.value } : null;
  }
}

/** Five hundred years of mornings. */
const mostRows = 200_000;

/** A hundred thousand rows of readings are some 5 MB. */
const mostBytes = 32_000_000;

export type TableStage =
  | { readonly kind: 'none' }
  /** Bytes of the file, or characters of its text, done and in all. */
  | { readonly kind: 'reading'; readonly name: string; readonly done: number; readonly all: number }
  | { readonly kind: 'refused'; readonly name: string; readonly error: CsvError | FileError };

export interface ReadTable {
  readonly name: string;
  readonly rows: readonly CsvRow[];
  readonly separator: Separator;
  /** Whether letters beyond A to Z may have been read wrongly. */
  readonly isGuessedText: boolean;
}
