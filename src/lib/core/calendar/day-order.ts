import { readDayText, type DayOrder } from './day-text';

/**
 * Which order a whole column of days is written in. Only days written in numbers with the year
 * last can tell; texts that no order can read are left for `readDayText` to report.
 * `either`: both orders read every such text (also when there is none); `neither`: some can only
 * be day-first and others only month-first, so the column does not keep to one order.
 * @example
 * likelyDayOrder(['3/9/2026', '3/14/2026']) // => 'month-first'
 * likelyDayOrder(['3/9/2026', '4/9/2026']) // => 'either'
 * likelyDayOrder(['14/3/2026', '3/14/2026']) // => 'neither'
 */
export const likelyDayOrder = (texts: readonly string[]): DayOrder | 'either' | 'neither' => {
  let onlyDayFirst = false;
  let onlyMonthFirst = false;
  for (const text of texts) {
    const dayFirst = readDayText(text, 'day-first').ok;
    const monthFirst = readDayText(text, 'month-first').ok;
    onlyDayFirst ||= dayFirst && !monthFirst;
    onlyMonthFirst ||= monthFirst && !dayFirst;
  }
  if (onlyDayFirst && onlyMonthFirst) return 'neither';
  if (onlyDayFirst) return 'day-first';
  return onlyMonthFirst ? 'month-first' : 'either';
};
