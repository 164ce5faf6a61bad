import { exactOfLabel } from './exact-of-label';
import type { GraphTable } from './graph-table';
import { labelsOf } from './labels-of';

/**
 * The number that comes a jump after another, as a child writes it: counting on along a scale the
 * child chose. Null when either is no number of this table.
 * @example
 * nextLabel('4', '2', { form: 'counts' }) // => '6'
 * nextLabel('1 1/2', '1/2', { form: 'measures', unit: 'in', mark: '1/2 in' }) // => '2'
 * nextLabel('four', '2', { form: 'counts' }) // => null
 */
export const nextLabel = (
  before: string,
  jump: string,
  table:
    | { readonly form: 'counts' }
    | Pick<Exclude<GraphTable, { form: 'counts' }>, 'form' | 'unit' | 'mark'>,
): string | null => {
  const from = exactOfLabel(before, table);
  const step = exactOfLabel(jump, table);
  if (from === null || step === null || step <= 0) return null;
  return labelsOf({ from: from + step, to: from + step, step }, table)[0] ?? null;
};
