import type { RightGraph } from './right-graph';

/** A bar graph as a chart library draws it: names, and how many steps of the scale each bar has. */
export interface BarsInSteps {
  readonly bars: readonly { readonly name: string; readonly steps: number | null }[];
  /** The numbers of the scale, from the floor up: one for each step. */
  readonly labels: readonly string[];
}

/**
 * The bars of a table, counted in steps of its scale, in the order of the table. A day without a
 * number keeps its name and has no bar. Null for a table that makes no bars.
 * @example
 * barsInSteps(rightGraphOf('bar-graph', { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 1 }] }, 'grade-2').value).bars // => [{ name: 'sun', steps: 3 }, { name: 'rain', steps: 1 }]
 */
export function barsInSteps({ table, scale }: RightGraph): BarsInSteps | null {
  const stepsOf = (value: number): number => (value - scale.from) / scale.step;
  const { labels } = scale;
  if (table.form === 'counts') {
    return {
      bars: table.rows.map((row) => ({ name: row.label, steps: stepsOf(row.count) })),
      labels,
    };
  }
  if (table.form !== 'values') return null;
  const bars = table.rows.map((row) => ({
    name: row.label,
    steps: row.exact === null ? null : stepsOf(row.exact),
  }));
  return { bars, labels };
}
