import { describe, expect, it } from 'vitest';
import { drawRight, labelsOf } from '#core/graphs';
import { goldenLogs, goldenRight } from './golden-logs';

describe('a right drawing', () => {
  it.each(goldenLogs)('of $name stays on its paper', ({ name }) => {
    const right = goldenRight(name);
    for (const upright of [true, false]) {
      const drawing = drawRight(right, { upright });
      const { columns, rows } = drawing.paper;
      const [across, up] = drawing.upright ? [columns, rows] : [rows, columns];
      for (const bar of drawing.bars) {
        expect(bar.at - bar.width / 2).toBeGreaterThanOrEqual(0);
        expect(bar.at + bar.width / 2).toBeLessThanOrEqual(across);
        expect(bar.to).toBeLessThanOrEqual(up);
      }
      for (const symbol of drawing.symbols) expect(symbol.at + 0.5).toBeLessThanOrEqual(up);
      for (const cross of drawing.crosses) {
        expect(cross.at).toBeLessThanOrEqual(across);
        expect(cross.height + cross.size / 2).toBeLessThanOrEqual(up);
      }
      for (const point of drawing.points) {
        expect(point.x).toBeLessThanOrEqual(across);
        expect(point.y).toBeLessThanOrEqual(up);
      }
      expect(columns).toBe(Math.round(columns));
      expect(rows).toBe(Math.round(rows));
    }
  });

  it('writes the labels of the scale beside its ticks', () => {
    const right = goldenRight('two pots in half inches');
    expect(drawRight(right).bottom.ticks.map(({ text }) => text)).toEqual(
      labelsOf(right.scale, right.table),
    );
  });
});
