import { lettersApart } from './matching-places';

/**
 * Whether a child's words hold one of these words, whatever its capitals, ending or spelling: a
 * longer word may have one letter other than it should, and an ending. Of a phrase every word must
 * be there. Without words asked for, any words will do; no words at all never do.
 * @example
 * saysOneOf('Dayes of sun', ['days']) // => true
 * saysOneOf('hight (cm)', ['cm', 'height']) // => true
 * saysOneOf('My graph', ['weather']) // => false
 */
export const saysOneOf = (text: string, words: readonly string[]): boolean => {
  const said = wordsOf(text);
  if (said.length === 0 || words.length === 0) return said.length > 0;
  return words.some((phrase) => {
    const wanted = wordsOf(phrase);
    if (wanted.length === 0) return text.includes(phrase);
    return wanted.every((word) => said.some((one) => isWord(one, word)));
  });
};

const wordsOf = (text: string): readonly string[] =>
  text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

const isWord = (said: string, wanted: string): boolean => {
  if (said === wanted) return true;
  if (Math.min(said.length, wanted.length) < 3) return false;
  if (said.startsWith(wanted) || wanted.startsWith(said)) return true;
  return wanted.length > 3 && lettersApart(said, wanted) <= 1;
};
