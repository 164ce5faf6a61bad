import type { Result } from '#core/base';
import { amountIn, decimalText, type GuessesCloser } from '#core/growth';
import type { MarkId, Unit } from '#core/measure';
import { amountWords, toldAmount } from './amount-words';

/** Whether one person's guesses come closer, told to the grown-up. */

export const guessesAbout =
  'Guesses are said before measuring. “The middle miss” is the middle one of five, so that one lucky or unlucky guess does not decide. Nobody’s guesses are held against somebody else’s.';

/** How the last five came out beside the first five, of all the logs of one person. */
export function guessesWords(
  closer: Result<GuessesCloser, { readonly have: number; readonly need: number }>,
  name: string,
  { unit, mark }: { readonly unit: Unit; readonly mark: MarkId },
): readonly string[] {
  if (!closer.ok) {
    const { have, need } = closer.error;
    return [
      `${name}: ${have === 1 ? '1 guess was' : `${have} guesses were`} measured so far. From ${need} on, the last five can be held against the first five.`,
    ];
  }
  const { answered, firstShare, lastShare, firstMissExact, lastMissExact, forChild } = closer.value;
  const missOf = (exact: number | null, share: number): string => {
    const percent = `${decimalText(share * 100, 0)} %`;
    if (exact === null) return `${percent} of what was read`;
    const amount = amountWords(toldAmount(amountIn(exact, [mark], unit)));
    return `${amount}, ${percent} of what was read`;
  };
  return [
    `${name}: ${answered} guesses were measured.`,
    `First five: the middle miss was ${missOf(firstMissExact, firstShare)}.`,
    `Last five: the middle miss was ${missOf(lastMissExact, lastShare)}.`,
    forChild === 'closer'
      ? 'The guesses are getting closer. Ask which helper length was thought of: that is what to keep.'
      : 'They are not closer yet. A helper length helps more than guessing often: something near that is as long.',
  ];
}

export const nobodyNamed = 'Nobody named';
