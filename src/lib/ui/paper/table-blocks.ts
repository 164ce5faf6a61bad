import type { PaperTable } from './paper-table';

/** The rows in at most so many blocks, about as long as each other, in order down and across. */
export const tableBlocks = (
  { rows, linesByRow }: Pick<PaperTable, 'rows' | 'linesByRow'>,
  blocks: number,
): readonly PaperTable['rows'][] => {
  const lines = linesByRow.reduce((sum, each) => sum + each, 0);
  const most = Math.ceil(lines / Math.max(1, blocks)) + Math.max(1, ...linesByRow) - 1;
  const filled: (readonly string[])[][] = [];
  let used = most;
  rows.forEach((row, index) => {
    const more = linesByRow[index] ?? 1;
    if (used + more > most) {
      filled.push([]);
      used = 0;
    }
    filled.at(-1)!.push(row);
    used += more;
  });
  return filled;
};

/** The same blocks on so many sheets. */
export const blocksBySheet = (
  table: PaperTable,
  { blocks, sheets }: { readonly blocks: number; readonly sheets: number },
): readonly (readonly PaperTable['rows'][])[] => {
  const all = tableBlocks(table, blocks * sheets);
  return Array.from({ length: Math.ceil(all.length / blocks) }, (_, sheet) =>
    all.slice(sheet * blocks, (sheet + 1) * blocks),
  );
};
