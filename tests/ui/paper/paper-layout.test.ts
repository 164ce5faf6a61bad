import { describe, expect, test } from 'vitest';
import {
  footMm,
  headMm,
  leastTogetherMm,
  paperLayout,
  squareSizesMm,
  type SheetNeeds,
} from '../../../src/lib/ui/paper/paper-layout';
import { sheetRoom } from '../../../src/lib/ui/paper/paper-sizes';

const edges = { left: 14, right: 7, top: 4, bottom: 9 };
const needs = (columns: number, rows: number, more: Partial<SheetNeeds> = {}): SheetNeeds => ({
  ...{ columns, rows, edgesAt: () => edges, tables: [], linesMm: 21 },
  ...more,
});
const table = (rows: number, blockMm = 50) => ({ rows, rowMm: 6, headMm: 12, blockMm });

describe('a graph on one sheet', () => {
  test('has squares of a centimetre where they fit', () => {
    expect(paperLayout('a4', needs(15, 12))).toMatchObject({ direction: 'tall', squareMm: 10 });
    expect(paperLayout('letter', needs(15, 12))).toMatchObject({ direction: 'tall', squareMm: 10 });
  });

  test('counts the squares that a sheet has room for', () => {
    // A4: 210 - 24 - 14 - 7 = 165 mm across. Letter: 215.9 - 24 - 21 = 170.9 mm.
    expect(paperLayout('a4', needs(1, 1)).room.columns).toBe(16);
    expect(paperLayout('letter', needs(1, 1)).room.columns).toBe(17);
    // A4: 297 - 24 - 0.5 - 18 - 22 - 21 - 13 = 198.5 mm down. Letter: 180.9 mm.
    expect([headMm, footMm]).toEqual([18, 22]);
    expect(paperLayout('a4', needs(1, 1)).room.rows).toBe(19);
    expect(paperLayout('letter', needs(1, 1)).room.rows).toBe(18);
  });

  test('lies sideways before its squares become smaller', () => {
    expect(paperLayout('a4', needs(20, 10))).toMatchObject({ direction: 'wide', squareMm: 10 });
  });

  test('has the next smaller ruled square where a centimetre does not fit', () => {
    expect(paperLayout('a4', needs(20, 20)).squareMm).toBe(8);
    expect(paperLayout('a4', needs(40, 18)).squareMm).toBe(6);
  });

  test('has its table beside it, or above it where there is no room beside', () => {
    expect(paperLayout('a4', needs(10, 12, { tables: [table(7)] })).tablePlace).toBe('beside');
    expect(paperLayout('a4', needs(16, 13, { tables: [table(7)] }))).toMatchObject({
      ...{ tablePlace: 'above', tableBlocks: 3, squareMm: 10 },
    });
  });

  test('has its table set narrow before its squares become smaller', () => {
    // A4: 210 - 24 = 186 mm across. With 21 mm of edges, 56 mm of table leave 109 mm: 10 columns.
    // A narrow table of 40 mm leaves 119 mm: 11 columns. 17 rows do not fit under a table above.
    const tables = [table(20), table(20, 40)];
    expect(paperLayout('a4', needs(10, 19, { tables }))).toMatchObject({ tableAt: 0 });
    expect(paperLayout('a4', needs(11, 19, { tables }))).toMatchObject({
      ...{ squareMm: 10, tableAt: 1, tablePlace: 'beside' },
    });
  });

  test('has smaller squares rather than its table on another sheet, down to 6 mm', () => {
    expect(leastTogetherMm).toBe(6);
    expect(paperLayout('a4', needs(16, 19, { tables: [table(20)] }))).toMatchObject({
      ...{ tablePlace: 'beside', squareMm: 6, tableSheets: 0 },
    });
  });

  test('sends its table to another sheet only for the sake of larger squares', () => {
    expect(paperLayout('a4', needs(27, 28, { tables: [table(20)] }))).toMatchObject({
      ...{ tablePlace: 'next-sheet', squareMm: 6, tableBlocks: 1, tableSheets: 1 },
    });
    for (const columns of [4, 9, 14, 19, 24, 30, 40, 60])
      for (const rows of [4, 9, 14, 17, 30]) {
        const chosen = paperLayout('letter', needs(columns, rows, { tables: [table(12)] }));
        const alone = paperLayout('letter', needs(columns, rows));
        expect(chosen.squareMm).toBeLessThanOrEqual(alone.squareMm);
        if (chosen.tablePlace === 'next-sheet') expect(chosen.squareMm).toBe(alone.squareMm);
        else if (chosen.squareMm < leastTogetherMm) expect(chosen.squareMm).toBe(alone.squareMm);
      }
  });

  test('has as many sheets for its table as a long one needs', () => {
    // A4 lying: 273 mm across hold 4 blocks of 50 mm; 145.5 mm down hold 22 rows: 88 on a sheet.
    const long = paperLayout('a4', needs(60, 20, { tables: [table(200)] }));
    expect(long).toMatchObject({ direction: 'wide', tablePlace: 'next-sheet' });
    expect(long).toMatchObject({ tableBlocks: 4, tableSheets: 3 });
  });

  test('always fits inside the margins, however large', () => {
    for (const size of ['a4', 'letter'] as const)
      for (const columns of [1, 7, 23, 60, 150, 400])
        for (const rows of [1, 6, 17, 50, 200, 400]) {
          const { direction, squareMm } = paperLayout(size, needs(columns, rows));
          const room = sheetRoom(size, direction);
          expect(columns * squareMm + 21).toBeLessThanOrEqual(room.widthMm);
          expect(rows * squareMm + 13 + 21 + 40).toBeLessThanOrEqual(room.heightMm);
        }
  });

  test('is ruled in sizes that are told in whole millimetres', () => {
    expect(squareSizesMm.every((sizeMm) => Number.isInteger(sizeMm))).toBe(true);
    expect(squareSizesMm[0]).toBe(10);
  });
});
