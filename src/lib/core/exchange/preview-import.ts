import { ColumnMark } from './column-mark';
import type { CsvRow } from './csv-row';
import type { ImportMapping } from './import-mapping';
import type { ImportPreview, ImportProgress, Outcome, PreviewRow } from './import-preview';
import { TotalsSoFar } from './import-totals';
import type { ExistingLog } from './existing-lines';
import { KnownLines } from './known-lines';
import type { RowContent } from './row-content';
import { rowReader, type RowRead } from './row-reader';

/**
 * What bringing these rows into one specimen's log would do, row by row, with counts and exact
 * totals. Nothing is written. A row that the log says already (same day and time, same value) is
 * `already-there`, so that the same table brought in twice changes nothing. The mark, when the
 * mapping names none, is the coarsest on which every number of the table lies.
 *
 * @param rows all rows of the table, the heading among them
 * @param existing the log of the specimen they would go to; null for a new one
 * @example
 * previewImport(readCsv('day,cm\n2026-03-02,3\n').value.rows, guessColumns(readCsv('day,cm\n2026-03-02,3\n').value.rows).mapping, null).rows[1].what // => { kind: 'reading', day: '2026-03-02', measured: { text: '3', unit: 'cm', mark: '1 cm', exact: 30000000 } }
 */
export function previewImport(
  rows: readonly CsvRow[],
  mapping: ImportMapping,
  existing: ExistingLog | null,
): ImportPreview {
  const previewing = previewImportInSlices(rows, mapping, existing, rows.length + 1);
  let step = previewing.next();
  while (!step.done) step = previewing.next();
  return step.value;
}

/**
 * The same in slices, for a long table: each step does some more rows and reports progress; the
 * last one returns what `previewImport` does.
 * @example
 * [...previewImportInSlices(readCsv('day,cm\n2026-03-02,3\n').value.rows, guessColumns(readCsv('day,cm\n2026-03-02,3\n').value.rows).mapping, null, 1)].length // => 2
 */
export function* previewImportInSlices(
  rows: readonly CsvRow[],
  mapping: ImportMapping,
  existing: ExistingLog | null,
  rowsPerSlice = 2000,
): Generator<ImportProgress, ImportPreview, void> {
  const readRow = rowReader(mapping);
  const known = new KnownLines(existing);
  const columnMark = new ColumnMark();
  const totals = new TotalsSoFar();
  const offered: Offered[] = [];
  for (const row of rows) {
    const read = readRow(row);
    if (read.kind === 'content' && read.content.kind === 'reading') {
      columnMark.add(read.content.measured);
      totals.add(read.content);
    }
    const isKnown = read.kind === 'content' && known.take(read.content);
    offered.push({ row, read, isKnown });
    if (offered.length % rowsPerSlice === 0) {
      yield { rowsDone: offered.length, rowsInAll: rows.length };
    }
  }
  const hasOwnMarks = mapping.mark !== null || mapping.columnByField.mark !== undefined;
  const marks = hasOwnMarks ? null : columnMark;
  const previewed = offered.map((each) => previewOf(each, known, marks));
  return { rows: previewed, countByOutcome: countOutcomes(previewed), totals: totals.totals };
}

interface Offered {
  readonly row: CsvRow;
  readonly read: RowRead;
  readonly isKnown: boolean;
}

function previewOf(
  { row: { row, line }, read, isKnown }: Offered,
  known: KnownLines,
  marks: ColumnMark | null,
): PreviewRow {
  if (read.kind === 'passed-over')
    return { row, line, outcome: read.kind, what: null, why: read.why };
  if (read.kind === 'refused') return { row, line, outcome: read.kind, what: null, why: read.why };
  const what = marks ? remarked(read.content, marks) : read.content;
  if (!isKnown) return { row, line, outcome: what.kind, what, why: null } as PreviewRow;
  return { row, line, outcome: 'already-there', what, why: known.nextAnswer(read.content) };
}

/** A number's row with the mark of the whole column. */
function remarked(content: RowContent, marks: ColumnMark): RowContent {
  if (content.kind !== 'reading') return content;
  const { measured } = content;
  const mark = marks.markOf(measured.unit) ?? measured.mark;
  return mark === measured.mark ? content : { ...content, measured: { ...measured, mark } };
}

function countOutcomes(rows: readonly PreviewRow[]): Readonly<Record<Outcome, number>> {
  const counts: Record<Outcome, number> = {
    reading: 0,
    state: 0,
    'kind-word': 0,
    note: 0,
    'already-there': 0,
    'passed-over': 0,
    refused: 0,
  };
  for (const { outcome } of rows) counts[outcome] += 1;
  return counts;
}
