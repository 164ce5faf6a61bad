import { civilDay } from '#core/calendar';
import { emptyDrawing, drawRight, type TableChoice } from '#core/graphs';
import { describe, expect, test } from 'vitest';
import { footMm, headMm, leastTogetherMm } from '../../../src/lib/ui/paper/paper-layout';
import { paperOffers } from '../../../src/lib/ui/paper/paper-offers';
import { paperRequest } from '../../../src/lib/ui/paper/paper-request';
import { sheetRoom } from '../../../src/lib/ui/paper/paper-sizes';
import { sheetKinds, type SheetKind } from '../../../src/lib/ui/paper/paper-words';
import { paperWork, type PaperWork } from '../../../src/lib/ui/paper/paper-work';
import { linesMm } from '../../../src/lib/ui/paper/picture-lines';
import { pictureFrame } from '../../../src/lib/ui/paper/picture-frame';
import { plainPlan, sheetPlan, type SheetPlan } from '../../../src/lib/ui/paper/sheet-plan';
import { goldenLogs, goldenRight } from '../../core/graphs/golden-logs';
import { sampleNotebook, weekOf } from './sample-paper';

const today = civilDay('2026-05-01');
const sizes = ['a4', 'letter'] as const;
const work = (name: string, more: Partial<PaperWork> = {}): PaperWork => ({
  ...{ right: goldenRight(name), name, isMadeUp: false, own: null, isBeingDrawn: false },
  ...{ isLeftHanded: false, size: 'a4' },
  ...more,
});
const planned = (of: PaperWork, sheet: SheetKind, size: 'a4' | 'letter' = 'a4'): SheetPlan => {
  const plan = sheetPlan(of, { sheet, size, upright: null });
  if (!plan) throw new Error(`No sheet of ${sheet}`);
  return plan;
};
const heights = 'heights of a week in centimetres';

/** The picture, its lines and the table beside or above it, inside what a sheet has room for. */
const expectToFit = ({ drawing, layout, size, ...plan }: SheetPlan): void => {
  const room = sheetRoom(size, layout.direction);
  const frame = pictureFrame(drawing, layout.squareMm, plan);
  const { table } = plan;
  const acrossMm = table?.columnsMm.reduce((sum, each) => sum + each, 6) ?? 0;
  const beside = layout.tablePlace === 'beside' ? acrossMm * layout.tableBlocks : 0;
  const lines = table?.linesByRow.reduce((sum, each) => sum + each, 0) ?? 0;
  const above =
    layout.tablePlace === 'above' && table
      ? Math.ceil(lines / layout.tableBlocks) * table.lineMm + table.headMm
      : 0;
  expect(frame.widthMm + beside).toBeLessThanOrEqual(room.widthMm + 1e-6);
  expect(
    frame.heightMm + linesMm(drawing, plan.linesToWrite) + above + headMm + footMm,
  ).toBeLessThanOrEqual(room.heightMm + 1e-6);
};

describe('a sheet of a graph', () => {
  test('fits on the paper, whatever the graph, the sheet, the paper and the hand', () => {
    for (const { name } of goldenLogs)
      for (const size of sizes)
        for (const isLeftHanded of [false, true])
          for (const sheet of sheetKinds.filter((kind) => kind !== 'own-drawing'))
            expectToFit(planned(work(name, { isLeftHanded }), sheet, size));
  });

  test('has nothing drawn on it but what its level gives', () => {
    const empty = planned(work(heights), 'empty-paper').drawing;
    expect([empty.bars, empty.places, empty.side.ticks, empty.title]).toEqual([[], [], [], '']);
    const scaled = planned(work(heights), 'scale-given').drawing;
    expect(scaled.side.ticks.length).toBeGreaterThan(0);
    expect([scaled.bars, scaled.places]).toEqual([[], []]);
    const framed = planned(work(heights), 'frame-given').drawing;
    expect(framed.places.length).toBeGreaterThan(0);
    expect(framed.bars).toEqual([]);
    expect(planned(work(heights), 'finished').drawing).toEqual(drawRight(goldenRight(heights)));
  });

  test('of empty squares is full of them, so that its size tells nothing', () => {
    const { drawing, layout } = planned(work(heights), 'empty-paper');
    expect(drawing.paper).toEqual(layout.room);
    expect(plainPlan('a4').drawing.paper).toEqual(plainPlan('a4').layout.room);
  });

  test('is the child’s own where there is one, without the table, and none where there is none', () => {
    const own = { ...emptyDrawing('bar-graph', { columns: 8, rows: 9 }), title: 'Our bean' };
    const plan = planned(work(heights, { own }), 'own-drawing');
    expect([plan.drawing, plan.table, plan.linesToWrite]).toEqual([own, null, false]);
    const asked = { sheet: 'own-drawing', size: 'a4', upright: null } as const;
    expect(sheetPlan(work(heights), asked)).toBeNull();
  });

  test('lies down where that is asked for', () => {
    const asked = { sheet: 'finished', size: 'a4', upright: false } as const;
    expect(sheetPlan(work(heights), asked)?.drawing.upright).toBe(false);
  });

  test('has its numbers at both sides for a left hand', () => {
    expect(planned(work(heights, { isLeftHanded: true }), 'scale-given').numbersTwice).toBe(true);
    expect(planned(work(heights), 'scale-given').numbersTwice).toBe(false);
  });
});

const together = (choice: TableChoice, graph: string): readonly SheetPlan[] =>
  sizes.flatMap((size) =>
    (['empty-paper', 'finished'] as const).map((sheet) => {
      const search = { choice: JSON.stringify(choice), graph, stage: 'grade-3' };
      const request = paperRequest(new URLSearchParams(search));
      const found = paperWork(sampleNotebook, request, { today, author: null });
      if (!found?.ok) throw new Error(`No table for ${graph}`);
      return planned(found.value, sheet, size);
    }),
  );

describe('the table of a graph', () => {
  test('stands with two plants of twenty days on one sheet', () => {
    const days = { source: 'days-in-order', to: civilDay('2026-03-30') } as const;
    const beans = { ...weekOf('Window bean', 'Shelf bean'), ...days } as TableChoice;
    for (const plan of together(beans, 'line-graph')) {
      expect(['beside', 'above']).toContain(plan.layout.tablePlace);
      expect(plan.table?.rows).toHaveLength(20);
      expect(plan.layout.squareMm).toBeGreaterThanOrEqual(leastTogetherMm);
      expectToFit(plan);
    }
  });

  test('stands on the sheet of its graph for every table that the made-up notebook offers', () => {
    const apart = [...sampleNotebook.specimens.values()].flatMap((log) =>
      paperOffers(sampleNotebook, log, 'grade-3', today).flatMap(({ graph, tables }) =>
        tables.flatMap(({ source, choice }) =>
          together(choice, graph)
            .filter(({ layout }) => layout.tablePlace === 'next-sheet')
            .map(({ size }) => `${log.name}, ${source}, ${graph}, ${size}`),
        ),
      ),
    );
    expect(apart).toEqual([]);
  });
});
