import { middleOf, spreadOf } from './spread';

/** A scale as the child wrote it: what counts for reading the drawing, whatever ours would be. */
export interface WrittenScale {
  /** The numbers that could be read, from the corner on. */
  readonly ticks: readonly ScaleTick[];
  /** The usual difference between neighbouring numbers. */
  readonly step: number;
  /** The usual distance between neighbouring numbers, in squares. */
  readonly space: number;
  /** All steps are the same. */
  readonly hasEvenSteps: boolean;
  /** All distances are the same, within a fifth. */
  readonly hasEvenSpaces: boolean;
  /** Each distance is as long as its step says, so that the scale is fair though numbers skip. */
  readonly isFair: boolean;
  /** The number at a position, by the two numbers it lies between; beyond them, by the usual step. */
  readonly valueAt: (at: number) => number;
  /** The number at a position, had the scale gone on as it usually does from its first number. */
  readonly evenValueAt: (at: number) => number;
}

export interface ScaleTick {
  readonly at: number;
  readonly value: number;
  /** Its place among the ticks of the drawing. */
  readonly index: number;
}

/** Common practice: distances that differ by up to a fifth are a wobble of the hand. */
const wobble = 0.2;

/**
 * Reads the numbers that a child wrote beside a side. Words that are no number are passed over;
 * a single number above the corner counts from a nought in the corner. Null where fewer than two
 * positions carry a number: nothing can be read from it.
 * @param numberOf what a written number means (a count, or whole nanometres), or null
 * @example
 * writtenScale([{ at: 0, text: '0' }, { at: 1, text: '2' }, { at: 2, text: '4' }], Number).valueAt(1.5) // => 3
 * writtenScale([{ at: 0, text: '0' }, { at: 1, text: '1' }, { at: 2, text: '3' }], Number).hasEvenSteps // => false
 * writtenScale([], Number) // => null
 */
export const writtenScale = (
  written: readonly { readonly at: number; readonly text: string }[],
  numberOf: (text: string) => number | null,
): WrittenScale | null => {
  const ticks = withCorner(readTicks(written, numberOf));
  const [first, second] = ticks;
  if (!first || !second) return null;
  const pairs = ticks.slice(1).map((tick, index) => ({
    step: tick.value - ticks[index]!.value,
    space: tick.at - ticks[index]!.at,
  }));
  const steps = pairs.map((pair) => pair.step);
  const step = usualOf(steps);
  const space = middleOf(pairs.map((pair) => pair.space));
  const isEven = (one: number): boolean => Math.abs(one - step) <= Math.abs(step) * 1e-6;
  const evenValueAt = (at: number): number => first.value + ((at - first.at) * step) / space;
  return {
    ...{ ticks, step, space, evenValueAt },
    hasEvenSteps: step > 0 && steps.every(isEven),
    hasEvenSpaces: spreadOf(pairs.map((pair) => pair.space)) <= wobble + 1e-9,
    isFair:
      steps.every((one) => one > 0) &&
      spreadOf(pairs.map((pair) => pair.space / pair.step)) <= wobble + 1e-9,
    valueAt: (at) => valueOn(ticks, at, step / space),
  };
};

const readTicks = (
  written: readonly { readonly at: number; readonly text: string }[],
  numberOf: (text: string) => number | null,
): readonly ScaleTick[] =>
  written
    .flatMap(({ at, text }, index): readonly ScaleTick[] => {
      const value = text.trim() === '' ? null : numberOf(text);
      return value === null || !Number.isFinite(value) ? [] : [{ at, value, index }];
    })
    .sort((one, other) => one.at - other.at)
    .filter((tick, index, all) => index === 0 || tick.at - all[index - 1]!.at > 1e-6);

/** One number alone is read from a nought in the corner, which many children leave unwritten. */
const withCorner = (ticks: readonly ScaleTick[]): readonly ScaleTick[] => {
  const only = ticks[0];
  if (ticks.length !== 1 || !only || only.at <= 0 || only.value <= 0) return ticks;
  return [{ at: 0, value: 0, index: only.index }, only];
};

/** The step that comes most often; of several, the smallest that goes up. */
const usualOf = (steps: readonly number[]): number => {
  const timesOf = (step: number): number =>
    steps.filter((other) => Math.abs(other - step) <= Math.abs(step) * 1e-6).length;
  const rising = steps.filter((step) => step > 0).sort((one, other) => one - other);
  return rising.reduce(
    (best, step) => (timesOf(step) > timesOf(best) ? step : best),
    rising[0] ?? steps[0]!,
  );
};

const valueOn = (ticks: readonly ScaleTick[], at: number, perSquare: number): number => {
  const above = ticks.findIndex((tick) => tick.at >= at);
  if (above <= 0) {
    const end = above === 0 ? ticks[0]! : ticks.at(-1)!;
    return end.value + (at - end.at) * perSquare;
  }
  const [low, high] = [ticks[above - 1]!, ticks[above]!];
  return low.value + ((at - low.at) / (high.at - low.at)) * (high.value - low.value);
};
