import { failed, ok, type Result } from '#core/base';
import { lineWords } from './columns';
import type { CsvRow } from './csv-row';
import { readMoment, type Moment } from './day-cell';
import { cellOf, type Cell } from './import-cell';
import type { ImportField, ImportMapping } from './import-mapping';
import { measuredReader } from './measured-cell';
import { readOwnReading, type OwnReading } from './own-reading';
import { longestNote, readBeside } from './read-beside';
import type { PassedOver, Refusal, RowContent } from './row-content';
import { rowKindOf } from './row-kind';

export type RowRead =
  | { readonly kind: 'content'; readonly content: RowContent }
  | { readonly kind: 'passed-over'; readonly why: PassedOver }
  | { readonly kind: 'refused'; readonly why: Refusal };

/** Makes the reader of a table's rows: give it one row after the other, heading and all. */
export function rowReader(mapping: ImportMapping): (row: CsvRow) => RowRead {
  const readNumber = measuredReader(mapping);
  const readMeasured = (cell: Cell): Result<OwnReading, Refusal> => {
    if (mapping.isOwn) return readOwnReading(cell);
    const measured = readNumber(cell('number'), cell);
    return measured.ok ? ok({ measured: measured.value }) : measured;
  };
  return (row) => {
    const cell = cellOf(row, mapping);
    const skip = reasonToPassOver(row, cell, mapping);
    if (skip) return { kind: 'passed-over', why: skip };
    const content = readContent(row, cell, mapping, readMeasured);
    if (!content.ok) return { kind: 'refused', why: content.error };
    if (content.value === null) return { kind: 'passed-over', why: { kind: 'blank' } };
    return { kind: 'content', content: content.value };
  };
}

function reasonToPassOver(row: CsvRow, cell: Cell, mapping: ImportMapping): PassedOver | null {
  if (mapping.hasHeading && row.row === 1) return { kind: 'heading' };
  if (row.fields.every((field) => field.trim() === '')) return { kind: 'blank' };
  const { only } = mapping;
  if (
    only &&
    (cell('specimen') !== only.specimen || cell('investigation') !== only.investigation)
  ) {
    return { kind: 'other-specimen' };
  }
  const line = lineWords.find((word) => word === cell('line'));
  return line === undefined || line === 'counts' ? null : { kind: line };
}

function readContent(
  row: CsvRow,
  cell: Cell,
  mapping: ImportMapping,
  readMeasured: (cell: Cell) => Result<OwnReading, Refusal>,
): Result<RowContent | null, Refusal> {
  const broken = brokenRow(row, mapping);
  if (broken) return failed(broken);
  const line = cell('line');
  if (line !== '' && line !== 'counts') return failed({ kind: 'line', read: line });
  const kind = rowKindOf(cell, mapping);
  if (!kind.ok) return kind;
  if (kind.value === 'nothing') return ok(null);
  const moment = readMoment(cell, mapping);
  if (!moment.ok) return moment;
  const { day } = moment.value;
  if (kind.value === 'word')
    return within('word', cell('word'), 80, (word) => ({ kind: 'kind-word', day, word }));
  if (kind.value === 'note') {
    return within('note', cell('note'), longestNote, (text) => ({ kind: 'note', day, text }));
  }
  if (kind.value !== 'number') return stateContent(kind.value, moment.value, cell);
  const measured = readMeasured(cell);
  if (!measured.ok) return measured;
  // Our own table says outright which noughts were readings.
  const isNotUp = mapping.zeroMeans === 'not-up-yet' && !mapping.isOwn;
  if (isNotUp && measured.value.measured.exact === 0) {
    return stateContent('not-up-yet', moment.value, cell);
  }
  const beside = readBeside(cell);
  if (!beside.ok) return beside;
  return ok({ kind: 'reading', ...moment.value, ...measured.value, ...beside.value });
}

/**
 * A row with more fields than the heading has most likely been cut at a decimal comma, and one
 * with fewer may lack the very cell that counts. Empty fields at the end, and cells that are not
 * looked at, do no harm.
 */
function brokenRow({ problem, fields }: CsvRow, mapping: ImportMapping): Refusal | null {
  if (problem === null || problem.kind === 'quote-inside') return null;
  if (problem.kind === 'text-after-quote') return problem;
  const hasMore = fields.slice(problem.expected).some((field) => field.trim() !== '');
  const lacks = Object.values(mapping.columnByField).some((column) => column >= fields.length);
  return hasMore || lacks ? problem : null;
}

function stateContent(
  state: Extract<RowContent, { readonly kind: 'state' }>['state'],
  moment: Moment,
  cell: Cell,
): Result<RowContent, Refusal> {
  const why = [cell('why'), cell('note')].filter((text) => text !== '').join('; ');
  return within('why', why, 500, () => ({
    ...{ kind: 'state', ...moment, state },
    ...(why === '' ? {} : { why }),
  }));
}

/** Entries have limits; what is longer is refused rather than cut. */
const within = (
  field: ImportField,
  text: string,
  most: number,
  content: (text: string) => RowContent,
): Result<RowContent, Refusal> => {
  if (text.length > most) return failed({ kind: 'too-long', field, most });
  return text === '' && field === 'word' ? failed({ kind: 'no-word' }) : ok(content(text));
};
