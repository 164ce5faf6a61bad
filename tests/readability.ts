/**
 * How hard a text is to read, by Flesch and Kincaid (Kincaid, Fishburne, Rogers and Chissom 1975;
 * Flesch 1948): 0.39 words a sentence + 11.8 syllables a word - 15.59. A help for tests only.
 * Syllables are counted by groups of vowel letters, with the common ways English departs from
 * that; readability.test.ts holds the counts against counts by hand.
 */
export interface TextCounts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

export const fleschKincaidGrade = ({ words, sentences, syllables }: TextCounts): number =>
  0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;

export const fleschEase = ({ words, sentences, syllables }: TextCounts): number =>
  206.835 - 1.015 * (words / sentences) - 84.6 * (syllables / words);

/** `taught` words are known to the reader by heart: they count as one syllable. */
export const countsOf = (text: string, taught: ReadonlySet<string> = noWords): TextCounts => {
  const words = wordsOf(text);
  const syllables = words.map((word) => (taught.has(word) ? 1 : syllablesIn(word)));
  return {
    words: words.length,
    sentences: sentencesOf(text).length,
    syllables: syllables.reduce((sum, count) => sum + count, 0),
  };
};

export const gradeOf = (text: string, taught?: ReadonlySet<string>): number =>
  fleschKincaidGrade(countsOf(text, taught));

/** A point inside a number (2.5) ends no sentence. */
export const sentencesOf = (text: string): readonly string[] =>
  text
    .split(/[.?!:;]+(?=[\s”"')]|$)/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => /[\p{L}\d]/u.test(sentence));

/** Words in small letters: `grown-up`, `can't`, `day's`; a number, a fraction or a time is one. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replaceAll('’', "'")
    .match(/\d+(?:[.,:/]\d+)*|\p{L}+(?:['-]\p{L}+)*/gu) ?? [];

export const syllablesIn = (word: string): number => {
  if (/^\d/.test(word)) return syllablesInNumber(word);
  return word
    .toLowerCase()
    .split('-')
    .reduce((sum, part) => sum + syllablesInPart(part), 0);
};

const noWords: ReadonlySet<string> = new Set();

const syllablesInPart = (written: string): number => {
  const word = written.replace(/'(s|d|ll|re|ve|m|t)?$/, (_all, end: string) =>
    end === 't' ? 't' : '',
  );
  const known = knownCounts[word];
  if (known !== undefined) return known;
  const heard = word
    // Silent: the last e of "line", "lines", "climbed". Heard: "middle", "inches", "started".
    .replace(/(?<=[^aeiouy][^aeiouylr]|[aeiouy][^aeiouy])e$/, '')
    .replace(/(?<=[aeiouy][^aeiouyhsxzcg]|[aeiouy]th)es$/, 's')
    .replace(/(?<=[^dt])ed$/, 'd')
    // And the e of "measurement", "evenly", "useful".
    .replace(/(?<=[^aeiouyl])e(?=(?:ments?|ly|less|ful|ness)$)/, '');
  const groups = heard.match(/[aeiouy]+/g)?.length ?? 0;
  return Math.max(1, groups + (heard.match(heardApart)?.length ?? 0));
};

/** Vowels that stand side by side and are both heard: "diary", "science", "being", "usual". */
const heardApart = /(?<![cglst])ia(?!ge)|(?<=sc|qu|d)ie(?=n|t)|[aeiouy](?=ing)|(?<!q)ua(?=l|t)/g;

/** Words that follow no rule, each with its syllables. */
const knownCounts: Readonly<Record<string, number>> = {
  every: 2,
  evening: 2,
  everything: 3,
  area: 3,
  idea: 3,
  ideas: 3,
  lion: 2,
  something: 2,
  somebody: 3,
  someone: 2,
  sometimes: 2,
  requires: 2,
  create: 2,
  poem: 2,
  ruin: 2,
  people: 2,
  whole: 1,
  wholes: 1,
  rule: 1,
  rules: 1,
  scale: 1,
  scales: 1,
  hundred: 2,
  being: 2,
};

/** As it is said: 12 is one word of one syllable, 1/2 is "one half", 9:30 "nine thirty". */
const syllablesInNumber = (written: string): number => {
  if (written === '1/2') return 2;
  const parts = written.split(/([.,:/])/);
  return parts.reduce((sum, part) => {
    if (/[.,]/.test(part)) return sum + 1;
    return /\d/.test(part) ? sum + syllablesInWhole(Number(part)) : sum;
  }, 0);
};

const syllablesInWhole = (value: number): number => {
  if (value >= 1000)
    return syllablesInWhole(Math.floor(value / 100)) + syllablesInWhole(value % 100);
  if (value >= 100) {
    const rest = value % 100;
    return (
      syllablesInWhole(Math.floor(value / 100)) + 2 + (rest === 0 ? 0 : syllablesInWhole(rest))
    );
  }
  if (value < 20) return smallNumbers[value] as number;
  const tens = Math.floor(value / 10) === 7 ? 3 : 2;
  return tens + (value % 10 === 0 ? 0 : (smallNumbers[value % 10] as number));
};

/** Zero to nineteen. */
const smallNumbers = [2, 1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 3, 1, 2, 2, 2, 2, 3, 2, 2];
