import { sheetRoom, type PaperSizeName, type SheetDirection } from './paper-sizes';

/** What has to stand on a sheet. All lengths are millimetres on paper. */
export interface SheetNeeds {
  /** Squares of the graph. */
  readonly columns: number;
  readonly rows: number;
  /** Room for words around the squares; it may change with their size. */
  readonly edgesAt: (squareMm: number) => SheetEdges;
  /** The ways the table can be set, the one liked best first; none where there is no table. */
  readonly tables: readonly TableNeeds[];
  /** Title, key and other lines over and under the squares, in all. */
  readonly linesMm: number;
}

/** A table that can stand in blocks of any number of rows. */
export interface TableNeeds {
  readonly rows: number;
  readonly rowMm: number;
  readonly headMm: number;
  readonly blockMm: number;
}

export interface SheetEdges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface SheetLayout {
  readonly direction: SheetDirection;
  readonly squareMm: number;
  readonly tablePlace: 'beside' | 'above' | 'next-sheet' | 'none';
  /** Which of the ways to set the table was taken. */
  readonly tableAt: number;
  /** In how many blocks, side by side, the table stands on a sheet. */
  readonly tableBlocks: number;
  /** How many sheets the table needs for itself: none where it stands with the graph. */
  readonly tableSheets: number;
  /** How many squares there is room for: for paper that is to be full of them. */
  readonly room: { readonly columns: number; readonly rows: number };
}

/**
 * Lays a graph and its table on one sheet, with the largest squares that fit: 1 cm where it can
 * be. The table stands beside the graph rather than above it, and is set narrow before the squares
 * become smaller. It goes to a sheet of its own only where it would make the squares too small to
 * draw in. Upright sheets are taken before sideways ones. A drawing that is too large even for
 * the smallest square is made to fit.
 *
 * @param ways which ways the sheet may lie, the one liked best first
 */
export function paperLayout(
  size: PaperSizeName,
  needs: SheetNeeds,
  ways: readonly SheetDirection[] = ['tall', 'wide'],
): SheetLayout {
  const hasTable = needs.tables.length > 0;
  const together = bestOf(size, needs, hasTable ? ['beside', 'above'] : ['none'], ways);
  if (together && together.squareMm >= leastTogetherMm) return together;
  const apart = hasTable ? bestOf(size, needs, ['next-sheet'], ways) : null;
  if (apart && (!together || apart.squareMm > together.squareMm)) return apart;
  return together ?? tightest(size, needs, ways);
}

/** Sizes of squares that paper is ruled in, the largest first. */
export const squareSizesMm = [10, 8, 6, 5, 4, 3] as const;
/** Squares that a table may make as small as this, and no smaller (common practice, no source). */
export const leastTogetherMm = 6;
/** The name of the sheet over everything, and the check bars at its foot. */
export const headMm = 18;
export const footMm = 22;
/** Between a table and the graph, and between blocks of a table. */
export const gapMm = 6;

const bestOf = (
  size: PaperSizeName,
  needs: SheetNeeds,
  places: readonly SheetLayout['tablePlace'][],
  ways: readonly SheetDirection[],
): SheetLayout | null => {
  // On a sheet of its own there is no need to set it narrow.
  const settings = places.includes('next-sheet') ? [0] : [...needs.tables.keys()];
  for (const squareMm of squareSizesMm)
    for (const tableAt of needs.tables.length > 0 ? settings : [0])
      for (const tablePlace of places)
        for (const direction of ways) {
          const layout = laidOut(size, needs, { squareMm, tableAt, tablePlace, direction });
          const { columns, rows } = layout.room;
          if (columns >= needs.columns && rows >= needs.rows) return layout;
        }
  return null;
};

const laidOut = (
  size: PaperSizeName,
  needs: SheetNeeds,
  chosen: Pick<SheetLayout, 'squareMm' | 'tableAt' | 'tablePlace' | 'direction'>,
): SheetLayout => {
  const sheet = sheetRoom(size, chosen.direction);
  const edges = needs.edgesAt(chosen.squareMm);
  const workMm = sheet.heightMm - headMm - footMm;
  const table = tableRoom(needs.tables[chosen.tableAt], chosen.tablePlace, sheet.widthMm, workMm);
  const widthMm = sheet.widthMm - table.widthMm - edges.left - edges.right;
  const heightMm = workMm - table.heightMm - needs.linesMm - edges.top - edges.bottom;
  const squaresIn = (lengthMm: number): number =>
    Math.max(0, Math.floor(lengthMm / chosen.squareMm + 1e-9));
  const room = { columns: squaresIn(widthMm), rows: squaresIn(heightMm) };
  return { ...chosen, tableBlocks: table.blocks, tableSheets: table.sheets, room };
};

interface TableRoom {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly blocks: number;
  readonly sheets: number;
}

const tableRoom = (
  table: TableNeeds | undefined,
  place: SheetLayout['tablePlace'],
  widthMm: number,
  heightMm: number,
): TableRoom => {
  if (!table) return { widthMm: 0, heightMm: 0, blocks: 0, sheets: 0 };
  const abreast = Math.max(1, Math.floor((widthMm + gapMm) / (table.blockMm + gapMm)));
  const rowsDown = Math.max(1, Math.floor((heightMm - table.headMm) / table.rowMm));
  const blocks = Math.max(1, Math.ceil(table.rows / rowsDown));
  if (place === 'beside')
    return { widthMm: blocks * (table.blockMm + gapMm), heightMm: 0, blocks, sheets: 0 };
  if (place === 'next-sheet') {
    const onOne = Math.min(blocks, abreast);
    return { widthMm: 0, heightMm: 0, blocks: onOne, sheets: Math.ceil(blocks / onOne) };
  }
  const used = Math.min(abreast, Math.max(1, table.rows));
  const down = Math.ceil(table.rows / used);
  return {
    ...{ widthMm: 0, heightMm: down * table.rowMm + table.headMm + gapMm },
    ...{ blocks: used, sheets: 0 },
  };
};

/** For a drawing no ruled square is small enough for: tenths of a millimetre, alone. */
const tightest = (
  size: PaperSizeName,
  needs: SheetNeeds,
  ways: readonly SheetDirection[],
): SheetLayout => {
  const tablePlace = needs.tables.length > 0 ? 'next-sheet' : 'none';
  const chosen = { tableAt: 0, tablePlace } as const;
  for (let tenths = 10 * squareSizesMm[squareSizesMm.length - 1]! - 1; tenths > 1; tenths -= 1)
    for (const direction of ways) {
      const layout = laidOut(size, needs, { ...chosen, squareMm: tenths / 10, direction });
      if (layout.room.columns >= needs.columns && layout.room.rows >= needs.rows) return layout;
    }
  return laidOut(size, needs, { ...chosen, squareMm: 0.1, direction: ways[0] ?? 'tall' });
};
