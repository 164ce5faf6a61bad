import { failed, ok, type Result } from '#core/base';
import { readRecord, type CsvPlace } from './csv-record';
import type { CsvError, CsvRow, CsvTable, RowProblem } from './csv-row';
import { declaredSeparator, detectSeparator, type Separator } from './separator';

export interface CsvOptions {
  /** Found out from the text when not given. */
  readonly separator?: Separator;
  /** How many characters are read between two reports of progress; 250 000 when not given. */
  readonly sliceLength?: number;
  /** The most records that are read; a million when not given, which takes some 450 MB. */
  readonly mostRows?: number;
}

export interface CsvProgress {
  readonly charactersRead: number;
  readonly charactersInAll: number;
  readonly rowsRead: number;
}

/**
 * Reads a whole table file: RFC 4180, and leniently line breaks of any kind, a byte order mark,
 * quotes and row lengths that do not keep to it. Nothing is trimmed: spaces belong to the field.
 * A final line break does not begin another record; a blank line elsewhere is a record of one
 * empty field and not called ragged. Errors: `empty`, `open-quote` (where it was opened),
 * `too-many-rows` (more than would fit into a tablet's memory, or into any family's log).
 * Source: RFC 4180 (2005) section 2.
 * @example
 * readCsv('day,cm\r\n"2 May",3\r\n').value.rows[1].fields // => ['2 May', '3']
 * readCsv('day,cm\n1\n').value.rows[1].problem // => { kind: 'ragged', expected: 2, found: 1 }
 * readCsv('a,b\n"open,1\n').error // => { kind: 'open-quote', row: 2, line: 2 }
 */
export function readCsv(text: string, options: CsvOptions = {}): Result<CsvTable, CsvError> {
  const reading = readCsvInSlices(text, options);
  let step = reading.next();
  while (!step.done) step = reading.next();
  return step.value;
}

/**
 * The same in slices, for a long file: each step reads some more and reports progress, so that
 * the caller can let the page draw in between; the last one returns what `readCsv` does.
 * @example
 * [...readCsvInSlices('a\nb\nc\n', { sliceLength: 2 })].map(({ rowsRead }) => rowsRead) // => [1, 2, 3]
 */
export function* readCsvInSlices(
  text: string,
  options: CsvOptions = {},
): Generator<CsvProgress, Result<CsvTable, CsvError>, void> {
  const separator = options.separator ?? detectSeparator(text);
  const sliceLength = options.sliceLength ?? 250_000;
  const mostRows = options.mostRows ?? 1_000_000;
  const rows: CsvRow[] = [];
  let place = startOf(text);
  let nextReport = sliceLength;
  if (place.at >= text.length) return failed({ kind: 'empty' });
  while (place.at < text.length) {
    const record = readRecord(text, place, separator);
    const row = rows.length + 1;
    if (row > mostRows) return failed({ kind: 'too-many-rows', most: mostRows });
    if (record.kind === 'open-quote') return failed({ kind: 'open-quote', row, line: record.line });
    const { fields, next } = record;
    const problem = record.problem ?? raggedness(fields, rows[0]?.fields);
    rows.push({ fields, row, line: place.line, problem });
    place = next;
    if (place.at >= nextReport || place.at >= text.length) {
      nextReport = place.at + sliceLength;
      yield { charactersRead: place.at, charactersInAll: text.length, rowsRead: rows.length };
    }
  }
  return ok({ rows, separator });
}

/** Behind a byte order mark, and behind a line that only names the separator. */
function startOf(text: string): CsvPlace {
  const declared = declaredSeparator(text);
  if (declared) return { at: declared.length, line: 2 };
  return { at: text.startsWith('\ufeff') ? 1 : 0, line: 1 };
}

function raggedness(
  fields: readonly string[],
  first: readonly string[] | undefined,
): RowProblem | null {
  const isBlank = fields.length === 1 && fields[0] === '';
  if (first === undefined || isBlank || fields.length === first.length) return null;
  return { kind: 'ragged', expected: first.length, found: fields.length };
}
