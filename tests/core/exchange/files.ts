import { readFileSync } from 'node:fs';
import { guessColumns, readCsv, type ColumnGuess, type CsvRow } from '#core/exchange';

/** A file of checked values, with its source inside or in the test that uses it. */
export const referenceText = (name: string): string =>
  readFileSync(new URL(`../../reference/${name}`, import.meta.url), 'utf8');

export const referenceJson = <Shape>(name: string): Shape =>
  JSON.parse(referenceText(name)) as Shape;

/** The platform's own decoder, as a screen would hand it in. */
export const decode = (bytes: Uint8Array, encoding: string): string =>
  new TextDecoder(encoding).decode(bytes);

/** The rows of a table that can be read, and what is guessed of its columns. */
export function table(text: string): { readonly rows: readonly CsvRow[] } & ColumnGuess {
  const read = readCsv(text);
  if (!read.ok) throw new Error(`Not a table: ${read.error.kind}`);
  const { rows, separator } = read.value;
  return { rows, ...guessColumns(rows, separator) };
}
