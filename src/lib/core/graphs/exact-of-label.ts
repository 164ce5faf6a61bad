import { parseMeasured } from '#core/measure';
import type { GraphTable } from './graph-table';

/**
 * What a number written beside a tick means: how many things for a table of counts, whole
 * nanometres for lengths (in the table's unit, unless another is written). A fraction of more than
 * a whole is read as it stands: on a scale `13/4` comes after `12/4`, where a reading that was
 * written so would be asked about. Null for text that is no such number: nothing, a word, a third
 * of an inch, half a day.
 * @example
 * exactOfLabel('1 1/2', { form: 'measures', unit: 'in' }) // => 38100000
 * exactOfLabel('13/4', { form: 'measures', unit: 'in' }) // => 82550000
 * exactOfLabel('6', { form: 'counts' }) // => 6
 * exactOfLabel('6 1/2', { form: 'counts' }) // => null
 */
export const exactOfLabel = (
  text: string,
  table:
    { readonly form: 'counts' } | Pick<Exclude<GraphTable, { form: 'counts' }>, 'form' | 'unit'>,
): number | null => {
  const unit = table.form === 'counts' ? 'count' : table.unit;
  const read = parseMeasured(asMixedNumber(text), { unit });
  return read.ok ? read.value.exact : null;
};

/** `13/4 in` as `3 1/4 in`: said with the whole apart, no number can be two. */
const asMixedNumber = (text: string): string => {
  const [, over = '', under = '', rest = ''] = improper.exec(text) ?? [];
  const [parts, parted] = [Number(over), Number(under)];
  if (parted === 0 || parts < parted) return text;
  const left = parts % parted;
  const whole = (parts - left) / parted;
  return `${whole}${left === 0 ? '' : ` ${left}/${parted}`}${rest}`;
};

/** A fraction of whole numbers and what comes after it: a unit, or nothing. */
const improper = /^\s*(\d{1,6})\s*[/\u2044\u2215]\s*(\d{1,4})(?![\d.,/])(.*)$/;
