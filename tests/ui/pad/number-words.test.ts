import { describe, expect, test } from 'vitest';
import type { MarkId, Unit } from '#core/measure';
import { readingInWords, wholeNumberInWords } from '../../../src/lib/ui/pad/number-words';

const inch = 25_400_000;
const centimetre = 10_000_000;

describe('whole numbers in words', () => {
  // English as it is spoken (the British "and" after hundred): common practice, no source.
  test.each([
    [0, 'zero'],
    [1, 'one'],
    [10, 'ten'],
    [11, 'eleven'],
    [12, 'twelve'],
    [13, 'thirteen'],
    [15, 'fifteen'],
    [18, 'eighteen'],
    [19, 'nineteen'],
    [20, 'twenty'],
    [21, 'twenty-one'],
    [40, 'forty'],
    [58, 'fifty-eight'],
    [90, 'ninety'],
    [99, 'ninety-nine'],
    [100, 'one hundred'],
    [101, 'one hundred and one'],
    [119, 'one hundred and nineteen'],
    [199, 'one hundred and ninety-nine'],
    [200, '200'],
  ])('%d is said "%s"', (number, words) => {
    expect(wholeNumberInWords(number)).toBe(words);
  });

  test('no two numbers from 0 to 199 sound the same', () => {
    const all = Array.from({ length: 200 }, (_, number) => wholeNumberInWords(number));
    expect(new Set(all).size).toBe(200);
    for (const words of all) expect(words).toMatch(/^[a-z]+([ -][a-z]+)*$/);
  });

  test('what is no whole number stays in figures', () => {
    expect(wholeNumberInWords(2.5)).toBe('2.5');
    expect(wholeNumberInWords(-3)).toBe('-3');
  });
});

describe('readings in words', () => {
  test.each<[number, Unit, MarkId, string]>([
    [0, 'in', '1 in', 'zero inches'],
    [inch, 'in', '1 in', 'one inch'],
    [2 * inch, 'in', '1/4 in', 'two inches'],
    [4.5 * inch, 'in', '1/2 in', 'four and a half inches'],
    [1.25 * inch, 'in', '1/4 in', 'one and a quarter inches'],
    [10.75 * inch, 'in', '1/4 in', 'ten and three quarters inches'],
    [3.625 * inch, 'in', '1/8 in', 'three and five eighths inches'],
    [3.125 * inch, 'in', '1/8 in', 'three and one eighth inches'],
    [2.1875 * inch, 'in', '1/16 in', 'two and three sixteenths inches'],
    [0.5 * inch, 'in', '1/2 in', 'half an inch'],
    [0.25 * inch, 'in', '1/4 in', 'a quarter of an inch'],
    [0.75 * inch, 'in', '1/4 in', 'three quarters of an inch'],
    [0.125 * inch, 'in', '1/8 in', 'one eighth of an inch'],
    [Math.round(0.05 * inch), 'in', '0.01 in', 'zero point zero five inches'],
    [Math.round(1.37 * inch), 'in', '0.01 in', 'one point three seven inches'],
    [centimetre, 'cm', '1 cm', 'one centimetre'],
    [12 * centimetre, 'cm', '1 mm', 'twelve centimetres'],
    [12.5 * centimetre, 'cm', '1 mm', 'twelve point five centimetres'],
    [12.5 * centimetre, 'cm', '0.5 cm', 'twelve and a half centimetres'],
    [0.5 * centimetre, 'cm', '0.5 cm', 'half a centimetre'],
    [7_000_000, 'mm', '1 mm', 'seven millimetres'],
    [1_250_000_000, 'm', '1 cm', 'one point two five metres'],
    [15 * inch, 'ft', '1 in', 'one foot and three inches'],
    [3 * inch, 'ft', '1 in', 'three inches'],
    [24 * inch, 'ft', '1 in', 'two feet'],
    [7, 'count', '1', 'seven'],
    [1, 'count', '1', 'one'],
  ])('%d exact in %s to %s is said "%4$s"', (exact, unit, mark, words) => {
    expect(readingInWords({ exact, unit, mark })).toBe(words);
  });

  test('a value between two marks is said to the nearest, half going up', () => {
    expect(readingInWords({ exact: 4.25 * inch, unit: 'in', mark: '1/2 in' })).toBe(
      'four and a half inches',
    );
  });
});
