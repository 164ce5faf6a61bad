import {
  formatExact,
  formatExactNumber,
  isLengthUnit,
  nearestOnMark,
  type MarkId,
  type Unit,
} from '#core/measure';
import type { ToldIn } from './table-choice';

/** A number of a table: exact, in the unit it is told in, and as the table shows it. */
export interface ToldValue {
  readonly exact: number;
  readonly unit: Unit;
  readonly text: string;
}

/**
 * A reading as a table tells it. As it was read, it keeps its own unit, which is written where it
 * is another than the table's. Converted, it is taken to the table's mark (half goes up) and said
 * with "about" where that changed it. A count and a length are never turned into each other.
 * @example
 * toldValue({ exact: 25400000, unit: 'in', mark: '1 in' }, { unit: 'cm', mark: '1 cm', converts: false }) // => { exact: 25400000, unit: 'in', text: '1 in' }
 * toldValue({ exact: 25400000, unit: 'in', mark: '1 in' }, { unit: 'cm', mark: '1 cm', converts: true }) // => { exact: 30000000, unit: 'cm', text: 'about 3' }
 */
export const toldValue = (
  { exact, unit, mark }: { readonly exact: number; readonly unit: Unit; readonly mark: MarkId },
  told: ToldIn,
): ToldValue => {
  if (!told.converts || isLengthUnit(unit) !== isLengthUnit(told.unit)) {
    const write = unit === told.unit ? formatExactNumber : formatExact;
    return { exact, unit, text: write(exact, unit, mark) };
  }
  const onMark = nearestOnMark(exact, told.mark);
  const number = formatExactNumber(onMark, told.unit, told.mark);
  return { exact: onMark, unit: told.unit, text: onMark === exact ? number : `about ${number}` };
};
