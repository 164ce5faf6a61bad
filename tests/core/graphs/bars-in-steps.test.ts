import { describe, expect, it } from 'vitest';
import { barsInSteps, drawRight, rightGraphOf } from '#core/graphs';
import { goldenLogs } from './golden-logs';

describe('the bars of a table for a chart library', () => {
  it('stand as high as in the right drawing of every golden log, and none where no number is', () => {
    let compared = 0;
    for (const { name, table, stage } of goldenLogs) {
      const right = rightGraphOf('bar-graph', table, stage);
      if (!right.ok) continue;
      const graph = barsInSteps(right.value);
      const drawn = drawRight(right.value).bars.map((bar) => bar.to - bar.from);
      const steps = graph?.bars.flatMap((bar) => bar.steps ?? []).filter((each) => each > 0);
      expect([name, steps]).toEqual([name, drawn.filter((each) => each > 0)]);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(2);
  });

  it('are none for a table of many lengths', () => {
    const log = goldenLogs.find(({ table }) => table.form === 'measures')!;
    const right = rightGraphOf('line-plot', log.table, log.stage);
    expect(right.ok && barsInSteps(right.value)).toBeNull();
  });
});
