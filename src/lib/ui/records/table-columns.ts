import type { CsvRow } from '#core/exchange';

/** A column of a table as it is offered for choosing. */
export interface TableColumn {
  readonly heading: string;
  /** Its first cell that is not empty, cut short, to know it by. */
  readonly sample: string;
}

export function tableColumns(rows: readonly CsvRow[], hasHeading: boolean): readonly TableColumn[] {
  const first = rows[0]?.fields ?? [];
  const body = rows.slice(hasHeading ? 1 : 0, rowsLookedAt);
  return first.map((cell, column) => ({
    heading: hasHeading && cell.trim() !== '' ? cell.trim().slice(0, 60) : `Column ${column + 1}`,
    sample: (body.find(({ fields }) => fields[column]?.trim())?.fields[column] ?? '')
      .trim()
      .slice(0, 24),
  }));
}

const rowsLookedAt = 50;
