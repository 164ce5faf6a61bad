import type { AskedQuestion, Told } from './question';
import type { SlipId } from './slip-id';
import { numberSaid, sameTold } from './told';

/** What an answer turned out to be. None of them is a mark. */
export type Judged =
  | { readonly kind: 'right' }
  | { readonly kind: 'slip'; readonly slip: SlipId }
  | { readonly kind: 'other' }
  | { readonly kind: 'for-a-grown-up' };

/**
 * Holds a child's answer against a question. A typical slip is named. Anything inside a span is
 * right when reading between the data; answers in words, and guesses beyond the data, which need a
 * reason, are for a grown-up to listen to.
 * @example
 * judgeAnswer({ level: 'read', answer: { kind: 'count', count: 3, of: 'days' }, slips: [{ told: { kind: 'count', count: 4, of: 'days' }, shows: 'off-by-one' }] }, { kind: 'count', count: 4, of: 'days' }) // => { kind: 'slip', slip: 'off-by-one' }
 * judgeAnswer({ level: 'behind', answer: { kind: 'idea', idea: 'soil-line' }, slips: [] }, { kind: 'word', word: 'soil' }) // => { kind: 'for-a-grown-up' }
 */
export const judgeAnswer = (
  { level, answer, slips }: Pick<AskedQuestion, 'level' | 'answer' | 'slips'>,
  given: Told,
): Judged => {
  if (sameTold(answer, given) && answer.kind !== 'idea') return { kind: 'right' };
  const slip = slips.find(({ told }) => sameTold(told, given));
  if (slip) return { kind: 'slip', slip: slip.shows };
  const needsListening = answer.kind === 'idea' || level === 'beyond' || level === 'behind';
  if (needsListening) return { kind: 'for-a-grown-up' };
  if (answer.kind === 'between' && isWithin(given, answer)) return { kind: 'right' };
  return { kind: 'other' };
};

const isWithin = (given: Told, { low, high }: Extract<Told, { kind: 'between' }>): boolean => {
  if (given.kind === 'between') return sameTold(given.low, low) && sameTold(given.high, high);
  if (given.kind !== low.kind) return false;
  const [at, from, to] = [sizeOf(given), sizeOf(low), sizeOf(high)];
  return at !== null && from !== null && to !== null && from <= at && at <= to;
};

const sizeOf = (told: Told): number | null =>
  told.kind === 'length' ? told.exact : numberSaid(told);
