import { daysBetween, formatDay, type CivilDay } from '#core/calendar';
import { amountIn, type PredictionBand } from '#core/growth';
import type { MarkId, Unit } from '#core/measure';
import { amountWords, toldAmount } from './amount-words';

/** What the next days may bring, for the grown-up alone. */

export const aheadWords = {
  title: 'If it keeps on as it did this week',
  about:
    'For you, after the child has said a number. The child’s own sealed ones are not shown here.',
  // Simulated on S-shaped plants: straight lines through the last week of readings.
  caveat:
    'Take it lightly: in simulated plants, a straight line through the last week missed by about 1.5 cm in the middle one day ahead and 3.7 cm three days ahead, and was mostly too high, because plants slow down.',
} as const;

export function aheadBandWords(
  band: PredictionBand,
  forDay: CivilDay,
  today: CivilDay,
  { unit, mark }: { readonly unit: Unit; readonly mark: MarkId },
): string {
  const told = (exact: number): string => toldAmount(amountIn(exact, [mark], unit));
  const when = daysBetween(today, forDay) === 1 ? 'Tomorrow, ' : '';
  const [low, high] = [band.lowExact, band.highExact].map((exact) => amountWords(told(exact)));
  const range = low === high ? `about ${low}, no more` : `between ${low} and ${high}`;
  const straight =
    band.straightExact === null
      ? ''
      : ` As it did this week: about ${amountWords(told(band.straightExact).replace(/^about /, ''))}.`;
  return `${when}${formatDay(forDay, 'long')}: probably ${range}.${straight}`;
}
