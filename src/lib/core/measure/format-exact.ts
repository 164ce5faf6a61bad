import { markById, type Mark, type MarkId } from './mark';
import { nearestOnMark } from './nearest-on-mark';
import { exactPerUnit, systemOf, type Unit } from './unit';
import { writtenOnMark } from './written-on-mark';
import type { WrittenOptions } from './written-options';

/**
 * A computed value, written in a unit the way a mark is written. A value between two divisions is
 * first taken to the nearest one (half goes up); saying "about" is left to the caller. Feet and
 * yards with a finer mark are written in parts: 1 ft 3 1/4 in. Below zero (a plant that drooped)
 * the sign is the minus sign U+2212. A mark of another system than the unit's throws.
 * @example
 * formatExact(114_300_000, 'in', '1/2 in') // => '4 1/2 in'
 * formatExact(125_000_000, 'cm', '1 mm', { decimal: 'comma' }) // => '12,5 cm'
 * formatExact(381_000_000, 'ft', '1 in') // => '1 ft 3 in'
 * formatExact(-12_700_000, 'in', '1/4 in') // => '−1/2 in'
 */
export const formatExact = (
  exact: number,
  unit: Unit,
  mark: MarkId,
  options?: WrittenOptions,
): string => {
  const { sign, parts } = partsOf(exact, unit, mark, options);
  return sign + parts.map(({ number, unit }) => withUnit(number, unit)).join(' ');
};

/**
 * The same without the unit, for a table whose heading names it. Feet with inches keep theirs,
 * for `1 3` would mean nothing.
 * @example
 * formatExactNumber(114_300_000, 'in', '1/2 in') // => '4 1/2'
 * formatExactNumber(381_000_000, 'ft', '1 in') // => '1 ft 3 in'
 */
export const formatExactNumber = (
  exact: number,
  unit: Unit,
  mark: MarkId,
  options?: WrittenOptions,
): string => {
  const { sign, parts } = partsOf(exact, unit, mark, options);
  const [only, ...others] = parts;
  if (only && others.length === 0) return sign + only.number;
  return sign + parts.map(({ number, unit }) => withUnit(number, unit)).join(' ');
};

interface Part {
  readonly number: string;
  readonly unit: Unit;
}

const withUnit = (number: string, unit: Unit): string =>
  unit === 'count' ? number : `${number} ${unit}`;

const partsOf = (
  exact: number,
  unit: Unit,
  id: MarkId,
  options?: WrittenOptions,
): { readonly sign: string; readonly parts: readonly Part[] } => {
  const mark = markById(id);
  if (systemOf(mark.unit) !== systemOf(unit)) throw new Error(`${unit} is not read to ${id}`);
  const onMark = nearestOnMark(exact, id);
  const sign = onMark < 0 ? '\u2212' : '';
  return { sign, parts: downTheLadder(Math.abs(onMark), unit, mark, options) };
};

/** The customary units that are read together, each the next smaller of the one before. */
const ladder: readonly Unit[] = ['yd', 'ft', 'in'];

const downTheLadder = (
  exact: number,
  unit: Unit,
  mark: Mark,
  options?: WrittenOptions,
): readonly Part[] => {
  const smaller = ladder[ladder.indexOf(unit) + 1];
  const reachesLower = ladder.includes(unit) && mark.exact < exactPerUnit(unit) && smaller;
  if (!reachesLower) return [{ number: writtenOnMark(exact, unit, mark, options), unit }];
  const whole = Math.floor(exact / exactPerUnit(unit));
  const rest = exact - whole * exactPerUnit(unit);
  const first = { number: String(whole), unit };
  const lower = downTheLadder(rest, smaller, mark, options);
  // A yard and six inches has no feet to name.
  return [first, ...lower.filter((part, index) => index > 0 || part.number !== '0')];
};
