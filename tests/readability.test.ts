import { describe, expect, it } from 'vitest';
import {
  countsOf,
  fleschEase,
  fleschKincaidGrade,
  gradeOf,
  sentencesOf,
  syllablesIn,
  wordsOf,
} from './readability';
import reference from './reference/readability.json';

describe('the reading grade', () => {
  // Kincaid et al. 1975 and Flesch 1948; figures reproduced by npm flesch-kincaid 2.0.1.
  it.each(reference.numeric)('of $words words in $sentences sentences is $fk_grade', (counts) => {
    expect(fleschKincaidGrade(counts)).toBeCloseTo(counts.fk_grade, 10);
    expect(fleschEase(counts)).toBeCloseTo(counts.ease, 10);
  });

  // Counts by hand, confirmed with the CMU Pronouncing Dictionary.
  it.each(reference.texts)('of "$text" is that of a count by hand', (each) => {
    expect(countsOf(each.text)).toEqual({
      words: each.words,
      sentences: each.sentences,
      syllables: each.syllables_by_hand,
    });
    // The reference gives four places.
    expect(gradeOf(each.text)).toBeCloseTo(each.fk_grade, 3);
  });

  it('counts taught words as one syllable', () => {
    expect(countsOf('Read the centimetres.', new Set(['centimetres'])).syllables).toBe(3);
  });
});

describe('syllables', () => {
  // Counted by hand, word by word, as the CMU Pronouncing Dictionary divides them (from memory).
  it.each([
    [1, 'a bean beans soil line lines climbed moved used eye eyes leaves days goes does whole'],
    [1, "can't day's you'll don't graph graphs half shape shapes through sheet cube rule scale"],
    [1, 'stays grew weighs looks jumps names sides times tape clothes height'],
    [2, 'inches mark-up places pages boxes touches started planted table tables little middle'],
    [2, 'metre metres centre bottle being going doing measure measured ruler water number shadow'],
    [2, 'today tower people colour quiet science lion something sometimes grown-up inside outside'],
    [2, 'above below between paper picture pictures useful quarter someone evening every sunny'],
    [3, 'another together somebody idea area tomorrow usual measurement everything'],
    [3, 'Australian reptilian platypus yesterday diary'],
    [4, 'centimetre centimetres estimation uncertainty'],
    [5, 'investigation'],
  ] as const)('%d are in each of: %s', (count, words) => {
    for (const word of words.split(' ')) expect([word, syllablesIn(word)]).toEqual([word, count]);
  });

  it.each([
    ['0', 2],
    ['7', 2],
    ['12', 1],
    ['21', 3],
    ['70', 3],
    ['100', 3],
    ['2026', 5],
    ['1/2', 2],
    ['2.5', 3],
    ['9:30', 3],
  ])('of the number %s are as it is said: %d', (number, count) => {
    expect(syllablesIn(number)).toBe(count);
  });
});

describe('words and sentences', () => {
  it('are told apart also around numbers and quotation marks', () => {
    expect(sentencesOf('It was 2.5 cm. “Look!” Is it 4 1/2 inches?')).toEqual([
      ...['It was 2.5 cm', '“Look', '” Is it 4 1/2 inches'],
    ]);
    expect(wordsOf('It’s Ana’s grown-up: 4 1/2, 9:30.')).toEqual([
      ...["it's", "ana's", 'grown-up', '4', '1/2', '9:30'],
    ]);
  });
});
