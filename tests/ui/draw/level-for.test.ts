import { describe, expect, it } from 'vitest';
import type { TableChoice } from '#core/graphs';
import { levelFor } from '../../../src/lib/ui/draw/level-for';

const asRead = { source: 'day-values' } as TableChoice;
const inFives = { ...asRead, givenSteps: true } as TableChoice;

describe('what stands on the paper when a drawing is begun', () => {
  it('is what was chosen', () => {
    expect(levelFor(asRead, 'empty-paper')).toBe('empty-paper');
    expect(levelFor(inFives, 'frame-given')).toBe('frame-given');
  });

  it('is at least the scale where the scale goes by fives and more', () => {
    expect(levelFor(inFives, 'empty-paper')).toBe('scale-given');
  });
});
