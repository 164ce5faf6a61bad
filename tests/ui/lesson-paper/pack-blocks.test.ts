import { describe, expect, test } from 'vitest';
import { seededRandom } from '#core/base';
import { packBlocks, type Block } from '../../../src/lib/ui/lesson-paper/pack-blocks';

const block = (heightMm: number, more: Partial<Block> = {}): Block => ({
  ...{ heightMm, gapMm: 2 },
  ...more,
});
const room = (columns: number, ...heights: readonly [number, ...number[]]) => ({
  columns,
  heightMm: (page: number) => heights[Math.min(page, heights.length - 1)] as number,
});

describe('blocks in columns of pages', () => {
  test('stand one under the other while there is room, then in the next column', () => {
    const blocks = [block(10), block(10), block(10), block(10), block(10)];
    expect(packBlocks(blocks, room(2, 22))).toEqual([
      [
        [0, 1],
        [2, 3],
      ],
      [[4]],
    ]);
    expect(packBlocks(blocks, room(1, 21.9))).toEqual([[[0]], [[1]], [[2]], [[3]], [[4]]]);
  });

  test('make no page where there are none', () => {
    expect(packBlocks([], room(1, 10))).toEqual([]);
  });

  test('never leave a heading last in a column', () => {
    const blocks = [block(15), block(4, { isHeading: true }), block(10)];
    expect(packBlocks(blocks, room(1, 25))).toEqual([[[0]], [[1, 2]]]);
  });

  test('begin a page where they are to, also with room left before', () => {
    const blocks = [block(5), block(5, { beginsPage: true })];
    expect(packBlocks(blocks, room(2, 100))).toEqual([[[0]], [[1]]]);
  });

  test('leave a first page empty that is too low, and take one column for what is too high', () => {
    expect(packBlocks([block(30), block(5)], room(1, 10, 40))).toEqual([[[]], [[0, 1]]]);
    expect(packBlocks([block(5), block(99), block(5)], room(1, 20))).toEqual([[[0]], [[1]], [[2]]]);
  });

  test('are all set once, in order, and in room enough, whatever their heights', () => {
    const random = seededRandom(20261125);
    for (let times = 0; times < 300; times += 1) {
      const blocks = Array.from({ length: 1 + Math.floor(random() * 20) }, () =>
        block(1 + random() * 30, { isHeading: random() < 0.2 }),
      );
      const columns = 1 + Math.floor(random() * 3);
      const heightMm = 80;
      const pages = packBlocks(blocks, { columns, heightMm: () => heightMm });
      expect(pages.flat(2)).toEqual(blocks.map((_, index) => index));
      for (const column of pages.flat()) {
        const used = column.reduce(
          (sum, at, place) => sum + blocks[at]!.heightMm + (place > 0 ? 2 : 0),
          0,
        );
        const isOneGroup = column.slice(0, -1).every((at) => blocks[at]!.isHeading);
        if (!isOneGroup) expect(used).toBeLessThanOrEqual(heightMm + 1e-9);
        const last = column.at(-1);
        if (last !== undefined && last < blocks.length - 1)
          expect(blocks[last]!.isHeading ?? false).toBe(false);
      }
    }
  });
});
