import { describe, expect, it } from 'vitest';
import {
  drawRight,
  lookAtDrawing,
  rightGraphOf,
  type Drawing,
  type GraphKind,
  type GraphTable,
} from '#core/graphs';
import { measuresTable, timesTable, valuesTable } from './golden-logs';

// Halves and quarters up to 3 inches. A child may write 1 1/2 as 3/2, or close together as 11/2:
// where it stands on the scale says which of the two was meant.
const texts = ['1/2', '1 1/2', '2 1/2', '1', '1 1/2', '3', '1 1/2', '2'];
const tables: Readonly<Record<'bar-graph' | 'line-plot' | 'line-graph', GraphTable>> = {
  'bar-graph': valuesTable('height', ['in', '1/2 in'], '2026-03-02', texts),
  'line-plot': measuresTable('growth', ['in', '1/2 in'], texts),
  'line-graph': timesTable('height', ['in', '1/2 in'], '2026-03-02', { Bean: texts }),
};

const mistakesWith = (graph: GraphKind, table: GraphTable, write: (text: string) => string) => {
  const right = rightGraphOf(graph, table, 'grade-3');
  if (!right.ok) throw new Error(right.error.kind);
  const drawing = drawRight(right.value);
  const written = <Side extends Drawing['side']>(side: Side): Side => ({
    ...side,
    ticks: side.ticks.map((tick) => ({ ...tick, text: write(tick.text) })),
  });
  return lookAtDrawing(right.value, {
    ...drawing,
    side: written(drawing.side),
    bottom: written(drawing.bottom),
  }).mistakes;
};

const closeTogether = (text: string): string => text.replace(/^(\d) (\d)/, '$1$2');

/** `1 1/2` as `3/2`, `2` as `4/2`. */
const inParts =
  (under: number) =>
  (text: string): string => {
    const [, whole = '0', over = '0', below = '1'] =
      /^(?:(\d+)(?: |$))?(?:(\d)\/(\d))?$/.exec(text) ?? [];
    const parts = Number(whole) * under + (Number(over) * under) / Number(below);
    return `${parts}/${under}`;
  };

describe('a scale in parts of an inch', () => {
  it.each(['bar-graph', 'line-plot', 'line-graph'] as const)(
    'of a %s is right however its numbers are written',
    (graph) => {
      const table = tables[graph];
      for (const write of [closeTogether, inParts(2), (text: string) => `${text} in`]) {
        expect(mistakesWith(graph, table, write)).toEqual([]);
      }
    },
  );

  it('is right in quarters from 2 1/2 to 4, where 13/4 and 31/4 may both be 3 1/4', () => {
    const table = measuresTable(...(['length', ['in', '1/4 in']] as const), [
      '2 1/2',
      '3 1/4',
      '3 1/4',
      '4',
      '3',
      '2 3/4',
      '3 1/4',
      '3 3/4',
    ]);
    for (const write of [closeTogether, inParts(4)]) {
      expect(mistakesWith('line-plot', table, write)).toEqual([]);
    }
  });

  it('is still told apart where the numbers do not go up', () => {
    const swapped = (text: string): string => ({ '1': '1 1/2', '1 1/2': '1' })[text] ?? text;
    const ids = mistakesWith('line-plot', tables['line-plot'], swapped).map(({ id }) => id);
    expect(ids).toContain('L13');
  });
});
