import { parseMeasured } from '#core/measure';
import type { GraphTable } from './graph-table';

/**
 * What a number written beside a tick means: how many things for a table of counts, whole
 * nanometres for lengths (in the table's unit, unless another is written). Null for text that is
 * no such number: nothing, a word, a third of an inch, half a day.
 * @example
 * exactOfLabel('1 1/2', { form: 'measures', unit: 'in' }) // => 38100000
 * exactOfLabel('6', { form: 'counts' }) // => 6
 * exactOfLabel('6 1/2', { form: 'counts' }) // => null
 */
export const exactOfLabel = (
  text: string,
  table:
    { readonly form: 'counts' } | Pick<Exclude<GraphTable, { form: 'counts' }>, 'form' | 'unit'>,
): number | null => {
  const unit = table.form === 'counts' ? 'count' : table.unit;
  const read = parseMeasured(text, { unit });
  return read.ok ? read.value.exact : null;
};
