import { exactPerUnit, formatExactNumber, markById, type MarkId, type Unit } from '#core/measure';

/** A line plot as plain data, in squares: one step of the number line is one square wide. */
export interface SpreadPlot {
  readonly steps: number;
  readonly ticks: readonly { readonly at: number; readonly label: string | null }[];
  /** One mark for each number; `up` counts from 1. */
  readonly crosses: readonly { readonly at: number; readonly up: number }[];
  readonly highest: number;
}

/**
 * Every mark of the ruler from one below the smallest number to one above the largest, so that no
 * place between is left out; labels stand as close as they can be read.
 */
export function spreadPlot(exacts: readonly number[], unit: Unit, mark: MarkId): SpreadPlot {
  const finest = markById(mark).exact;
  const [least, most] = [Math.min(...exacts), Math.max(...exacts)];
  const wide = Math.max(1, Math.ceil((most - least) / finest / mostSteps));
  const step = finest * wide;
  const from = Math.max(0, Math.floor(least / step) - 1);
  const to = Math.ceil(most / step) + 1;
  const wholes = exactPerUnit(unit) / step;
  const every = to - from > mostLabels ? (wholes > 1 ? wholes : 5) : 1;
  const ups = new Map<number, number>();
  const crosses = [...exacts]
    .sort((left, right) => left - right)
    .map((exact) => {
      const at = exact / step - from;
      const up = (ups.get(at) ?? 0) + 1;
      ups.set(at, up);
      return { at, up };
    });
  return {
    steps: to - from,
    ticks: Array.from({ length: to - from + 1 }, (_, index) => {
      const isLabelled = (from + index) % every === 0;
      const label = isLabelled ? formatExactNumber((from + index) * step, unit, mark) : null;
      return { at: index, label };
    }),
    crosses,
    highest: Math.max(...ups.values()),
  };
}

const mostSteps = 40;
const mostLabels = 12;
