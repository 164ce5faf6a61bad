import { begunDrawing, drawingLevels, drawRight, type Drawing } from '#core/graphs';
import type { LessonFacts } from '#core/questions';
import {
  footMm,
  gapMm,
  headMm,
  linesMm,
  paperLayout,
  paperTables,
  pictureEdges,
  sheetRoom,
  tableNeeds,
  type PaperSizeName,
  type PaperTable,
  type SheetLayout,
  type SheetNeeds,
} from '#ui/paper';
import { halfDrawn } from './half-drawn';

/** The child's table with the blank frame of its graph, as they stand on a sheet. */
export interface LessonFrame {
  readonly drawing: Drawing;
  readonly table: PaperTable | null;
  readonly layout: SheetLayout;
  readonly numbersTwice: boolean;
  /** How much of the sheet they take, between its head and its foot. */
  readonly heightMm: number;
}

/** What stands on a child's frame before the child begins. */
export const frameLevels = ['half-drawn', ...drawingLevels] as const;
export type FrameLevel = (typeof frameLevels)[number];

export interface FrameAsked {
  readonly size: PaperSizeName;
  readonly level: FrameLevel;
  readonly isLeftHanded: boolean;
}

/**
 * The frame at true scale, with squares as large as the sheet allows. With something under it, it
 * is told only where it then stays as large, upright, and all on one sheet; else null.
 *
 * @param underMm what is to stand under it on the same sheet, with its white
 */
export function lessonFrame(facts: LessonFacts, asked: FrameAsked): LessonFrame;
export function lessonFrame(
  facts: LessonFacts,
  asked: FrameAsked,
  underMm: number,
): LessonFrame | null;
export function lessonFrame(
  facts: LessonFacts,
  asked: FrameAsked,
  underMm = 0,
): LessonFrame | null {
  const drawing =
    asked.level === 'half-drawn'
      ? halfDrawn(facts)
      : begunDrawing(drawRight(facts.right), asked.level);
  const alone = laidOut(facts, drawing, asked, 0);
  if (underMm === 0) return alone;
  const together = laidOut(facts, drawing, asked, underMm);
  const { direction, squareMm, tablePlace } = together.layout;
  const roomMm = sheetRoom(asked.size, 'tall').heightMm - headMm - footMm;
  const isAsGood =
    squareMm >= alone.layout.squareMm && direction === 'tall' && tablePlace !== 'next-sheet';
  return isAsGood && together.heightMm + underMm <= roomMm ? together : null;
}

const laidOut = (
  facts: LessonFacts,
  drawing: Drawing,
  { size, level, isLeftHanded: numbersTwice }: FrameAsked,
  underMm: number,
): LessonFrame => {
  const tables = paperTables(facts.table);
  const lines = linesMm(drawing, true);
  const layout = layoutFor(size, {
    ...drawing.paper,
    edgesAt: (squareMm) => pictureEdges(drawing, squareMm, { numbersTwice }),
    tables: tables.map(tableNeeds),
    linesMm: lines + underMm,
  });
  // Empty paper is full of squares: its size must not tell how far the graph will go.
  const filled = level === 'empty-paper' ? { ...drawing, paper: layout.room } : drawing;
  const table = tables[layout.tableAt] ?? null;
  const edges = pictureEdges(filled, layout.squareMm, { numbersTwice });
  const graphMm = lines + edges.top + filled.paper.rows * layout.squareMm + edges.bottom;
  const tableMm = table ? tableHeightMm(table, layout) : 0;
  const heightMm =
    layout.tablePlace === 'above'
      ? tableMm + gapMm + graphMm
      : Math.max(graphMm, layout.tablePlace === 'beside' ? tableMm : 0);
  return { drawing: filled, table, layout, numbersTwice, heightMm };
};

/** Questions stand upright: so does the frame, where it is as large and keeps its table. */
const layoutFor = (size: PaperSizeName, needs: SheetNeeds): SheetLayout => {
  const best = paperLayout(size, needs);
  const upright = paperLayout(size, needs, ['tall']);
  const isAsGood =
    upright.squareMm >= best.squareMm &&
    (upright.tablePlace !== 'next-sheet' || best.tablePlace === 'next-sheet');
  return isAsGood ? upright : best;
};

const tableHeightMm = (table: PaperTable, { tableBlocks }: SheetLayout): number => {
  const { rows, rowMm, headMm: tableHeadMm } = tableNeeds(table);
  return tableHeadMm + Math.ceil(rows / Math.max(1, tableBlocks)) * rowMm;
};
