import { describe, expect, test } from 'vitest';
import { drawingLevels } from '#core/graphs';
import { footMm, headMm, sheetRoom } from '#ui/paper';
import { childPages, partGapMm, smallFootMm } from '../../../src/lib/ui/lesson-paper/child-pages';
import { lessonFrame } from '../../../src/lib/ui/lesson-paper/lesson-frame';
import { paperLesson, stagesOf, taughtNames, type TaughtName } from './paper-lessons';

const sizes = ['letter', 'a4'] as const;
const factsByName = new Map(taughtNames.map((name) => [name, paperLesson(name).facts]));
const pagesOf = (
  name: TaughtName,
  heightsMm: readonly number[],
  asked: Parameters<typeof lessonFrame>[1] = {
    ...{ size: 'a4', level: 'frame-given', isLeftHanded: false },
  },
) => {
  const facts = factsByName.get(name)!;
  return childPages({
    ...{ size: asked.size, heightsMm, frame: lessonFrame(facts, asked) },
    frameOver: (underMm) => lessonFrame(facts, asked, underMm),
  });
};

describe('the sheets of a child', () => {
  test('are one where all of it has room with squares as large', () => {
    expect(pagesOf('weather', [15, 15, 20])).toMatchObject([
      { kind: 'frame', parts: [0, 1, 2], frame: { layout: { squareMm: 10, direction: 'tall' } } },
    ]);
  });

  test('are two where the frame needs most of one: the questions stand by themselves', () => {
    expect(pagesOf('week', [30, 30, 30])).toMatchObject([
      { kind: 'frame', parts: [] },
      { kind: 'parts', parts: [0, 1, 2] },
    ]);
  });

  test('begin with questions under the frame where that saves a sheet', () => {
    const pages = pagesOf('weather', [40, 40, 100, 100]);
    expect(pages).toMatchObject([
      { kind: 'frame', parts: [0, 1] },
      { kind: 'parts', parts: [2, 3] },
    ]);
  });

  test('hold every part once, in order, and no more than there is room for', () => {
    for (const size of sizes)
      for (const name of taughtNames)
        for (const level of drawingLevels)
          for (const isLeftHanded of [false, true]) {
            const heights = [14, 33, 22, 40, 18, 36, 55, 27];
            const pages = pagesOf(name, heights, { size, level, isLeftHanded });
            const parts = pages.flatMap((each) => (each.kind === 'table' ? [] : each.parts));
            expect(parts).toEqual(heights.map((_, index) => index));
            for (const page of pages) {
              if (page.kind === 'table') continue;
              const isFrame = page.kind === 'frame';
              const direction = isFrame ? page.frame.layout.direction : 'tall';
              const used = page.parts.reduce((sum, at) => sum + heights[at]! + partGapMm, 0);
              const room = sheetRoom(size, direction).heightMm - headMm;
              expect(used + (isFrame ? page.frame.heightMm + footMm : smallFootMm)).toBeLessThan(
                room + 1e-6,
              );
            }
          }
  });
});

describe('the frame of a lesson', () => {
  test('has nothing of the answer on it: no mark, no title, no key', () => {
    for (const name of taughtNames)
      for (const stage of stagesOf(name)) {
        const { drawing } = lessonFrame(paperLesson(name, { stage }).facts, {
          ...{ size: 'letter', level: 'frame-given', isLeftHanded: false },
        });
        expect(drawing).toMatchObject({ title: '', key: null, seriesKey: [] });
        for (const marks of [drawing.bars, drawing.symbols, drawing.crosses, drawing.points])
          expect(marks).toEqual([]);
      }
  });

  test('stands upright with squares of 1 cm, where a sheet holds them so', () => {
    for (const size of sizes)
      for (const name of ['weather', 'growth', 'week', 'two plants'] as const) {
        const { layout } = lessonFrame(paperLesson(name).facts, {
          ...{ size, level: 'frame-given', isLeftHanded: false },
        });
        expect([name, layout.squareMm, layout.direction]).toEqual([name, 10, 'tall']);
      }
  });
});
