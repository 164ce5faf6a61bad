import type { NumberRange, Told } from '#core/questions';
import type { SpecimenId, Stage } from '#core/journal';
import type { Unit } from '#core/measure';

/**
 * What a sum tells of the log:
 * - `grew`: a plant, or another length, on two days; by how much it grew between them.
 * - `together`: the rain of two days put together.
 * - `more`: how much longer one shadow is than another of the day, or how many more days of one
 *   kind there were than of another.
 */
export const sumStories = ['grew', 'together', 'more'] as const;
export type SumStory = (typeof sumStories)[number];

export const sumThings = ['height', 'length', 'rain', 'shadow', 'days'] as const;
export type SumThing = (typeof sumThings)[number];

export const sumUnknowns = ['start', 'change', 'result'] as const;
export type SumUnknown = (typeof sumUnknowns)[number];

/** A sum told as a story of the log: `start` and `change` make `result`; one of them is asked. */
export interface Sum {
  readonly story: SumStory;
  readonly thing: SumThing;
  /** Whose numbers: a plant's name; empty where it needs none. */
  readonly of: string;
  readonly specimen: SpecimenId | null;
  readonly unit: Unit;
  /** When, or which kind, `start` is. */
  readonly first: Told;
  /** When, or which kind, `result` is; for `together`, what is put to it. */
  readonly second: Told;
  readonly start: number;
  readonly change: number;
  readonly result: number;
  readonly unknown: SumUnknown;
  /** Made-up numbers, because the log has too few: always marked where they are shown. */
  readonly isPractice: boolean;
}

/**
 * What is asked for.
 * @example
 * sumAnswer({ start: 8, change: 5, result: 13, unknown: 'change' }) // => 5
 */
export const sumAnswer = (sum: Pick<Sum, SumUnknown | 'unknown'>): number => sum[sum.unknown];

/**
 * The two numbers that are told, in the order of the story.
 * @example
 * sumTold({ start: 8, change: 5, result: 13, unknown: 'change' }) // => [8, 13]
 */
export const sumTold = (sum: Pick<Sum, SumUnknown | 'unknown'>): readonly [number, number] => {
  const [one, other] = sumUnknowns.filter((each) => each !== sum.unknown).map((each) => sum[each]);
  return [one!, other!];
};

/**
 * Whether ones are carried over a ten, or tens over a hundred. It is so for adding exactly when it
 * is so for taking away again: 8 + 5 makes a ten, and 13 - 5 breaks it.
 * @example
 * isRegrouped({ start: 8, change: 5 }) // => true
 * isRegrouped({ start: 12, change: 5 }) // => false
 */
export const isRegrouped = ({ start, change }: Pick<Sum, 'start' | 'change'>): boolean =>
  (start % 10) + (change % 10) >= 10 || (start % 100) + (change % 100) >= 100;

/**
 * The narrowest number range of a stage that a sum fits, or null where it fits none: within 20 in
 * grade 1; within 100 without and with regrouping, and within 1000 in units that can be laid out
 * (millimetres, and shadows in centimetres), in grade 2; within 1000 in grade 3.
 * @example
 * sumRange({ start: 8, change: 5, result: 13, unit: 'cm', thing: 'height' }, 'grade-2') // => 'G2b'
 * sumRange({ start: 18, change: 5, result: 23, unit: 'cm', thing: 'height' }, 'grade-1') // => null
 */
export const sumRange = (
  sum: Pick<Sum, 'start' | 'change' | 'result' | 'unit' | 'thing'>,
  stage: Stage,
): NumberRange | null => {
  const { result, unit, thing } = sum;
  if (stage === 'grade-1') return result <= 20 ? 'G1' : null;
  if (stage === 'grade-3') return result <= 1000 ? 'G3' : null;
  if (result <= 100) return isRegrouped(sum) ? 'G2b' : 'G2a';
  const hasModel = unit === 'mm' || (unit === 'cm' && thing === 'shadow');
  return hasModel && result <= 1000 ? 'G2c' : null;
};

/**
 * The name a sum is asked again by: what it is about and its numbers.
 * @example
 * sumName({ story: 'grew', thing: 'height', of: 'Bean', specimen: 'b', unit: 'cm', first: { kind: 'day', day: '2026-03-02' }, second: { kind: 'day', day: '2026-03-06' }, start: 8, change: 5, result: 13, unknown: 'change', isPractice: false }) // => 'sum b day 2026-03-02 day 2026-03-06 8 ? 13 cm'
 */
export const sumName = (sum: Sum): string => {
  const [start, change, result] = sumUnknowns.map((each) =>
    each === sum.unknown ? '?' : `${sum[each]}`,
  );
  const about = sum.isPractice ? `practice ${sum.story}` : (sum.specimen ?? sum.of);
  const when = sum.isPractice ? '' : ` ${labelOf(sum.first)} ${labelOf(sum.second)}`;
  return `sum ${about}${when} ${start} ${change} ${result} ${sum.unit}`;
};

const labelOf = (told: Told): string =>
  told.kind === 'day'
    ? `day ${told.day}`
    : told.kind === 'time'
      ? `time ${told.time}`
      : told.kind === 'word'
        ? `word ${told.word}`
        : told.kind;
