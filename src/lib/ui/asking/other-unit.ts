import type { Reading } from '#core/journal';
import { formatMeasuredNumber, parseMeasured, type Measured, type Unit } from '#core/measure';
import type { Doubt } from '#core/series';

/**
 * A reading as it would be in the unit a doubt thinks of: the same figures with the other unit.
 * Null where the doubt is not about a unit, or the figures cannot be read in that one.
 */
export function readingInOtherUnit(
  { all }: Pick<Reading, 'all'>,
  doubt: Doubt,
): readonly [Measured, ...Measured[]] | null {
  const unit = 'perhapsUnit' in doubt ? doubt.perhapsUnit : null;
  if (unit === null) return null;
  const [first, ...rest] = all.map((measured) => inUnit(measured, unit));
  if (!first || rest.includes(null)) return null;
  return [first, ...rest.filter((measured) => measured !== null)];
}

/** The mark is the coarsest the figures lie on: how fine the other side was read is not known. */
function inUnit(measured: Measured, unit: Unit): Measured | null {
  const figures = /[^\d\s.,/]/.test(measured.text) ? formatMeasuredNumber(measured) : measured.text;
  const parsed = parseMeasured(figures, { unit });
  return parsed.ok ? parsed.value : null;
}
