import {
  drawRight,
  lookAtDrawing,
  rightGraphOf,
  type GraphKind,
  type GraphTable,
} from '#core/graphs';
import { addDays, civilDay } from '#core/calendar';
import { medianMs } from './median-ms';

/** Drawings of forty marks, or as many as the paper has room for. */
const tables: readonly (readonly [kind: GraphKind, table: GraphTable])[] = [
  [
    'picture-graph',
    {
      form: 'counts',
      counted: 'days',
      rows: ['sun', 'cloud', 'rain', 'snow'].map((label, index) => ({
        label,
        count: 7 + index * 2,
      })),
    },
  ],
  [
    'bar-graph',
    {
      ...{ form: 'values', measured: 'rain', unit: 'cm', mark: '1 cm' },
      rows: Array.from({ length: 9 }, (_, index) => ({
        ...{ label: `day ${index + 1}`, day: null, unit: 'cm' as const, state: 'number' as const },
        ...{ exact: ((index * 7) % 12) * 10_000_000, text: String((index * 7) % 12) },
      })),
    },
  ],
  [
    'line-plot',
    {
      ...{ form: 'measures', measured: 'growth', unit: 'cm', mark: '1 cm' },
      ...{ seriesNames: ['bean'], unmeasured: [] },
      values: Array.from({ length: 40 }, (_, index) => ({
        ...{ label: `day ${index + 1}`, series: 0 },
        ...{ exact: ((index * 7) % 9) * 10_000_000, text: String((index * 7) % 9) },
      })),
    },
  ],
  [
    'line-graph',
    {
      ...{ form: 'times', measured: 'height', unit: 'cm', mark: '1 cm' },
      ...{ seriesNames: ['bean'], specimens: [] },
      places: Array.from({ length: 20 }, (_, index) => addDays(civilDay('2026-03-01'), index)),
      rows: Array.from({ length: 20 }, (_, index) => ({
        ...{ place: index, series: 0, unit: 'cm' as const, state: 'number' as const },
        ...{ exact: (index + 1) * 5_000_000, text: String((index + 1) / 2) },
      })),
    },
  ],
] as const;

/** Milliseconds to look at a full drawing, for each graph. */
export const measureLooks = (): { name: string; ms: number }[] =>
  tables.flatMap(([kind, table]) => {
    const right = rightGraphOf(kind, table, 'grade-3');
    if (!right.ok) throw new Error(`No ${kind}: ${right.error.kind}`);
    const drawing = drawRight(right.value);
    const marks =
      drawing.symbols.length + drawing.bars.length + drawing.crosses.length + drawing.points.length;
    return {
      name: `look at a ${kind} of ${marks} marks`,
      ms: medianMs(() => lookAtDrawing(right.value, drawing), 25),
    };
  });
