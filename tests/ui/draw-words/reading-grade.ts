/**
 * The reading grade of a text, by Flesch and Kincaid: 0.39 words a sentence + 11.8 syllables a
 * word - 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975). Syllables are counted by groups of
 * vowel letters, a silent e at the end left out.
 */
export const readingGrade = (text: string): number => {
  const words = wordsOf(text);
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0);
  return (
    0.39 * (words.length / sentencesOf(text).length) + 11.8 * (syllables / words.length) - 15.59
  );
};

export const sentencesOf = (text: string): readonly string[] =>
  text
    .split(/[.?!]+/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => sentence !== '');

export const wordsOf = (text: string): readonly string[] =>
  text.toLowerCase().match(/[a-z]+(?:['-][a-z]+)*/g) ?? [];

const syllablesIn = (word: string): number => {
  // Silent: the last e of "line", "lines" and "climbed". Heard: that of "bottle", "inches", "started".
  const heard = word
    .split('-')
    .map((part) =>
      part.replace(
        /(?<=[^laeiouy])e$|(?<=[^laeiouyhsxzcg])es$|(?<=[aeiouy][^aeiou]*[^dtaeiou])ed$/,
        '',
      ),
    );
  const groups = heard.map((part) => part.match(/[aeiouy]+/g)?.length ?? 0);
  return groups.reduce((sum, count) => sum + Math.max(1, count), 0);
};
