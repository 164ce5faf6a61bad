import type { CivilDay } from '#core/calendar';
import type { DayState, SpecimenId } from '#core/journal';
import type { Unit } from '#core/measure';
import type { SeriesPoint } from '#core/series';

/**
 * A line graph as plain data, for any face to draw and to say.
 *
 * Invariants: only numbers that were read are points; the side starts at 0; places along the
 * bottom are true to the calendar or the clock; nothing is joined past the last reading; a day
 * without a number is a mark on the base line, never a point.
 */
export interface LineGraph {
  readonly along: Axis;
  readonly up: Axis & { readonly unit: Unit };
  readonly lines: readonly GraphLine[];
  readonly trends: readonly GraphTrend[];
  /** Saturdays with their Sundays, for a faint tint behind the paper. */
  readonly weekends: readonly { readonly from: number; readonly to: number }[];
}

export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly AxisTick[];
}

export interface AxisTick {
  readonly at: number;
  /** The lines of its label, the first on top; none for a grid line without a label. */
  readonly label: readonly string[];
}

export interface GraphLine {
  readonly specimen: SpecimenId;
  readonly name: string;
  /** The points that are joined, in order of time. */
  readonly points: readonly GraphPoint[];
  /** Between point i and point i + 1: one fewer than there are points. */
  readonly joins: readonly GraphJoin[];
  /** Further readings of a day that has its point already: shown, not joined. */
  readonly extra: readonly GraphPoint[];
  readonly marks: readonly BaseMark[];
}

/** `across-a-gap`: a reading was missed in between, so nobody knows the way it went. */
export type GraphJoin = 'measured' | 'across-a-gap';

export interface GraphPoint {
  readonly x: number;
  readonly y: number;
  readonly reading: SeriesPoint;
}

/** What was written for a day without a number. */
export interface BaseMark {
  readonly x: number;
  readonly day: CivilDay;
  readonly state: DayState;
}

export interface GraphTrend {
  readonly kind: 'least-squares' | 'median-of-slopes';
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}
