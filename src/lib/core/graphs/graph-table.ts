import type { CivilDay } from '#core/calendar';
import type { DayState, SpecimenId } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';

/** The four displays a child learns to draw. */
export const graphKinds = ['picture-graph', 'bar-graph', 'line-plot', 'line-graph'] as const;
export type GraphKind = (typeof graphKinds)[number];

/** The table a graph is drawn from: sorted or counted first, then drawn. */
export type GraphTable = CountTable | ValueTable | MeasureTable | TimeTable;

/** How many of each kind: for a picture graph or a bar graph. */
export interface CountTable {
  readonly form: 'counts';
  /** What is counted, in the plural: "days". */
  readonly counted: string;
  readonly rows: readonly { readonly label: string; readonly count: number }[];
}

/**
 * One value for each day or week, as bars: heights, or rain. Or those of two logs on the same days,
 * neighbours on each day.
 */
export interface ValueTable {
  readonly form: 'values';
  /** What is measured, in words: "height", "rain". */
  readonly measured: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  /**
   * A grown-up gives the frame, and its scale goes by 5, 10 and on, because unit by unit the bars
   * are taller than the paper. Only in stages whose bars go by single units.
   */
  readonly givenSteps?: true;
  readonly rows: readonly ValueRow[];
}

export interface ValueRow {
  readonly label: string;
  readonly day: CivilDay | null;
  /** Which of the logs it is of, where there are several. */
  readonly series?: number;
  /** Null where there is no number; the state says why. */
  readonly exact: number | null;
  /** The unit of this reading, which may differ from the table's: then it may not be drawn as it is. */
  readonly unit: Unit;
  /** The number as the table shows it. */
  readonly text: string;
  readonly state: 'number' | DayState | 'blank';
}

/** Many lengths, for a line plot: one cross each. */
export interface MeasureTable {
  readonly form: 'measures';
  readonly measured: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly seriesNames: readonly string[];
  readonly values: readonly {
    readonly label: string;
    readonly exact: number;
    readonly text: string;
    readonly series: number;
  }[];
  /** Days that have a state and no number: nothing is marked for them. */
  readonly unmeasured: readonly {
    readonly label: string;
    readonly state: DayState | 'blank';
  }[];
}

/** Heights or shadows over time, for a line graph: every calendar day has its place. */
export interface TimeTable {
  readonly form: 'times';
  readonly measured: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly seriesNames: readonly string[];
  readonly specimens: readonly SpecimenId[];
  /** The labels of the places along the bottom, in order, one for each calendar day or hour. */
  readonly places: readonly string[];
  readonly rows: readonly {
    /** Index into `places`. */
    readonly place: number;
    readonly series: number;
    readonly exact: number | null;
    readonly unit: Unit;
    readonly text: string;
    readonly state: 'number' | DayState | 'blank';
  }[];
}
