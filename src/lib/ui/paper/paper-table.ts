import type { GraphTable } from '#core/graphs';
import type { TableNeeds } from './paper-layout';
import { tableCells, type TableCells } from './table-cells';

/** A table as it stands on paper. */
export interface PaperTable extends TableCells {
  /** How wide each column is on paper, in millimetres. */
  readonly columnsMm: readonly number[];
  /** How many lines each row takes, and how high a line is. */
  readonly linesByRow: readonly number[];
  readonly lineMm: number;
  readonly headMm: number;
}

/** The ways to set the table a graph is drawn from: roomy, and narrow with letters as large. */
export function paperTables(table: GraphTable): readonly [PaperTable, PaperTable] {
  const cells = tableCells(table);
  const { head, rows } = cells;
  return [
    setIn(cells, (column) => (column === 0 ? { least: 20, most: 48 } : { least: 24, most: 40 })),
    setIn(cells, (column) => {
      const least = Math.max(
        longestWord(head[column] ?? '') * headLetterMm,
        ...rows.map((row) => longestWord(row[column] ?? '') * letterMm),
      );
      return { least: Math.min(40, least + paddingMm), most: 30 };
    }),
  ];
}

/** Each column as wide as its longest cell, within what is asked. */
const setIn = (
  { head, rows }: TableCells,
  widthsMm: (column: number) => { readonly least: number; readonly most: number },
): PaperTable => {
  const columnsMm = head.map((_, column) => widthOf(rows, column, widthsMm(column)));
  const linesByRow = rows.map((row) =>
    Math.max(...row.map((cell, column) => linesIn(cell, columnsMm[column]! - paddingMm, letterMm))),
  );
  const headLines = head.map((text, column) =>
    linesIn(text, columnsMm[column]! - paddingMm, headLetterMm),
  );
  return {
    ...{ head, rows, columnsMm, linesByRow, lineMm: 6.2 },
    headMm: 2 + 5 * Math.max(2, ...headLines),
  };
};

/** The room a table takes, whatever its blocks: a block may be longer by the rest of one row. */
export const tableNeeds = ({ columnsMm, linesByRow, lineMm, headMm }: PaperTable): TableNeeds => ({
  blockMm: columnsMm.reduce((sum, each) => sum + each, 0),
  rows: linesByRow.reduce((sum, each) => sum + each, 0),
  rowMm: lineMm,
  headMm: headMm + (Math.max(1, ...linesByRow) - 1) * lineMm,
});

/** Letters of 11 points are about this wide, and bold ones; with white and a line at both sides. */
const letterMm = 2.4;
const headLetterMm = 2.6;
const paddingMm = 4;

const longestWord = (text: string): number =>
  Math.max(...text.split(' ').map(({ length }) => length));

/** How many lines words take in so much room. */
const linesIn = (text: string, roomMm: number, letterMm: number): number => {
  let lines = 1;
  let usedMm = 0;
  for (const { length } of text.split(' ')) {
    const wordMm = length * letterMm;
    const besideMm = usedMm === 0 ? wordMm : usedMm + letterMm + wordMm;
    if (besideMm > roomMm + 1e-9 && usedMm > 0) lines += 1;
    usedMm = besideMm > roomMm + 1e-9 ? wordMm : besideMm;
  }
  return lines;
};

const widthOf = (
  rows: TableCells['rows'],
  column: number,
  { least, most }: { readonly least: number; readonly most: number },
): number => {
  const longest = Math.max(0, ...rows.map((row) => (row[column] ?? '').length));
  return Math.max(least, Math.min(most, longest * letterMm + paddingMm));
};
