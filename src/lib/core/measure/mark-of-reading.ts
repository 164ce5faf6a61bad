import type { CombinedParts } from './combined-parts';
import { formatExact } from './format-exact';
import { markById, type Mark, type MarkId } from './mark';
import { markFits, marksFor } from './marks-for';
import type { Measured } from './measured';
import { stepsIn } from './ratio';
import { systemOf } from './unit';
import type { WrittenOptions } from './written-options';

/**
 * The mark a reading was read to: the wanted one when the value lies on it and it belongs to the
 * unit, else the coarsest mark of the unit, in the way the number was written, that it lies on.
 */
export const markOfReading = (parts: CombinedParts, wanted?: MarkId): Mark | undefined => {
  const candidates = marksWritten(parts);
  const fitting = wanted && markFits(wanted, parts.unit) ? [markById(wanted)] : [];
  return [...fitting, ...candidates].find((mark) => stepsIn(parts.value, mark.exact).fits);
};

/**
 * Readings near a value that lies on no mark: the value itself when the unit has a mark for it
 * that is written the other way (4.125 in is 4 1/8 in), else the marks on either side of it.
 */
export const readingsBeside = (
  parts: CombinedParts,
  wanted: MarkId | undefined,
  options: WrittenOptions,
): readonly Measured[] => {
  const { value, unit } = parts;
  const other = marksFor(unit).find((mark) => stepsIn(value, mark.exact).fits);
  const finest = marksWritten(parts).at(-1);
  const mark = other ?? (wanted && markFits(wanted, unit) ? markById(wanted) : finest);
  if (!mark) return [];
  const { whole } = stepsIn(value, mark.exact);
  return (other ? [whole] : [whole, whole + 1]).map((steps) => {
    const exact = steps * mark.exact;
    return { text: formatExact(exact, unit, mark.id, options), unit, mark: mark.id, exact };
  });
};

/** Inches written in decimals are not read to halves, and those in fractions not to tenths. */
const marksWritten = ({ unit, writtenAs }: CombinedParts): readonly Mark[] => {
  if (systemOf(unit) !== 'customary') return marksFor(unit);
  const unused = writtenAs === 'decimal' ? 'fraction' : 'decimal';
  return marksFor(unit).filter((mark) => mark.writtenAs !== unused || isWholeUnit(mark));
};

const isWholeUnit = (mark: Mark): boolean => mark.id.startsWith('1 ');
