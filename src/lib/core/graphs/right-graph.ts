import type { Stage } from '#core/journal';
import type { GraphKind, GraphTable } from './graph-table';
import type { StepRange } from './labels-of';

/**
 * What a right graph of a table has, said as data: not one drawing, but what every right drawing
 * of it agrees on. A child may choose another scale, another symbol and another order of parts.
 */
export interface RightGraph {
  readonly kind: GraphKind;
  readonly stage: Stage;
  readonly table: GraphTable;
  /** A scale that fits: where it begins and ends, and its step, in counts or whole nanometres. */
  readonly scale: GraphScale;
  /** How many one picture stands for: 1, or 2, 5, 10 from grade 3; null where there are none. */
  readonly keyValue: number | null;
  /** Words of which a title that says what was counted or measured has at least one. */
  readonly titleWords: readonly string[];
  /** Words of which the label of the number side has at least one: the unit, what is counted. */
  readonly sideWords: readonly string[];
}

export interface GraphScale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** The numbers as a child writes them, from `from` to `to`. */
  readonly labels: readonly string[];
}

/** What a table makes of a graph before it has words. Not part of the public door. */
export interface RightParts {
  readonly scale: StepRange;
  readonly keyValue: number | null;
}
