import type { CivilDay } from '#core/calendar';
import type { Quantity } from '#core/journal';
import type { Measured } from '#core/measure';
import { canCompare, dayAmount, type Series, type SeriesDay } from '#core/series';

/** One day on which two specimens were both measured. */
export interface LeadRow {
  readonly day: CivilDay;
  readonly a: Measured;
  readonly b: Measured;
  /** By how much the leader leads: whole nanometres or things, 0 or more. */
  readonly leadExact: number;
  readonly leader: 'a' | 'b' | 'same';
}

/**
 * Who is taller, day by day: a row for every day on which both were measured, in order, with the
 * amount that stands for each (`dayAmount`). Nothing is filled in for a day one of them lacks, and
 * a seed that is not up has no row, not a 0. A child compares readings in one unit only; for a
 * grown-up lengths in different units are compared exactly. Two plants tell about these two.
 *
 * Shadows and daily words have no rows: a shadow is only as long as its hour. Rain totals of
 * different numbers of days are left out.
 * @example
 * leadTable({ investigation: { quantity: 'plant-height' }, days: [] }, { investigation: { quantity: 'plant-height' }, days: [] }) // => []
 */
export const leadTable = (
  a: Series,
  b: Series,
  reader: 'child' | 'grown-up' = 'child',
): readonly LeadRow[] => {
  const { quantity } = a.investigation;
  if (quantity !== b.investigation.quantity || !leadQuantities.includes(quantity)) return [];
  const dayOfB = new Map(b.days.map((day) => [day.day, day]));
  return a.days.flatMap((dayA) => {
    const dayB = dayOfB.get(dayA.day);
    const amountA = dayAmount(a, dayA);
    const amountB = dayB ? dayAmount(b, dayB) : null;
    if (!dayB || !amountA || !amountB || spansOf(dayA) !== spansOf(dayB)) return [];
    const isTold =
      reader === 'child' ? amountA.unit === amountB.unit : canCompare(amountA, amountB);
    return isTold ? [rowOf(dayA.day, amountA, amountB)] : [];
  });
};

/**
 * The row with the largest lead, or all that tie; none when no row has a lead.
 * @example
 * largestLead([{ day: '2026-03-09', leadExact: 2 }, { day: '2026-03-10', leadExact: 5 }]) // => [{ day: '2026-03-10', leadExact: 5 }]
 * largestLead([]) // => []
 */
export const largestLead = (rows: readonly LeadRow[]): readonly LeadRow[] => {
  const largest = rows.reduce((most, { leadExact }) => Math.max(most, leadExact), 0);
  return largest === 0 ? [] : rows.filter(({ leadExact }) => leadExact === largest);
};

const rowOf = (day: CivilDay, a: Measured, b: Measured): LeadRow => {
  const difference = a.exact - b.exact;
  const leader = difference === 0 ? 'same' : difference > 0 ? 'a' : 'b';
  return { day, a, b, leadExact: Math.abs(difference), leader };
};

/** How many days its rain was gathered over, as a text to compare; '1' for everything else. */
const spansOf = (day: SeriesDay): string =>
  String(day.readings.reduce((longest, { spanDays }) => Math.max(longest, spanDays), 1));

const leadQuantities: readonly Quantity[] = ['plant-height', 'length', 'rain'];
