import { describe, expect, test } from 'vitest';
import { countedSpaces } from '../../../src/lib/ui/ruler-lessons/counted-spaces';
import type { Space } from '../../../src/lib/ui/ruler-lessons/piece-of-ruler';

const spaces: readonly Space[] = (['none', 'whole', 'whole', 'part', 'none'] as const).map(
  (covered, index) => ({ fromNumber: 7 + index, at: index * 50, length: 50, covered }),
);
const said = (tapped: readonly number[]) =>
  countedSpaces(spaces, tapped).spaces.map((each) => each.said);

describe('counting spaces', () => {
  test('goes from left to right, in whatever order they were tapped', () => {
    expect(said([9, 8])).toEqual([null, '1', '2', null, null]);
    expect(countedSpaces(spaces, [9, 8]).total).toBe('2 spaces');
  });

  test('calls a space that is covered in part a part, not one', () => {
    expect(said([8, 9, 10])).toEqual([null, '1', '2', 'part', null]);
    expect(countedSpaces(spaces, [8, 9, 10]).total).toBe('2 spaces and a part');
    expect(countedSpaces(spaces, [10]).total).toBe('a part');
  });

  test('counts what the child taps, also where no strip lies: it does not tell the answer', () => {
    expect(said([7, 8, 11])).toEqual(['1', '2', null, null, '3']);
    expect(countedSpaces(spaces, [11]).total).toBe('1 space');
  });

  test('says nothing before the first tap', () => {
    expect(countedSpaces(spaces, []).total).toBe('');
    expect(said([])).toEqual([null, null, null, null, null]);
  });
});
