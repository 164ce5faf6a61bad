import { expect, test } from 'vitest';
import { rulerPixels, rulerTicksAt } from '../../../src/lib/ui/ruler/ruler-size';
import { keyToExact } from '../../../src/lib/ui/ruler/ruler-steps';

const inch = 25_400_000;
const foot = { unit: 'in', mark: '1/4 in', lengthExact: 12 * inch } as const;

test('a foot rule in quarter inches fits a telephone 360 pixels wide without scrolling', () => {
  expect(rulerPixels(foot, 300)).toBeLessThanOrEqual(300);
});

test('a ruler fills the room there is, but is never drawn larger than life', () => {
  expect(rulerPixels(foot, 900)).toBe(900);
  // 96 CSS pixels to the inch: CSS Values and Units, section 6.2.
  expect(rulerPixels(foot, 4000)).toBe(12 * 96);
});

test('finer marks make a ruler longer than a narrow room, and it scrolls', () => {
  const millimetres = { unit: 'cm', mark: '1 mm', lengthExact: 300_000_000 } as const;
  expect(rulerPixels(millimetres, 300)).toBe(30 * 60);
});

test('half-way lines are left out where they would run together', () => {
  expect(rulerTicksAt(foot, 288).every((tick) => tick.onMark)).toBe(false);
  const long = { ...foot, mark: '1/8 in', lengthExact: 36 * inch } as const;
  expect(rulerTicksAt(long, 36 * 24).every((tick) => tick.onMark)).toBe(true);
});

// WAI-ARIA Authoring Practices, slider pattern.
test.each([
  ['ArrowRight', 4.5, 4.75],
  ['ArrowUp', 4.5, 4.75],
  ['ArrowLeft', 4.5, 4.25],
  ['ArrowDown', 0, 0],
  ['PageUp', 4.5, 5.5],
  ['PageDown', 4.5, 3.5],
  ['PageUp', 11.5, 12],
  ['Home', 4.5, 0],
  ['End', 4.5, 12],
])('%s takes the pointer from %d to %d inches', (key, from, to) => {
  const how = { mark: '1/4 in', lengthExact: 12 * inch, wholeExact: inch } as const;
  expect(keyToExact(key, from * inch, how)).toBe(to * inch);
});

test('other keys are left alone, and the first arrow starts from zero', () => {
  const how = { mark: '1/4 in', lengthExact: 12 * inch, wholeExact: inch } as const;
  expect(keyToExact('Tab', 0, how)).toBeNull();
  expect(keyToExact('ArrowUp', null, how)).toBe(inch / 4);
});
