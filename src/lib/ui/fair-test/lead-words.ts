import { formatDay } from '#core/calendar';
import { amountIn, type LeadRow } from '#core/growth';
import { toldAmount } from '#ui/growth-words';

/** By how much one plant led on a day, as it was read: `2 cm`, or `about 2 cm`. */
export const leadAmount = ({ leadExact, a, b }: LeadRow): string =>
  toldAmount(amountIn(leadExact, [a.mark, b.mark], a.unit));

/** Who led on a day. */
export const leaderWords = (row: LeadRow, nameOfA: string, nameOfB: string): string =>
  row.leader === 'same'
    ? 'the same'
    : `${row.leader === 'a' ? nameOfA : nameOfB} by ${leadAmount(row)}`;

/** On which day the lead was largest, or on which days; empty when nobody led. */
export function largestLeadWords(rows: readonly LeadRow[]): string {
  const [first] = rows;
  if (!first) return '';
  const days = rows.map(({ day }) => formatDay(day, 'short'));
  const told =
    days.length > mostDaysTold
      ? `${days.length} days`
      : [days.slice(0, -1).join(', '), days.at(-1)].filter(Boolean).join(' and ');
  return `The lead was largest on ${told}: ${leadAmount(first)}.`;
}

const mostDaysTold = 3;
