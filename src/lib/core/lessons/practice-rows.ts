import { oneOf, type Random } from '#core/base';
import type { Unit } from '#core/measure';

/** Made-up rows of numbers that worked examples are made of. None of this file is part of the public door. */
export interface PracticeRow {
  readonly label: string;
  /** Null: it was missed. */
  readonly number: number | null;
}

/** Different numbers, in the order they were drawn. */
export const someOf = (
  count: number,
  from: readonly number[],
  random: Random,
): readonly number[] => {
  const left = [...from];
  return Array.from({ length: count }, () => {
    const taken = oneOf(left, random);
    left.splice(left.indexOf(taken), 1);
    return taken;
  });
};

const named = (
  names: readonly string[],
  numbers: readonly (number | null)[],
): readonly PracticeRow[] =>
  names.map((label, index) => ({ label, number: numbers[index] ?? null }));

const byDay = (numbers: readonly (number | null)[]): readonly PracticeRow[] =>
  numbers.map((number, index) => ({ label: `day ${index + 1}`, number }));

export const towers = (random: Random): readonly PracticeRow[] =>
  named(
    ['red tower', 'blue tower', 'green tower', 'gold tower'],
    someOf(4, [2, 3, 4, 5, 6, 8], random),
  );

/** A ribbon of so many inches is about as many whole centimetres: 2 is 5, 4 is 10. */
export const ribbons = (
  random: Random,
  { unit }: { readonly unit: Unit },
): readonly PracticeRow[] =>
  named(
    ['red ribbon', 'blue ribbon', 'green ribbon'],
    someOf(3, unit === 'in' ? [2, 4, 6] : [5, 10, 15], random),
  );

export const growing = (random: Random): readonly PracticeRow[] => {
  let height = oneOf([2, 3], random);
  return byDay(
    [0, 2, 4, 1, 3].map((more) => {
      height += more === 0 ? 0 : more + oneOf([0, 0, 1], random);
      return height;
    }),
  );
};

export const melting = (
  random: Random,
  { isMissed }: { readonly isMissed: boolean },
): readonly PracticeRow[] => {
  let height = oneOf([12, 13, 14], random);
  const missed = isMissed ? oneOf([2, 3], random) : null;
  return byDay(
    [0, 1, 3, 2, 2].map((less, day) => {
      height -= less === 0 ? 0 : less + oneOf([0, 0, 1], random);
      return day === missed ? null : height;
    }),
  );
};
