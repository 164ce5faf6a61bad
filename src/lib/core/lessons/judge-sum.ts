import { sumAnswer, sumTold, type Sum } from './review-sum';

/** What a wrong answer to a sum shows (commonly seen slips; common practice, no source). */
export const sumSlips = [
  /** One of the two numbers of the story was said again. */
  'gave-a-number',
  /** Put together, where the difference is asked. */
  'added-instead',
  /** Taken away, where both together are asked. */
  'took-away-instead',
  /** In each place the smaller figure was taken from the larger: 42 - 17 = 35. */
  'smaller-from-larger',
  /** A ten or a hundred too many or too few: it was made or broken and not counted. */
  'ten-off',
  /** One too many or too few: the number to start from was counted too. */
  'one-off',
] as const;
export type SumSlip = (typeof sumSlips)[number];

export type SumJudged =
  | { readonly kind: 'right' }
  | { readonly kind: 'slip'; readonly slip: SumSlip }
  | { readonly kind: 'other' };

/**
 * What an answer to a sum says: right, a slip by name, or some other number.
 * @example
 * judgeSum({ start: 8, change: 5, result: 13, unknown: 'change' }, 21) // => { kind: 'slip', slip: 'added-instead' }
 * judgeSum({ start: 17, change: 25, result: 42, unknown: 'change' }, 35) // => { kind: 'slip', slip: 'smaller-from-larger' }
 * judgeSum({ start: 8, change: 5, result: 13, unknown: 'result' }, 13) // => { kind: 'right' }
 */
export const judgeSum = (
  sum: Pick<Sum, 'start' | 'change' | 'result' | 'unknown'>,
  given: number,
): SumJudged => {
  const answer = sumAnswer(sum);
  if (given === answer) return { kind: 'right' };
  const [one, other] = sumTold(sum);
  const isAdding = sum.unknown === 'result';
  const slip = (
    [
      ['gave-a-number', given === one || given === other],
      ['added-instead', !isAdding && given === one + other],
      ['took-away-instead', isAdding && given === Math.abs(one - other)],
      ['smaller-from-larger', !isAdding && given === figureByFigure(one, other)],
      ['one-off', Math.abs(given - answer) === 1],
      ['ten-off', [10, 100].includes(Math.abs(given - answer))],
    ] as const
  ).find(([, holds]) => holds);
  return slip ? { kind: 'slip', slip: slip[0] } : { kind: 'other' };
};

const figureByFigure = (one: number, other: number): number =>
  [1, 10, 100].reduce(
    (sum, place) =>
      sum + place * Math.abs((Math.floor(one / place) % 10) - (Math.floor(other / place) % 10)),
    0,
  );
