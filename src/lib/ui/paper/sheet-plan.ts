import { begunDrawing, drawRight, emptyDrawing, type Drawing } from '#core/graphs';
import { paperLayout, type SheetLayout } from './paper-layout';
import type { PaperSizeName } from './paper-sizes';
import { paperTables, tableNeeds, type PaperTable } from './paper-table';
import { isLevel, type SheetKind } from './paper-words';
import type { PaperWork } from './paper-work';
import { linesMm } from './picture-lines';
import { pictureEdges } from './picture-frame';

/** One graph made ready for paper: what is drawn, with what beside it, how large and where. */
export interface SheetPlan {
  readonly size: PaperSizeName;
  readonly drawing: Drawing;
  readonly table: PaperTable | null;
  readonly layout: SheetLayout;
  readonly linesToWrite: boolean;
  readonly numbersTwice: boolean;
}

export interface SheetAsked {
  readonly sheet: SheetKind;
  readonly size: PaperSizeName;
  readonly upright: boolean | null;
}

/** Makes a sheet of a graph ready; null for a child's drawing that is not there. */
export function sheetPlan(work: PaperWork, asked: SheetAsked): SheetPlan | null {
  const drawing = drawingFor(work, asked);
  if (!drawing) return null;
  return planOf(drawing, asked, {
    tables: asked.sheet === 'own-drawing' ? [] : paperTables(work.right.table),
    numbersTwice: work.isLeftHanded,
  });
}

/** A sheet full of squares, for any graph. */
export const plainPlan = (size: PaperSizeName): SheetPlan =>
  planOf(
    emptyDrawing('bar-graph', { columns: 1, rows: 1 }),
    { sheet: 'empty-paper', size, upright: null },
    { tables: [], numbersTwice: false },
  );

const planOf = (
  drawing: Drawing,
  { sheet, size }: SheetAsked,
  {
    tables,
    numbersTwice,
  }: { readonly tables: readonly PaperTable[]; readonly numbersTwice: boolean },
): SheetPlan => {
  const linesToWrite = isLevel(sheet);
  const layout = paperLayout(size, {
    ...drawing.paper,
    edgesAt: (squareMm) => pictureEdges(drawing, squareMm, { numbersTwice }),
    tables: tables.map(tableNeeds),
    linesMm: linesMm(drawing, linesToWrite),
  });
  // Empty paper is full of squares: its size must not tell how far the graph will go.
  const filled = sheet === 'empty-paper' ? { ...drawing, paper: layout.room } : drawing;
  const table = tables[layout.tableAt] ?? null;
  return { size, drawing: filled, table, layout, linesToWrite, numbersTwice };
};

const drawingFor = ({ right, own }: PaperWork, { sheet, upright }: SheetAsked): Drawing | null => {
  if (sheet === 'own-drawing') return own;
  const finished = drawRight(right, upright === null ? {} : { upright });
  return isLevel(sheet) ? begunDrawing(finished, sheet) : finished;
};
