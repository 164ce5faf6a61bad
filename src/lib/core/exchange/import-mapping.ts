import type { CivilDay, DayOrder } from '#core/calendar';
import type { DecimalSign, MarkId, Unit } from '#core/measure';

/** What a column of a table can hold for us. */
export const importFields = [
  'day',
  'time',
  'number',
  'unit',
  'mark',
  'state',
  'word',
  'specimen',
  'investigation',
  'note',
  'why',
  'span-days',
  'leaves',
  'weather',
  'line',
  'cm',
  'value',
  'all-readings',
] as const;

/** The last four are columns of our own table; no other table has them. */
export type ImportField = (typeof importFields)[number];

/** How a table is read: which column holds what, and what its writing means. */
export interface ImportMapping {
  /** The column of each field, the first column being 0. */
  readonly columnByField: Readonly<Partial<Record<ImportField, number>>>;
  /** Whether the first record names the columns. */
  readonly hasHeading: boolean;
  readonly days: DaysWritten;
  /** The unit of numbers that name none themselves; null when it has to be asked for. */
  readonly unit: Unit | null;
  /** The mark the numbers were read to; null: the coarsest one on which all of them lie. */
  readonly mark: MarkId | null;
  readonly decimal: DecimalSign;
  /** What a day with an empty number means. */
  readonly blankMeans: 'missed' | 'nothing';
  /** What 0 means: rain has 0; a plant of height 0 is most often not up yet. Not asked of our own table. */
  readonly zeroMeans: 'zero' | 'not-up-yet';
  /** Which of several specimens in the table is read; null: all rows are one specimen's. */
  readonly only: SpecimenName | null;
  /** Whether it is the table this program writes, with its guards and crossed-out lines. */
  readonly isOwn: boolean;
}

export type DaysWritten =
  /** As dates. With no order given, a date that could be two is refused. */
  | { readonly as: 'date'; readonly order: DayOrder | null }
  /** As numbers of days, with the date of one of them; null when it has to be asked for. */
  | { readonly as: 'number'; readonly anchor: DayAnchor | null };

/** "Day 7 was 9 March." */
export interface DayAnchor {
  readonly number: number;
  readonly day: CivilDay;
}

export interface SpecimenName {
  /** Empty where the table has no such column. */
  readonly investigation: string;
  readonly specimen: string;
}
