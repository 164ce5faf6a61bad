import { readDayText, type CivilDay } from '#core/calendar';
import type { CsvRow, ImportMapping } from '#core/exchange';

/** Cells of a table that show what a question about it is about. */

/** The first date that is a day either way round, with both days. */
export function eitherWayDay(rows: readonly CsvRow[], mapping: ImportMapping): EitherWayDay | null {
  for (const text of cellsOf(rows, mapping, 'day')) {
    const read = readDayText(text);
    if (!read.ok && read.error.kind === 'ambiguous-order') return read.error;
  }
  return null;
}

/** The first day that is only a number. */
export function firstDayNumber(rows: readonly CsvRow[], mapping: ImportMapping): number | null {
  for (const text of cellsOf(rows, mapping, 'day')) {
    const digits = /^(?:days?\s*)?(-?\d{1,6})(?:\.0*)?$/i.exec(text.trim())?.[1];
    if (digits !== undefined) return Number(digits);
  }
  return null;
}

/** The first number with a comma before three digits: 1,234. */
export function unclearNumber(rows: readonly CsvRow[], mapping: ImportMapping): string | null {
  for (const text of cellsOf(rows, mapping, 'number')) if (/\d,\d{3}\b/.test(text)) return text;
  return null;
}

function* cellsOf(
  rows: readonly CsvRow[],
  { columnByField, hasHeading, only }: ImportMapping,
  field: 'day' | 'number',
): Generator<string> {
  const column = columnByField[field];
  const named = columnByField.specimen;
  if (column === undefined) return;
  for (const { fields, row } of rows) {
    if (hasHeading && row === 1) continue;
    if (only && named !== undefined && fields[named]?.trim() !== only.specimen) continue;
    yield fields[column] ?? '';
  }
}

export interface EitherWayDay {
  readonly text: string;
  readonly dayFirst: CivilDay;
  readonly monthFirst: CivilDay;
}
