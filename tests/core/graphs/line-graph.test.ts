import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawRight, lookAtLineGraph, rightGraphOf, type TimeTable } from '#core/graphs';
import type { MarkId, Unit } from '#core/measure';
import { goldenLogs, goldenRight, timesTable } from './golden-logs';
import { lineMistakes, type LineRight, type PlantMistake } from './line-graph-mistakes';

const lineOf = (table: TimeTable): LineRight => {
  const right = rightGraphOf('line-graph', table, 'grade-3');
  if (!right.ok) throw new Error(right.error.kind);
  return { ...right.value, table };
};

const units: readonly (readonly [Unit, MarkId])[] = [
  ['cm', '1 cm'],
  ['in', '1 in'],
  ['in', '1/2 in'],
];

/** Days of one plant: first none, then at least three readings, most days one. */
const someDays = fc
  .record({
    before: fc.array(fc.constantFrom('not-up-yet', null), { maxLength: 3 }),
    days: fc.array(
      fc.record({
        rise: fc.integer({ min: 0, max: 2 }),
        fall: fc.integer({ min: 0, max: 1 }),
        not: fc.constantFrom('number', 'number', 'number', 'missed', null),
      }),
      { minLength: 4, maxLength: 11 },
    ),
  })
  .map(({ before, days }) => {
    let height = 0;
    return [
      ...before,
      ...days.map(({ rise, fall, not }, index) => {
        height = Math.max(1, height + rise - fall);
        return not === 'number' || index < 3 ? String(height) : not;
      }),
    ];
  });

const someTable: fc.Arbitrary<TimeTable> = fc
  .record({ unit: fc.constantFrom(...units), first: someDays, second: fc.option(someDays) })
  .map(({ unit, first, second }) =>
    timesTable('height', unit, '2026-03-09', {
      'Window bean': first,
      ...(second ? { 'Shelf bean': second } : {}),
    }),
  );

const settings = { seed: 20261125, numRuns: 150, maxSkipsPerRun: 2000 } as const;

/** Tables that between them can have every mistake. */
const examples: readonly LineRight[] = [
  lineOf(
    timesTable('height', ['cm', '1 cm'], '2026-03-09', {
      bean: ['not-up-yet', '2', '4', 'missed', '7', '9', null, '8', '12'],
    }),
  ),
  lineOf(
    timesTable('height', ['in', '1 in'], '2026-03-09', {
      'Window bean': ['1', '1', '2', 'missed', '4', null, '6'],
      'Shelf bean': ['2', '3', '3', '4', '5', '5', '7'],
    }),
  ),
];

const firstPlanted = (plant: PlantMistake) => {
  for (const example of examples) {
    const planted = plant(example, drawRight(example), 2);
    if (planted) return { right: planted.right ?? example, drawing: planted.drawing };
  }
  throw new Error('No example can have this mistake');
};

describe('a look at a line graph', () => {
  it.each(goldenLogs.filter(({ graph }) => graph === 'line-graph'))(
    'finds nothing to mend in a right drawing of $name',
    ({ name }) => {
      const right = goldenRight(name);
      const { mistakes, right: parts } = lookAtLineGraph(right, drawRight(right));
      expect(mistakes).toEqual([]);
      expect(parts).toEqual(expect.arrayContaining(['every-value', 'joined-in-order']));
    },
  );

  it('finds nothing to mend in a right drawing of any table', () => {
    fc.assert(
      fc.property(someTable, (table) => {
        const right = lineOf(table);
        expect(lookAtLineGraph(right, drawRight(right)).mistakes).toEqual([]);
      }),
      { seed: settings.seed, numRuns: 500 },
    );
  });

  describe.each(Object.entries(lineMistakes))('%s', (title, plant) => {
    const id = title.split(':')[0];

    it(`${id} is found in an example, and it only`, () => {
      const { right, drawing } = firstPlanted(plant);
      expect(lookAtLineGraph(right, drawing).mistakes.map((each) => each.id)).toEqual([id]);
    });

    it(`${id} is found in a drawing of any table, and it only`, () => {
      fc.assert(
        fc.property(someTable, fc.nat(), (table, pick) => {
          const right = lineOf(table);
          const planted = plant(right, drawRight(right), pick);
          fc.pre(planted !== null);
          const look = lookAtLineGraph(planted.right ?? right, planted.drawing);
          expect(look.mistakes.map((each) => each.id)).toEqual([id]);
        }),
        settings,
      );
    });
  });
});
