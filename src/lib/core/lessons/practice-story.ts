import { oneOf, seededRandom, type Random } from '#core/base';
import type { GraphTable, TimeTable, ValueTable } from '#core/graphs';
import { exactPerUnit, formatExactNumber, type MarkId, type Unit } from '#core/measure';
import { growing, melting, ribbons, someOf, towers, type PracticeRow } from './practice-rows';
import type { FeatureId } from './teaching-of';

/** What a worked example is about: never what a family measures here. The face has the words. */
export const practiceStoryIds = [
  ...(['toys', 'towers', 'snowman', 'two-snowmen', 'tower-by-day'] as const),
  ...(['ribbons', 'pencils', 'cut-ribbons'] as const),
] as const;
export type PracticeStoryId = (typeof practiceStoryIds)[number];

export interface PracticeStory {
  readonly story: PracticeStoryId;
  readonly table: GraphTable;
}

/** What an example is told in, and how many things a picture of it stands for. */
export interface PracticeTold {
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly keyValue: number;
}

/**
 * Made-up numbers with just what a feature needs to be shown: a day that was missed, repeats,
 * halves, two lines, a key of more than 1. They fit the paper of every stage. The same seed makes
 * the same numbers. Not part of the public door.
 */
export const practiceStory = (
  feature: FeatureId,
  form: GraphTable['form'],
  told: PracticeTold,
  seed: number,
): PracticeStory => {
  const random = seededRandom(seed);
  if (form === 'counts') return toys(random, feature === 'key-with-number' ? told.keyValue : 1);
  if (form === 'measures')
    return feature === 'parts-of-a-unit' ? cut(random, told) : pencils(random, told);
  if (form === 'times') return snowmen(random, told, feature);
  switch (feature) {
    case 'missed-day-keeps-place':
      return { story: 'snowman', table: valuesOf(told, melting(random, { isMissed: true })) };
    case 'jump-is-the-difference':
      return { story: 'tower-by-day', table: valuesOf(told, growing(random)) };
    case 'smaller-unit-more-units':
    case 'guess-then-measure':
      return { story: 'ribbons', table: valuesOf(told, ribbons(random, told), 'length') };
    default:
      return { story: 'towers', table: valuesOf(told, towers(random)) };
  }
};

/** With a key of more than 1, more than a row of pictures at ease would hold one by one. */
const toys = (random: Random, keyValue: number): PracticeStory => {
  const ones = keyValue === 1 ? [2, 3, 4, 5, 6, 7] : keyValue === 2 ? [3, 4, 6, 7] : [2, 3, 4, 5];
  const few = someOf(2, ones, random);
  const numbers = [
    ...few,
    keyValue === 1
      ? oneOf(
          ones.filter((each) => !few.includes(each)),
          random,
        )
      : 8,
  ];
  return {
    story: 'toys',
    table: {
      ...{ form: 'counts', counted: 'toys' },
      rows: ['cats', 'dogs', 'hens'].map((label, index) => ({
        ...{ label, count: numbers[index]! * keyValue },
      })),
    },
  };
};

const valuesOf = (
  { unit, mark }: PracticeTold,
  rows: readonly PracticeRow[],
  measured = 'height',
): ValueTable => ({
  ...{ form: 'values', measured, unit, mark },
  rows: rows.map(({ label, number }) => ({
    ...{ label, day: null, unit },
    ...valueOf(number, unit),
  })),
});

const valueOf = (number: number | null, unit: Unit) =>
  number === null
    ? { exact: null, text: '', state: 'missed' as const }
    : { exact: number * exactPerUnit(unit), text: `${number}`, state: 'number' as const };

const snowmen = (
  random: Random,
  { unit, mark }: PracticeTold,
  feature: FeatureId,
): PracticeStory => {
  const isTwo = feature === 'whose-line';
  const first = melting(random, { isMissed: feature === 'gaps-are-dashed' });
  const start = first[0]!.number!;
  const second = [0, 0, 1, 2, 2].map((less) => start - less);
  const logs = isTwo
    ? [first.map(({ number }) => number), second]
    : [first.map(({ number }) => number)];
  const table: TimeTable = {
    ...{ form: 'times', measured: 'height', unit, mark, specimens: [] },
    seriesNames: isTwo ? ['sun snowman', 'shade snowman'] : ['snowman'],
    places: first.map(({ label }) => label),
    rows: logs.flatMap((log, series) =>
      log.map((number, place) => ({ place, series, unit, ...valueOf(number, unit) })),
    ),
  };
  return { story: isTwo ? 'two-snowmen' : 'snowman', table };
};

const pencils = (random: Random, { unit, mark }: PracticeTold): PracticeStory => {
  const middle = oneOf([4, 5, 6, 7], random);
  const around = [0, 1, 0, -1, 0, 1, -1, oneOf([2, -2, 1], random)];
  return {
    story: 'pencils',
    table: lengthsOf(
      'pencil',
      around.map((more) => (middle + more) * exactPerUnit(unit)),
      unit,
      mark,
    ),
  };
};

/** Lengths with halves, or quarters, as fine as the family reads. */
const cut = (random: Random, { unit, mark }: PracticeTold): PracticeStory => {
  const part = exactPerUnit(unit) / (mark === '1/4 in' ? 4 : 2);
  const whole = oneOf([3, 4, 5], random) * exactPerUnit(unit);
  const parts = [0, 1, 2, 1, 0, 3, 2, 1, oneOf([0, 2], random)];
  return {
    story: 'cut-ribbons',
    table: lengthsOf(
      'ribbon',
      parts.map((more) => whole + more * part),
      unit,
      mark,
    ),
  };
};

const lengthsOf = (
  name: string,
  lengths: readonly number[],
  unit: Unit,
  mark: MarkId,
): GraphTable => ({
  ...{ form: 'measures', measured: 'length', unit, mark, unmeasured: [] },
  seriesNames: [`${name}s`],
  values: lengths.map((exact, index) => ({
    ...{ label: `${name} ${index + 1}`, series: 0, exact },
    text: formatExactNumber(exact, unit, mark),
  })),
});
