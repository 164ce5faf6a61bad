import { sheetRoom, type PaperSizeName, type SheetDirection } from './paper-sizes';

/** What has to stand on a sheet. All lengths are millimetres on paper. */
export interface SheetNeeds {
  /** Squares of the graph. */
  readonly columns: number;
  readonly rows: number;
  /** Room for words around the squares; it may change with their size. */
  readonly edgesAt: (squareMm: number) => SheetEdges;
  /** The table, in blocks of any number of rows; null for none. */
  readonly table: {
    readonly rows: number;
    readonly rowMm: number;
    readonly headMm: number;
    readonly blockMm: number;
  } | null;
  /** Title, key and other lines over and under the squares, in all. */
  readonly linesMm: number;
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
  /** In how many blocks, side by side, the table stands. */
  readonly tableBlocks: number;
  /** How many squares there is room for: for paper that is to be full of them. */
  readonly room: { readonly columns: number; readonly rows: number };
}

/**
 * Lays a graph and its table on one sheet, with the largest squares that fit: 1 cm where it can
 * be. The table stands beside the graph rather than above it, and goes to a sheet of its own only
 * where that makes the squares larger. Upright sheets are taken before sideways ones. A drawing
 * that is too large even for the smallest square is made to fit.
 */
export function paperLayout(size: PaperSizeName, needs: SheetNeeds): SheetLayout {
  const together = bestOf(size, needs, needs.table ? ['beside', 'above'] : ['none']);
  if (together?.squareMm === squareSizesMm[0]) return together;
  const apart = needs.table ? bestOf(size, needs, ['next-sheet']) : null;
  if (apart && (!together || apart.squareMm > together.squareMm)) return apart;
  return together ?? tightest(size, needs);
}

/** Sizes of squares that paper is ruled in, the largest first. */
export const squareSizesMm = [10, 8, 6, 5, 4, 3] as const;
/** The name of the sheet over everything, and the check bars at its foot. */
export const headMm = 18;
export const footMm = 22;
/** Between a table and the graph, and between blocks of a table. */
export const gapMm = 6;

const directions: readonly SheetDirection[] = ['tall', 'wide'];

const bestOf = (
  size: PaperSizeName,
  needs: SheetNeeds,
  places: readonly SheetLayout['tablePlace'][],
): SheetLayout | null => {
  for (const squareMm of squareSizesMm)
    for (const tablePlace of places)
      for (const direction of directions) {
        const layout = laidOut(size, needs, { squareMm, tablePlace, direction });
        const { columns, rows } = layout.room;
        if (columns >= needs.columns && rows >= needs.rows) return layout;
      }
  return null;
};

const laidOut = (
  size: PaperSizeName,
  needs: SheetNeeds,
  chosen: Pick<SheetLayout, 'squareMm' | 'tablePlace' | 'direction'>,
): SheetLayout => {
  const sheet = sheetRoom(size, chosen.direction);
  const edges = needs.edgesAt(chosen.squareMm);
  const workMm = sheet.heightMm - headMm - footMm;
  const table = tableRoom(needs.table, chosen.tablePlace, sheet.widthMm, workMm);
  const widthMm = sheet.widthMm - table.widthMm - edges.left - edges.right;
  const heightMm = workMm - table.heightMm - needs.linesMm - edges.top - edges.bottom;
  const squaresIn = (lengthMm: number): number =>
    Math.max(0, Math.floor(lengthMm / chosen.squareMm + 1e-9));
  const room = { columns: squaresIn(widthMm), rows: squaresIn(heightMm) };
  return { ...chosen, tableBlocks: table.blocks, room };
};

const tableRoom = (
  table: SheetNeeds['table'],
  place: SheetLayout['tablePlace'],
  widthMm: number,
  heightMm: number,
): { readonly widthMm: number; readonly heightMm: number; readonly blocks: number } => {
  if (!table) return { widthMm: 0, heightMm: 0, blocks: 0 };
  const abreast = Math.max(1, Math.floor((widthMm + gapMm) / (table.blockMm + gapMm)));
  const rowsDown = Math.max(1, Math.floor((heightMm - table.headMm) / table.rowMm));
  const blocks = Math.max(1, Math.ceil(table.rows / rowsDown));
  if (place === 'beside') return { widthMm: blocks * (table.blockMm + gapMm), heightMm: 0, blocks };
  if (place === 'next-sheet') return { widthMm: 0, heightMm: 0, blocks: Math.min(blocks, abreast) };
  const used = Math.min(abreast, Math.max(1, table.rows));
  const down = Math.ceil(table.rows / used);
  return { widthMm: 0, heightMm: down * table.rowMm + table.headMm + gapMm, blocks: used };
};

/** For a drawing no ruled square is small enough for: tenths of a millimetre, alone. */
const tightest = (size: PaperSizeName, needs: SheetNeeds): SheetLayout => {
  const tablePlace = needs.table ? 'next-sheet' : 'none';
  for (let tenths = 10 * squareSizesMm[squareSizesMm.length - 1]! - 1; tenths > 1; tenths -= 1)
    for (const direction of directions) {
      const layout = laidOut(size, needs, { squareMm: tenths / 10, tablePlace, direction });
      if (layout.room.columns >= needs.columns && layout.room.rows >= needs.rows) return layout;
    }
  return laidOut(size, needs, { squareMm: 0.1, tablePlace, direction: 'tall' });
};
