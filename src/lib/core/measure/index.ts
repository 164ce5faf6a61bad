export { aboutIn, type AboutLength } from './about-in';
export { convertLength, unitCatalogue, type UnitDescription } from './convert-length';
export { deservedMark } from './deserved-mark';
export { formatExact, formatExactNumber } from './format-exact';
export { formatMeasured, formatMeasuredNumber } from './format-measured';
export { largestCount, largestLengthExact, longestReadingText } from './largest-reading';
export { isMarkId, markById, marks, type Mark, type MarkId } from './mark';
export { markFits, marksFor } from './marks-for';
export type { Measured } from './measured';
export { liesOnMark, nearestOnMark, readsRight } from './nearest-on-mark';
export type { ParseError, ParseErrorKind } from './parse-error';
export { parseMeasured, type HowToParse } from './parse-measured';
export { toUnit } from './to-unit';
export {
  exactPerUnit,
  isLengthUnit,
  nanometresByUnit,
  systemOf,
  type LengthUnit,
  type Unit,
  type UnitSystem,
} from './unit';
export type { DecimalSign, WrittenOptions } from './written-options';
