import type { Measured } from '#core/measure';
import { exactPerUnit, formatExactNumber, markById } from '#core/measure';
import type { Slip } from './doubt';
import type { DoubtCandidate } from './doubt-candidate';
import { rulerExactFor } from './entry-questions';
import { otherPlants, type OtherLog } from './other-plants';
import { isWithin, type PlausibleWindow } from './plausible-window';
import type { Series } from './series';

/**
 * Every slip that would explain a height out of place, in the order of `Slip`: what it would have
 * been lies in a window. Several may fit.
 */
export function explanations(
  candidate: DoubtCandidate,
  windows: readonly PlausibleWindow[],
  { standHeight }: Series['specimen'],
  others: readonly OtherLog[],
): readonly Slip[] {
  const { measured } = candidate;
  const fits = (exact: number): boolean =>
    exact > 0 && windows.some((window) => isWithin(window, exact));
  const slips: readonly (Slip | null)[] = [
    zeroOrMissed(measured, windows),
    otherSide(measured),
    tenTimesTooLong(measured, windows),
    tenTimesTooShort(measured),
    digitsSwapped(measured),
    standCounted(measured, standHeight),
    rulerUpsideDown(measured),
  ];
  return [
    ...slips.flatMap((slip) =>
      slip && (!('perhapsExact' in slip) || fits(slip.perhapsExact)) ? [slip] : [],
    ),
    ...otherPlants(candidate, others),
  ];
}

/**
 * The slips that are asked about already inside the window: near its top, where what it would have
 * been is just what was to be expected. Only those whose number lies far off are clear enough.
 */
export function clearExplanations(
  { measured }: DoubtCandidate,
  { expectedExact, nearExact, highIfExplainedExact }: PlausibleWindow,
  { standHeight }: Series['specimen'],
): readonly Slip[] {
  if (measured.exact <= highIfExplainedExact) return [];
  return [digitsSwapped(measured), standCounted(measured, standHeight)].flatMap((slip) =>
    slip && Math.abs(slip.perhapsExact - expectedExact) <= nearExact ? [slip] : [],
  );
}

const zeroOrMissed = (
  { exact }: Measured,
  [window]: readonly PlausibleWindow[],
): Extract<Slip, { kind: 'zero-or-missed' }> | null =>
  exact === 0 && window && window.last.exact > 0
    ? { kind: 'zero-or-missed', last: window.last }
    : null;

function otherSide({ exact, unit }: Measured): Perhaps<'other-side'> | null {
  if (unit !== 'cm' && unit !== 'mm' && unit !== 'in') return null;
  const perhapsUnit = unit === 'in' ? 'cm' : 'in';
  const perhapsExact = Math.round((exact / exactPerUnit(unit)) * exactPerUnit(perhapsUnit));
  return { kind: 'other-side', chosen: unit, perhapsUnit, perhapsExact };
}

/** Five times the last at least, so that a plant that grew fast is not asked about millimetres. */
function tenTimesTooLong(
  measured: Measured,
  windows: readonly PlausibleWindow[],
): Perhaps<'ten-times-too-long'> | null {
  const { exact, unit } = measured;
  if (!hasPoint(measured) || windows.some(({ last }) => exact < 5 * last.exact)) return null;
  const perhapsUnit = unit === 'cm' ? 'mm' : null;
  return { kind: 'ten-times-too-long', perhapsUnit, perhapsExact: exact / 10 };
}

function tenTimesTooShort(measured: Measured): Perhaps<'ten-times-too-short'> | null {
  const { exact, unit } = measured;
  if (exact === 0 || !hasPoint(measured)) return null;
  const perhapsUnit = unit === 'mm' ? 'cm' : null;
  return { kind: 'ten-times-too-short', perhapsUnit, perhapsExact: exact * 10 };
}

/** Two different digits before the point or the fraction; 20 turned round is no two-digit number. */
function digitsSwapped({ exact, unit, mark }: Measured): Perhaps<'digits-swapped'> | null {
  const whole = Math.floor(exact / exactPerUnit(unit));
  const [tens, ones] = [Math.floor(whole / 10), whole % 10];
  if (tens < 1 || tens > 9 || ones === 0 || tens === ones) return null;
  const perhapsExact = exact + (ones * 10 + tens - whole) * exactPerUnit(unit);
  const perhapsText = formatExactNumber(perhapsExact, unit, mark);
  return { kind: 'digits-swapped', perhapsText, perhapsExact };
}

const standCounted = (
  { exact }: Measured,
  stand: Measured | undefined,
): Perhaps<'stand-counted'> | null =>
  stand && stand.exact > 0
    ? { kind: 'stand-counted', stand, perhapsExact: exact - stand.exact }
    : null;

/** Nothing, and the whole ruler, turn round to each other: no child reads those. */
function rulerUpsideDown({ exact, unit }: Measured): Perhaps<'ruler-upside-down'> | null {
  const rulerExact = rulerExactFor(unit);
  if (exact === 0 || exact >= rulerExact) return null;
  return { kind: 'ruler-upside-down', rulerExact, perhapsExact: rulerExact - exact };
}

/** Halves and quarters have no point that could slip; a whole inch may have won or lost a 0. */
const hasPoint = ({ mark }: Measured): boolean =>
  markById(mark).writtenAs === 'decimal' || mark === '1 in';

type Perhaps<Kind extends Slip['kind']> = Extract<
  Slip,
  { readonly kind: Kind; readonly perhapsExact: number }
>;
