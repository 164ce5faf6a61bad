import { formatExact, formatExactNumber } from './format-exact';
import type { Measured } from './measured';
import type { WrittenOptions } from './written-options';

/**
 * A reading written in its own unit and to its own mark: halves of an inch stay halves.
 * Parsing the text again with the same unit and mark gives the same exact value.
 * @example
 * formatMeasured({ text: '4½', unit: 'in', mark: '1/2 in', exact: 114_300_000 }) // => '4 1/2 in'
 * formatMeasured({ text: '7', unit: 'count', mark: '1', exact: 7 }) // => '7'
 */
export const formatMeasured = (measured: Measured, options?: WrittenOptions): string =>
  formatExact(measured.exact, measured.unit, measured.mark, options);

/**
 * The same without the unit, for a table whose heading names it.
 * @example
 * formatMeasuredNumber({ text: '12.5', unit: 'cm', mark: '1 mm', exact: 125_000_000 }) // => '12.5'
 */
export const formatMeasuredNumber = (measured: Measured, options?: WrittenOptions): string =>
  formatExactNumber(measured.exact, measured.unit, measured.mark, options);
