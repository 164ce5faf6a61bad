import type { CivilDay } from '#core/calendar';
import type { InvestigationId, SpecimenId } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';

/** The ways a table can be got out of a log. */
export const tableSources = [
  /** How many days each word of a daily kind came. */
  'kind-days',
  /** How many days each weather word stood beside a reading. */
  'weather-days',
  /** How many days were wet and how many dry, where each was read by itself. */
  'wet-days',
  /** How often it grew from one day to the very next, and how often it did not. */
  'growth-days',
  /** How many days have a number, and how many each of the states of a day. */
  'state-days',
  /** How many readings each specimen has. */
  'specimen-readings',
  /** One value a day: heights, or rain. */
  'day-values',
  /** Two logs on the same days: on each day their values are neighbours. */
  'values-side-by-side',
  /** One value a week: rain added up. */
  'week-values',
  /** One value for each time on the clock, of one day. */
  'hour-values',
  /** Many specimens, each measured once. */
  'each-specimen',
  /** One specimen, read again and again on one day, by one person or by several. */
  'reads-of-one',
  /** How much it grew from one day to the very next. */
  'growth-amounts',
  /** Rain amounts of single days. */
  'rain-amounts',
  /** A height over the days. */
  'days-in-order',
  /** A shadow over the hours of one day. */
  'hours-in-order',
] as const;
export type TableSource = (typeof tableSources)[number];

/**
 * Which table was chosen to be drawn, as plain data that a journal can keep. The table is made
 * again from it and the notebook (`tableOf`), so that a corrected reading is corrected there too.
 */
export interface TableChoice {
  readonly source: TableSource;
  readonly investigation: InvestigationId;
  /** In the order of the notebook; several only where each has its own mark, line or row. */
  readonly specimens: readonly SpecimenId[];
  /** The days looked at, both included. */
  readonly from: CivilDay;
  readonly to: CivilDay;
  /** The unit and mark of the table, where it is one of measures; null for counts. */
  readonly told: ToldIn | null;
  /** The most kinds a table of counts may have: the smallest are put together as one. */
  readonly mostKinds: number | null;
  /** A table of values for a frame that a grown-up gives, with a scale by 5, 10 and on. */
  readonly givenSteps?: true;
}

export interface ToldIn {
  readonly unit: Unit;
  readonly mark: MarkId;
  /**
   * Whether every reading is taken to this unit and mark, and said with "about" where that
   * changes it. Else each keeps the unit it was read in.
   */
  readonly converts: boolean;
}
