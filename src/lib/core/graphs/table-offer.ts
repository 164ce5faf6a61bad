import type { GraphFit } from './graph-fit';
import type { GraphKind, GraphTable } from './graph-table';
import type { NotRight } from './not-right-for';
import type { NoGraph } from './no-graph';
import type { StandardCode } from './standards-of';
import type { TableChoice, TableSource } from './table-choice';

/** One way to get a table out of a log, and what can be done with it today. */
export interface TableOffer {
  readonly source: TableSource;
  readonly form: GraphTable['form'];
  readonly question: TableQuestion;
  /** The best first: ready, as read, the whole log, in that order. */
  readonly variants: readonly [TableVariant, ...TableVariant[]];
  readonly notRight: readonly NotRight[];
}

/** The question that a graph of the table answers. */
export type TableQuestion =
  'which-came-most' | 'which-had-most' | 'how-often' | 'how-did-it-change';

export interface TableVariant {
  readonly choice: TableChoice;
  readonly span: TableSpan;
  readonly told: ToldHow;
  /** The smallest kinds are put together, because there are more than suit the stage. */
  readonly together: boolean;
  /** How many values are only "about" what was read. */
  readonly aboutCount: number;
  /** How many days, values or marks there are, and whether that makes a table worth looking at. */
  readonly have: number;
  readonly tableReady: boolean;
  readonly graphs: readonly GraphReadiness[];
}

/**
 * `first-that-fit`: the beginning of a log, as long as its bars fit the paper unit by unit.
 * `latest-shared`, `shared-that-fit`: a few days that two logs share.
 */
export type TableSpan =
  | 'whole'
  | 'first-ten'
  | 'latest-ten'
  | 'first-that-fit'
  | 'latest-shared'
  | 'shared-that-fit'
  | 'one-day';

/** `one-unit`: two units were read, and all is told in one of them. `null` for counts. */
export type ToldHow = 'as-read' | 'one-unit' | 'coarser-mark' | 'other-unit' | null;

export interface GraphReadiness {
  readonly graph: GraphKind;
  readonly fit: GraphFit;
  readonly standards: readonly StandardCode[];
  /** What is missing; ready when nothing is. */
  readonly missing: readonly Missing[];
}

export type Missing =
  | { readonly kind: 'more-needed'; readonly have: number; readonly need: number }
  /** A line plot of numbers that all differ has no piles to talk about. */
  | { readonly kind: 'no-repeats' }
  | { readonly kind: 'no-graph'; readonly why: NoGraph };
