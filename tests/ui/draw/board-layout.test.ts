import { expect, test } from 'vitest';
import { emptyDrawing, type BoardSlot } from '#core/graphs';
import { boardLayout, pushedTo, slotBox } from '../../../src/lib/ui/draw/board-layout';
import { columnDeed } from '../../../src/lib/ui/draw/column-keys';

const sheet = emptyDrawing('bar-graph', { columns: 21, rows: 8 });
const slots: readonly BoardSlot[] = Array.from({ length: 10 }, (_, index) => ({
  ...{ at: index * 2 + 1.5, width: 2, name: '' },
}));
const layout = boardLayout(sheet, slots, { width: 360, height: 600, isTouched: true });
const boxOf = (index: number) => slotBox(layout, sheet, slots[index]!);

test('paper is pushed along only for a column that is out of sight, and no further', () => {
  expect(pushedTo(layout, boxOf(0), { pushed: 0, width: 360 })).toBe(0);
  const last = boxOf(9);
  const pushed = pushedTo(layout, last, { pushed: 0, width: 360 });
  expect(pushed).toBe(last.left + last.width - 360);
  expect(pushedTo(layout, boxOf(8), { pushed, width: 360 })).toBe(pushed);
  // The numbers stand over the left edge of pushed paper: the column must clear them.
  const back = pushedTo(layout, boxOf(0), { pushed, width: 360 });
  expect(boxOf(0).left - back).toBe(layout.corner.x);
});

test('arrows go the way they point, whichever way the columns lie', () => {
  expect(columnDeed('ArrowUp', true)).toBe('raise');
  expect(columnDeed('ArrowRight', false)).toBe('raise');
  expect(columnDeed('ArrowDown', false)).toBe('next');
  expect(columnDeed('Tab', true)).toBeNull();
});
