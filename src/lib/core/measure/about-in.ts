import { deservedMark } from './deserved-mark';
import { formatExact } from './format-exact';
import type { MarkId } from './mark';
import type { Measured } from './measured';
import { nearestOnMark } from './nearest-on-mark';
import { isLengthUnit, systemOf, type LengthUnit } from './unit';
import type { DecimalSign } from './written-options';

export interface AboutLength {
  /** Ready to show: `about 12.7 cm`; without "about" where nothing was rounded. */
  readonly text: string;
  /** The value shown, in whole nanometres. */
  readonly exactAtMark: number;
  readonly unit: LengthUnit;
  readonly mark: MarkId;
}

/**
 * A reading shown in another unit, by the exact ratio and with no more precision than its mark
 * deserves (deservedMark has the rule and its source). Shown only, never stored. Between units of
 * one system the same length is written again exactly. A count has no length and throws.
 * @example
 * aboutIn({ text: '5', unit: 'in', mark: '1/4 in', exact: 127_000_000 }, 'cm').text // => 'about 12.7 cm'
 * aboutIn({ text: '12', unit: 'cm', mark: '1 cm', exact: 120_000_000 }, 'in').text // => 'about 4 1/2 in'
 * aboutIn({ text: '18', unit: 'in', mark: '1 in', exact: 457_200_000 }, 'ft').text // => '1 ft 6 in'
 */
export const aboutIn = (
  measured: Measured,
  unit: LengthUnit,
  options: { readonly decimal?: DecimalSign } = {},
): AboutLength => {
  if (!isLengthUnit(measured.unit)) throw new Error('A count has no length');
  const mark = deservedMark(measured.mark, unit);
  const exactAtMark = nearestOnMark(measured.exact, mark);
  if (systemOf(measured.unit) === systemOf(unit)) {
    return { text: formatExact(exactAtMark, unit, mark, options), exactAtMark, unit, mark };
  }
  // The last nought is part of what is claimed: 11.0 m is not 11 m (NIST SP 811 B.7.2).
  const shown = formatExact(exactAtMark, unit, mark, { ...options, trailingZeros: 'keep' });
  return { text: `about ${shown}`, exactAtMark, unit, mark };
};
