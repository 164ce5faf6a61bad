import type { AskedQuestion, Told } from './question';
import { inCommon } from './things-in';
import { numberSaid, sameTold } from './told';

/**
 * Whether one question, read aloud, tells the answer of another: it names that answer, and it
 * names all that the other asks about ("on which day was it 7 cm?" and "how tall on that day?").
 * @example
 * isTelling({ blanks: { key: { kind: 'count', count: 2, of: 'days' } }, answer: { kind: 'word', word: 'sun' } }, { blanks: {}, answer: { kind: 'count', count: 2, of: 'days' } }) // => true
 */
export const isTelling = (
  teller: Pick<AskedQuestion, 'blanks' | 'answer'>,
  asked: Pick<AskedQuestion, 'blanks' | 'answer'>,
): boolean => {
  const named = Object.entries(teller.blanks).flatMap(([name, told]) =>
    unheard.has(name) ? [] : [told],
  );
  const known = [...named, teller.answer];
  const number = numberSaid(asked.answer);
  const isNamed = named.some(
    (told) =>
      sameTold(told, asked.answer) ||
      isDayOf(told, asked.answer) ||
      (number !== null && told.kind === 'count' && told.count === number),
  );
  const about = Object.entries(asked.blanks).filter(([name]) => !inCommon.has(name));
  return isNamed && about.every(([, told]) => known.some((each) => sameTold(each, told)));
};

/** Blanks that no child hears. */
const unheard: ReadonlySet<string> = new Set(['practice', 'stage', 'seed']);

const isDayOf = (told: Told, answer: Told): boolean =>
  told.kind === 'day' && answer.kind === 'days' && answer.days.includes(told.day);
