import { oneOf, seededRandom, type Random } from '#core/base';
import type { GraphTable } from '#core/graphs';
import { exactPerUnit, type MarkId, type Unit } from '#core/measure';

/** A made-up table: always marked as "practice numbers, not ours" where it is shown. */
export interface PracticeTable {
  readonly isPractice: true;
  readonly seed: number;
  readonly table: GraphTable;
}

/**
 * Made-up practice numbers of a form, the same for the same seed: small ones, that fit every paper
 * and every stage's most kinds. Lengths are told in the unit and mark asked for, as whole units.
 * Counts are of toy animals, which no log of these quantities counts.
 * @example
 * practiceTable('counts', { unit: 'cm', mark: '1 cm' }, 1).table.rows.length // => 3
 * practiceTable('measures', { unit: 'in', mark: '1 in' }, 1).table.values.length // => 8
 */
export const practiceTable = (
  form: GraphTable['form'],
  told: { readonly unit: Unit; readonly mark: MarkId },
  seed: number,
): PracticeTable => {
  const random = seededRandom(seed);
  return { isPractice: true, seed, table: makers[form](random, told) };
};

type Maker = (random: Random, told: { readonly unit: Unit; readonly mark: MarkId }) => GraphTable;

const wholes = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, index) => from + index);

/** Different numbers, in the order they were drawn. */
const someOf = (count: number, from: readonly number[], random: Random): readonly number[] => {
  const left = [...from];
  return Array.from({ length: count }, () => {
    const taken = oneOf(left, random);
    left.splice(left.indexOf(taken), 1);
    return taken;
  });
};

/** A toy stem that grows day by day, faster in the middle. */
const grown = (random: Random): readonly number[] => {
  let height = oneOf([1, 2], random);
  return [0, 1, 2, 1, 1].map((more) => {
    height += more === 0 ? 0 : more + oneOf([0, 1], random);
    return height;
  });
};

const counts: Maker = (random) => {
  const numbers = someOf(3, wholes(2, 7), random);
  const labels = ['cats', 'dogs', 'hens'];
  return {
    ...{ form: 'counts', counted: 'toys' },
    rows: labels.map((label, index) => ({ label, count: numbers[index]! })),
  };
};

const values: Maker = (random, { unit, mark }) => ({
  ...{ form: 'values', measured: 'height', unit, mark },
  rows: grown(random).map((number, index) => ({
    ...{ label: `day ${index + 1}`, day: null, unit, state: 'number' as const },
    ...{ exact: number * exactPerUnit(unit), text: `${number}` },
  })),
});

const measures: Maker = (random, { unit, mark }) => {
  const middle = oneOf(wholes(4, 7), random);
  const around = [0, 0, 0, 1, 1, -1, -1, oneOf([2, -2, 1], random)];
  return {
    ...{
      form: 'measures',
      measured: 'length',
      unit,
      mark,
      seriesNames: ['pencils'],
      unmeasured: [],
    },
    values: around.map((more, index) => ({
      ...{ label: `pencil ${index + 1}`, series: 0 },
      ...{ exact: (middle + more) * exactPerUnit(unit), text: `${middle + more}` },
    })),
  };
};

const times: Maker = (random, { unit, mark }) => ({
  ...{ form: 'times', measured: 'height', unit, mark, seriesNames: ['toy stem'], specimens: [] },
  places: wholes(1, 5).map((day) => `day ${day}`),
  rows: grown(random).map((number, place) => ({
    ...{ place, series: 0, unit, state: 'number' as const },
    ...{ exact: number * exactPerUnit(unit), text: `${number}` },
  })),
});

const makers: Readonly<Record<GraphTable['form'], Maker>> = { counts, values, measures, times };
