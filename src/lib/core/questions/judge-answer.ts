import { answerWayOf } from './answer-way';
import { nearAnswer, isTheAnswer } from './near-answer';
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
 * Holds a child's answer against a question. A length is right in any unit, days in any order, and
 * anything inside a share with some left over. Typical slips are named, with their unit or without;
 * so are the right number without its unit or in another one, one day of two, and days too many.
 * Answers in words and guesses beyond the data need a reason: a grown-up listens to them. Only an
 * idea that the question itself offers to choose from is judged.
 * @example
 * judgeAnswer({ level: 'read', answer: { kind: 'count', count: 3, of: 'days' }, slips: [{ told: { kind: 'count', count: 4, of: 'days' }, shows: 'off-by-one' }] }, { kind: 'count', count: 4, of: 'days' }) // => { kind: 'slip', slip: 'off-by-one' }
 * judgeAnswer({ level: 'read', answer: { kind: 'length', exact: 50000000, unit: 'cm', mark: '1 cm' }, slips: [] }, { kind: 'count', count: 5, of: '' }) // => { kind: 'slip', slip: 'forgot-unit' }
 * judgeAnswer({ level: 'behind', answer: { kind: 'idea', idea: 'soil-line' }, slips: [] }, { kind: 'word', word: 'soil' }) // => { kind: 'for-a-grown-up' }
 */
export const judgeAnswer = (
  question: Pick<AskedQuestion, 'level' | 'answer' | 'slips'> &
    Partial<Pick<AskedQuestion, 'blanks'>>,
  given: Told,
): Judged => {
  const { answer, slips } = question;
  const { isHeard } = answerWayOf(question);
  if (!isHeard && isTheAnswer(answer, given)) return { kind: 'right' };
  const slip =
    slips.find(({ told }) => sameTold(told, given))?.shows ??
    nearAnswer(question, given) ??
    slips.find(({ told }) => soundsLike(told, given))?.shows;
  if (slip !== undefined) return { kind: 'slip', slip };
  const isInWords = answer.kind === 'idea' && given.kind !== 'idea';
  return { kind: isHeard || isInWords ? 'for-a-grown-up' : 'other' };
};

/** The same number, where one of the two was said without its unit. */
const soundsLike = (one: Told, other: Told): boolean =>
  (one.kind === 'count' || other.kind === 'count') &&
  numberSaid(one) !== null &&
  numberSaid(one) === numberSaid(other);
