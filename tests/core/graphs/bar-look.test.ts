import { describe, expect, it } from 'vitest';
import { drawRight, type RightGraph } from '#core/graphs';
import { lookAtBarGraph } from '../../../src/lib/core/graphs/look-at-bar-graph';
import { exactOf, valuesTable } from './golden-logs';
import { bothWays, goldenOf, idsOf } from './right-drawings';

describe('a right bar graph', () => {
  const steps = (right: RightGraph) => [1, 2, 5].map((times) => right.scale.step * times);
  it.each(goldenOf('bar-graph'))('of %s has nothing to look at again, at any scale', (_, right) => {
    for (const drawing of steps(right).flatMap((step) => bothWays(right, { step }))) {
      expect(lookAtBarGraph(right, drawing).mistakes).toEqual([]);
    }
  });
});
