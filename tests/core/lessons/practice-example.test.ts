import { describe, expect, it } from 'vitest';
import { lookAtDrawing, type GraphKind, type GraphTable } from '#core/graphs';
import { stages, type Stage } from '#core/journal';
import { featureIds, practiceExample, type FeatureId, type PracticeExample } from '#core/lessons';
import type { MarkId, Unit } from '#core/measure';

/** A family's table of each form: only its form, unit and numbers count. */
const tables = (unit: Unit, mark: MarkId): Readonly<Record<GraphKind, GraphTable>> => ({
  'picture-graph': { form: 'counts', counted: 'days', rows: [] },
  'bar-graph': { form: 'values', measured: 'height', unit, mark, rows: [] },
  'line-plot': {
    ...{ form: 'measures', measured: 'growth', unit, mark, seriesNames: ['bean'] },
    ...{ values: [], unmeasured: [] },
  },
  'line-graph': {
    ...{ form: 'times', measured: 'height', unit, mark, seriesNames: ['bean'] },
    ...{ specimens: [], places: [], rows: [] },
  },
});

const graphOf: Readonly<Record<FeatureId, GraphKind>> = {
  ...{ 'one-picture-each': 'picture-graph', 'key-with-number': 'picture-graph' },
  ...{ 'bars-from-zero': 'bar-graph', 'missed-day-keeps-place': 'bar-graph' },
  ...{ 'one-cross-each': 'line-plot', 'parts-of-a-unit': 'line-plot' },
  ...{ 'along-then-up': 'line-graph', 'gaps-are-dashed': 'line-graph' },
  ...{ 'jump-is-the-difference': 'bar-graph', 'smaller-unit-more-units': 'bar-graph' },
  ...{ 'guess-then-measure': 'bar-graph', 'whose-line': 'line-graph' },
};
const units = [
  ...([
    ['cm', '1 cm'],
    ['in', '1 in'],
    ['in', '1/2 in'],
    ['in', '1/4 in'],
    ['mm', '1 mm'],
  ] as const),
] as const;
const seeds = Array.from({ length: 12 }, (_, seed) => seed);

const madeOf = (feature: FeatureId): readonly PracticeExample[] =>
  units.flatMap(([unit, mark]) =>
    stagesOf(feature).flatMap((stage) =>
      keysOf(feature).flatMap((keyValue) =>
        seeds.map((seed) => {
          const graph = graphOf[feature];
          const table = tables(unit, mark)[graph];
          const right = { keyValue, scale: { step: 1 } } as unknown as PracticeExample['right'];
          return practiceExample({ graph, table, stage, right }, seed, feature);
        }),
      ),
    ),
  );
/** Keys above 1 are of grade 3 (3.MD.B.3), halves and quarters too (3.MD.B.4). */
const stagesOf = (feature: FeatureId): readonly Stage[] =>
  feature === 'key-with-number' || feature === 'parts-of-a-unit' ? ['grade-3'] : stages;
const keysOf = (feature: FeatureId): readonly (number | null)[] =>
  feature === 'key-with-number' ? [2, 5, 10] : [null];
const examples = new Map(featureIds.map((feature) => [feature, madeOf(feature)]));
const examplesOf = (feature: FeatureId): readonly PracticeExample[] => examples.get(feature)!;
const numbers = ({ table }: PracticeExample): readonly (number | null)[] => {
  if (table.form === 'counts') return table.rows.map(({ count }) => count);
  return (table.form === 'measures' ? table.values : table.rows).map(({ exact }) => exact);
};

describe('a worked example', () => {
  it.each(featureIds)(
    'for %s can be drawn at every stage and in every unit, rightly',
    (feature) => {
      const examples = examplesOf(feature);
      for (const { drawing, right } of examples) {
        expect(lookAtDrawing(right, drawing).mistakes).toEqual([]);
        expect(drawing.title).not.toMatch(/\bour\b/i);
      }
      expect(
        new Set(examplesOf(feature).map((each) => JSON.stringify(numbers(each)))).size,
      ).toBeGreaterThan(3);
    },
  );

  it('for a key has a key of more than 1 that is really used', () => {
    for (const example of examplesOf('key-with-number')) {
      const key = example.right.keyValue!;
      expect(key).toBeGreaterThan(1);
      for (const count of numbers(example)) expect(count! % key).toBe(0);
    }
  });

  it('for missed days has one day without a number, and numbers on both sides of it', () => {
    for (const feature of ['missed-day-keeps-place', 'gaps-are-dashed'] as const) {
      for (const example of examplesOf(feature)) {
        const missed = numbers(example).flatMap((number, at) => (number === null ? [at] : []));
        expect(missed).toHaveLength(1);
        expect(missed[0]).toBeGreaterThan(0);
        expect(missed[0]).toBeLessThan(numbers(example).length - 1);
      }
    }
  });

  it('for any other feature has no gap, which would be a second thing to teach', () => {
    for (const feature of featureIds) {
      if (feature === 'missed-day-keeps-place' || feature === 'gaps-are-dashed') continue;
      for (const example of examplesOf(feature)) expect(numbers(example)).not.toContain(null);
    }
  });

  it('for crosses has a number that comes twice, and whole numbers only', () => {
    for (const example of examplesOf('one-cross-each')) {
      const all = numbers(example);
      expect(new Set(all).size).toBeLessThan(all.length);
      expect(example.right.scale.labels.join(' ')).not.toContain('/');
    }
  });

  it('for parts of an inch has some, where a family reads inches', () => {
    for (const example of examplesOf('parts-of-a-unit')) {
      if (example.table.form !== 'measures' || example.table.unit !== 'in') continue;
      expect(example.table.values.some(({ text }) => text.includes('/'))).toBe(true);
    }
  });

  it('for jumps grows from every day to the next', () => {
    for (const example of examplesOf('jump-is-the-difference')) {
      const all = numbers(example) as readonly number[];
      all.slice(1).forEach((number, at) => expect(number).toBeGreaterThan(all[at]!));
    }
  });

  it('for a fair test has two lines that are not the same', () => {
    for (const { table } of examplesOf('whose-line')) {
      if (table.form !== 'times') throw new Error('no lines');
      expect(table.seriesNames).toHaveLength(2);
      const [one, other] = [0, 1].map((series) =>
        table.rows.filter((row) => row.series === series).map(({ exact }) => exact),
      );
      expect(one).not.toEqual(other);
    }
  });

  // 1 in = 2.54 cm exactly (international yard and pound agreement of 1959).
  it('for two units has ribbons that are near a whole number on both sides', () => {
    for (const { table } of examplesOf('smaller-unit-more-units')) {
      if (table.form !== 'values') throw new Error('no bars');
      for (const { exact } of table.rows) {
        const [cm, inches] = [exact! / 10_000_000, exact! / 25_400_000];
        expect(Math.abs(cm - Math.round(cm))).toBeLessThan(0.25);
        expect(Math.abs(inches - Math.round(inches))).toBeLessThan(0.25);
      }
    }
  });
});
