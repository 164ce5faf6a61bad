import { expect, test } from 'vitest';
import { dataLook, dataLooks, patternStrokes } from '../../../src/lib/ui/look/data-looks';

test('no two kinds of data share a colour, a pattern or a dash', () => {
  for (const of of ['name', 'colour', 'pattern', 'dash'] as const) {
    expect(new Set(dataLooks.map((look) => look[of])).size).toBe(dataLooks.length);
  }
});

test('every pattern but the plain one draws something', () => {
  for (const { pattern } of dataLooks) {
    expect(patternStrokes[pattern].d === '').toBe(pattern === 'plain');
  }
});

test('looks come round again after the last', () => {
  expect(dataLook(dataLooks.length)).toBe(dataLooks[0]);
  expect(dataLook(-1)).toBe(dataLooks[dataLooks.length - 1]);
});
