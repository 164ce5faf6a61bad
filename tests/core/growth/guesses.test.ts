import { describe, expect, it } from 'vitest';
import { foldEntries } from '#core/journal';
import { estimatesBy, type EstimateOutcome } from '#core/series';
import { guessesForChild, guessesGettingCloser } from '#core/growth';
import { bean, begun, child, read, written } from '../journal/entries';
import { addDays, civilDay } from '#core/calendar';
import { valueOf } from './near';

/** One guess and one reading a day, in centimetres; null for a day that was not measured. */
const guesses = (
  ...pairs: readonly (readonly [guess: number, reading: number | null])[]
): readonly EstimateOutcome[] => {
  const entries = pairs.flatMap(([guess, reading], index) => {
    const line = { specimen: bean, day: addDays(civilDay('2026-03-02'), index) };
    const guessed = written(100 + 2 * index, {
      ...{ kind: 'estimate-made', ...line, measured: read(guess) },
    });
    if (reading === null) return [guessed];
    const took = written(101 + 2 * index, {
      ...{ kind: 'reading-taken', ...line, measured: read(reading) },
    });
    return [guessed, took];
  });
  return estimatesBy(foldEntries([...begun, ...entries]), child);
};

/** Misses of 3, 1, 8, 4 and 2 cm of 20 cm: the middle one is 3. */
const early = [
  [23, 20],
  [19, 20],
  [28, 20],
  [16, 20],
  [18, 20],
] as const;
/** Misses of 1, 0, 2, 6 and 1 cm of 20 cm: the middle one is 1. */
const late = [
  [21, 20],
  [20, 20],
  [18, 20],
  [26, 20],
  [19, 20],
] as const;

describe('guesses getting closer', () => {
  it('holds the middle miss of the last five against that of the first five', () => {
    expect(valueOf(guessesGettingCloser(guesses(...early, ...late)))).toEqual({
      answered: 10,
      firstShare: 3 / 20,
      lastShare: 1 / 20,
      firstMissExact: 30_000_000,
      lastMissExact: 10_000_000,
      forChild: 'closer',
    });
  });

  it('tells a child no number, and never that the guesses got worse', () => {
    expect(guessesForChild(guesses(...early, ...late))).toBe('closer');
    expect(guessesForChild(guesses(...late, ...early))).toBe('not-yet');
    expect(guessesForChild(guesses(...late, ...late))).toBe('not-yet');
    expect(guessesForChild(guesses(...early))).toBe('not-yet');
  });

  it('says how many guesses are still missing', () => {
    const nine = guesses(...early, ...late.slice(1));
    expect(guessesGettingCloser(nine)).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 9, need: 10 },
    });
  });

  it('passes over guesses that were never measured, and those in the middle', () => {
    const between = [
      [90, 20],
      [5, null],
    ] as const;
    const closer = valueOf(guessesGettingCloser(guesses(...early, ...between, ...late)));
    expect([closer.answered, closer.firstMissExact, closer.lastMissExact]).toEqual([
      11, 30_000_000, 10_000_000,
    ]);
  });

  it('does not punish guesses for the plant having grown', () => {
    // 2 cm off at 8 cm is a quarter, 3 cm off at 30 cm is a tenth.
    const small = Array.from({ length: 5 }, () => [10, 8] as const);
    const tall = Array.from({ length: 5 }, () => [33, 30] as const);
    const closer = valueOf(guessesGettingCloser(guesses(...small, ...tall)));
    expect(closer.forChild).toBe('closer');
    expect([closer.firstShare, closer.lastShare]).toEqual([0.25, 0.1]);
  });

  it('judges a miss below 5 units by units: 1 cm of 1 cm is no whole miss', () => {
    const tiny = Array.from({ length: 5 }, () => [2, 1] as const);
    const tall = Array.from({ length: 5 }, () => [15, 10] as const);
    expect(guessesForChild(guesses(...tiny, ...tall))).toBe('not-yet');
  });
});
