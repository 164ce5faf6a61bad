import { failed, ok, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import { exactPerUnit, markById, type MarkId, type Unit } from '#core/measure';
import type { StepRange } from './labels-of';
import { mostSquaresUp, mostStepsAcross } from './paper-room';

/**
 * A scale from 0 for counts: by ones in grades 1 and 2 (Common Core 2.MD.D.10), and in grade 3 by
 * 2, 5, 10 (3.MD.B.3) and on as soon as ones no longer fit the paper. A table of nothing but
 * noughts has the scale 0 to 1.
 * @example
 * countScale(7, 'grade-2').value // => { from: 0, to: 7, step: 1 }
 * countScale(23, 'grade-3').value // => { from: 0, to: 24, step: 2 }
 * countScale(23, 'grade-2') // => { ok: false, error: { kind: 'too-tall', need: 23, room: 16 } }
 */
export const countScale = (largest: number, stage: Stage): Result<StepRange, TooTall> =>
  fromZero(largest, stage === 'grade-3' ? niceTimes : [1]);

/**
 * A scale from 0 for lengths. Bars in grades 1 and 2 go by single units, or by 5, 10 and on in a
 * frame that a grown-up gives; elsewhere a step is the
 * finest of a half or quarter inch, a unit, 2, 5, 10 of them and on that fits the paper. Parts of
 * a metric unit, which need decimals, and parts of anything in grades 1 and 2, are taken only
 * where whole units would leave fewer than four squares. A step is never finer than the mark.
 * @example
 * lengthScale(120000000, { unit: 'cm', mark: '1 cm' }, 'grade-2', 'single-unit').value // => { from: 0, to: 120000000, step: 10000000 }
 * lengthScale(220000000, { unit: 'cm', mark: '1 cm' }, 'grade-3', 'any-step').value // => { from: 0, to: 220000000, step: 20000000 }
 * lengthScale(220000000, { unit: 'cm', mark: '1 cm' }, 'grade-2', 'by-fives').value // => { from: 0, to: 250000000, step: 50000000 }
 * lengthScale(220000000, { unit: 'cm', mark: '1 cm' }, 'grade-2', 'single-unit') // => { ok: false, error: { kind: 'too-tall', need: 22, room: 16 } }
 */
export const lengthScale = (
  largest: number,
  { unit, mark }: ReadTo,
  stage: Stage,
  steps: 'single-unit' | 'by-fives' | 'any-step',
): Result<StepRange, TooTall> => {
  const one = Math.max(exactPerUnit(unit), markById(mark).exact);
  const times = { 'single-unit': [1], 'by-fives': timesByFives, 'any-step': niceTimes }[steps];
  const wholes = times.map((each) => each * one);
  const parts = partsOf(unit, mark);
  const wantsParts =
    Math.ceil(largest / one) < fewestSquares || (stage === 'grade-3' && isFraction(unit, mark));
  return fromZero(largest > 0 ? largest : one, wantsParts ? [...parts, ...wholes] : wholes);
};

/**
 * The number line of a line plot: from the smallest value to the largest, widened outward to
 * whole steps of the mark, with every step on it. It need not start at 0, being a piece of a ruler.
 * (Common Core 2.MD.D.9 and 3.MD.B.4: marked in whole units, halves or quarters.)
 * @example
 * plotScale([19050000, 82550000], '1/4 in').value // => { from: 19050000, to: 82550000, step: 6350000 }
 */
export const plotScale = (
  values: readonly number[],
  mark: MarkId,
): Result<StepRange, TooWide | { readonly kind: 'no-numbers' }> => {
  if (values.length === 0) return failed({ kind: 'no-numbers' });
  const step = markById(mark).exact;
  const from = Math.floor(Math.min(...values) / step) * step;
  const to = Math.ceil(Math.max(...values) / step) * step;
  const need = (to - from) / step;
  if (need > mostStepsAcross) return failed({ kind: 'too-wide', need, room: mostStepsAcross });
  return ok({ from, to, step });
};

interface ReadTo {
  readonly unit: Unit;
  readonly mark: MarkId;
}

const niceTimes = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000];
/** Children count on by fives and tens before they meet a scale (2.NBT.A.2, from memory). */
const timesByFives = niceTimes.filter((times) => times >= 5);
const fewestSquares = 4;

const fromZero = (largest: number, steps: readonly number[]): Result<StepRange, TooTall> => {
  const last = steps.at(-1) as number;
  const step = steps.find((each) => Math.ceil(largest / each) <= mostSquaresUp);
  if (step === undefined) {
    return failed({ kind: 'too-tall', need: Math.ceil(largest / last), room: mostSquaresUp });
  }
  return ok({ from: 0, to: Math.max(1, Math.ceil(largest / step)) * step, step });
};

/** Parts of a unit that a ruler has, the finer first, none finer than the mark. */
const partsOf = (unit: Unit, mark: MarkId): readonly number[] => {
  const one = exactPerUnit(unit);
  const shares = isFraction(unit, mark) ? [4, 2] : [10, 5, 2];
  return shares
    .map((share) => one / share)
    .filter((part) => Number.isInteger(part) && part % markById(mark).exact === 0);
};

const isFraction = (unit: Unit, mark: MarkId): boolean =>
  unit === 'in' && markById(mark).writtenAs === 'fraction';

export interface TooTall {
  readonly kind: 'too-tall';
  /** Squares that the largest needs, and that there are. */
  readonly need: number;
  readonly room: number;
}

export interface TooWide {
  readonly kind: 'too-wide';
  readonly need: number;
  readonly room: number;
}
