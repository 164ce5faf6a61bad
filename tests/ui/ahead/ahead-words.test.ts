import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import {
  becauseBeginnings,
  comparedWords,
  lengthWords,
  notYetWords,
} from '../../../src/lib/ui/ahead/ahead-words';
import { read } from '../../core/journal/entries';
import { openedGuess, today } from './ahead-said';

describe('what is still needed', () => {
  it('counts the days that are missing', () => {
    const few = (have: number) => notYetWords({ kind: 'too-few', have, need: 5 }, today, today);
    expect(few(3)).toBe('Measure on 2 more days first.');
    expect(few(4)).toBe('Measure on 1 more day first.');
  });

  // 7 days over are needed: Tuesday 10 March is 5 days after the first, so Thursday 12 is the 7th.
  it('names the first day that would be enough, or says to measure when that has come', () => {
    const short = (now: string) =>
      notYetWords({ kind: 'too-short', days: 5, need: 7 }, civilDay('2026-03-10'), civilDay(now));
    expect(short('2026-03-11')).toBe('Measure it on Thursday 12 March. Then you can guess.');
    expect(short('2026-03-12')).toBe('Measure it first. Then you can guess.');
  });
});

describe('a guess held against its day', () => {
  // Within 1 unit or a tenth is very close, within a quarter is close (common practice, no source).
  it.each([
    [14, 13, 'You guessed 14 cm. It was 13 cm. Very close. It was less tall than you thought.'],
    [13, 13, 'You guessed 13 cm. It was 13 cm. Just the same!'],
    [10, 13, 'You guessed 10 cm. It was 13 cm. Close. It was taller than you thought.'],
    [
      5,
      13,
      'You guessed 5 cm. It was 13 cm. Not so close this time. It was taller than you thought.',
    ],
    [14, null, 'You guessed 14 cm. We did not measure that day.'],
  ])('of %s and %s is told in words', (guess, was, words) => {
    expect(comparedWords(openedGuess(guess, was), 'plant-height')).toBe(words);
  });

  it('says inches in full, for "in" is another word', () => {
    expect(lengthWords(read(5, 'in', '1 in'))).toBe('5 inches');
    expect(lengthWords(read(1, 'in', '1 in'))).toBe('1 inch');
    expect(lengthWords(read(0.5, 'in', '1/2 in'))).toBe('1/2 inches');
  });
});

it('the ways to begin a because have an easy way out', () => {
  expect(becauseBeginnings('length').at(-1)).toBe('it is just my guess');
});
