import { describe, expect, it } from 'vitest';
import { keyIsRight, keyValues } from '#core/graphs';
import { lookAtPictureGraph } from '../../../src/lib/core/graphs/look-at-picture-graph';
import { bothWays, goldenOf } from './right-drawings';

describe('a right picture graph', () => {
  it.each(goldenOf('picture-graph'))('of %s has nothing to look at again, with any key', (_, right) => {
    const counts = right.table.form === 'counts' ? right.table.rows.map(({ count }) => count) : [];
    const keys = keyValues.filter((value) => keyIsRight(counts, value));
    for (const drawing of keys.flatMap((keyValue) => bothWays(right, { keyValue }))) {
      expect(lookAtPictureGraph(right, drawing).mistakes).toEqual([]);
    }
  });
});
