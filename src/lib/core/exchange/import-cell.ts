import type { CsvRow } from './csv-row';
import { unguardText } from './formula-guard';
import type { ImportField, ImportMapping } from './import-mapping';

/** The text of a row's cell by field; empty where the table has no such column. */
export type Cell = (field: ImportField) => string;

/**
 * Reads the cells of a row. In our own table blanks belong to the text, and what was guarded
 * against running as a formula is freed from its guard; elsewhere blanks around it are let go.
 */
export const cellOf =
  ({ fields }: Pick<CsvRow, 'fields'>, { columnByField, isOwn }: ImportMapping): Cell =>
  (field) => {
    const column = columnByField[field];
    const text = column === undefined ? '' : (fields[column] ?? '');
    return isOwn ? unguardText(text) : text.trim();
  };
