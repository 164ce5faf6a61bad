import { monthOf } from '#core/calendar';
import type { LogRow } from './log-row';

/** One month of a log: a page of the notebook. */
export interface LogMonth {
  /** Written `YYYY-MM`. */
  readonly month: string;
  readonly rows: readonly LogRow[];
}

/**
 * The rows of a log by the month they begin in, in order. A month that lies wholly inside a
 * folded stretch has no rows, and is left out.
 *
 * @example
 * logMonths([{ kind: 'blank', day: '2026-02-28' }, { kind: 'blank', day: '2026-03-01' }]).map((each) => each.month) // => ['2026-02', '2026-03']
 */
export function logMonths(rows: readonly LogRow[]): readonly LogMonth[] {
  const rowsByMonth = new Map<string, LogRow[]>();
  for (const row of rows) {
    const month = monthOf(row.day);
    const known = rowsByMonth.get(month);
    if (known) known.push(row);
    else rowsByMonth.set(month, [row]);
  }
  return [...rowsByMonth].map(([month, ofMonth]) => ({ month, rows: ofMonth }));
}
