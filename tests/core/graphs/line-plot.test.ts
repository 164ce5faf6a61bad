import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drawRight,
  lookAtLinePlot,
  rightGraphOf,
  type MeasureTable,
  type RightGraph,
} from '#core/graphs';
import { exactPerUnit, formatExactNumber, type MarkId, type Unit } from '#core/measure';
import { goldenLogs, goldenRight, measuresTable } from './golden-logs';
import { plotMistakes, type PlantMistake } from './line-plot-mistakes';

type PlotGraph = RightGraph & { readonly table: MeasureTable };

const plotOf = (table: MeasureTable): PlotGraph => {
  const right = rightGraphOf('line-plot', table, 'grade-3');
  if (!right.ok) throw new Error(right.error.kind);
  return { ...right.value, table };
};

const idsOf = (right: RightGraph, drawing: ReturnType<typeof drawRight>) =>
  lookAtLinePlot(right, drawing).mistakes.map(({ id }) => id);

const marks: readonly (readonly [Unit, MarkId, number])[] = [
  ['in', '1 in', 1],
  ['in', '1/2 in', 2],
  ['in', '1/4 in', 4],
  ['cm', '1 cm', 1],
];

/** Three to twelve measures within ten steps of each other, of one or two series. */
const someTable: fc.Arbitrary<MeasureTable> = fc
  .record({
    mark: fc.constantFrom(...marks),
    from: fc.integer({ min: 0, max: 6 }),
    values: fc.array(
      fc.record({ steps: fc.integer({ min: 0, max: 9 }), series: fc.integer({ min: 0, max: 1 }) }),
      { minLength: 3, maxLength: 12 },
    ),
    hasTwo: fc.boolean(),
    unmeasured: fc.integer({ min: 0, max: 2 }),
  })
  .map(({ mark: [unit, mark, parts], from, values, hasTwo, unmeasured }) => {
    const step = exactPerUnit(unit) / parts;
    const exacts = values.map(({ steps }) => (from + steps) * step);
    return {
      ...{ form: 'measures', measured: 'height', unit, mark },
      seriesNames: hasTwo ? ['window', 'shelf'] : ['ours'],
      values: values.map(({ series }, index) => ({
        label: `reading ${index}`,
        exact: exacts[index]!,
        text: formatExactNumber(exacts[index]!, unit, mark),
        series: hasTwo ? series : 0,
      })),
      unmeasured: Array.from({ length: unmeasured }, (_, index) => ({
        label: `day ${index}`,
        state: 'missed' as const,
      })),
    };
  });

const settings = { seed: 20261125, numRuns: 150, maxSkipsPerRun: 2000 } as const;

/** A table that can have every mistake of one series, and one of two series. */
const examples: readonly PlotGraph[] = [
  plotOf({
    ...measuresTable(
      'height',
      ['in', '1/4 in'],
      ['3/4', '1 1/2', '1/4', '1/4', '1 1/2', '2', '3/4', '1/4', '2 1/2'],
    ),
    unmeasured: [{ label: 'Tue 3', state: 'missed' }],
  }),
  plotOf({
    ...measuresTable('height', ['in', '1 in'], ['5', '3', '6', '4', '5', '8', '3', '8', '3', '4']),
    unmeasured: [{ label: 'Tue 3', state: 'not-up-yet' }],
  }),
  { ...(goldenRight('two pots in half inches') as PlotGraph) },
];

const firstPlanted = (plant: PlantMistake) => {
  for (const right of examples) {
    const drawing = plant(right, drawRight(right), 1);
    if (drawing) return { right, drawing };
  }
  throw new Error('No example can have this mistake');
};

describe('a look at a line plot', () => {
  it.each(goldenLogs.filter(({ graph }) => graph === 'line-plot'))(
    'finds nothing to mend in a right drawing of $name',
    ({ name }) => {
      const right = goldenRight(name);
      const { mistakes, right: parts } = lookAtLinePlot(right, drawRight(right));
      expect(mistakes).toEqual([]);
      expect(parts).toContain('every-value');
    },
  );

  it('finds nothing to mend in a right drawing of any table', () => {
    fc.assert(
      fc.property(someTable, (table) => {
        const right = plotOf(table);
        expect(lookAtLinePlot(right, drawRight(right)).mistakes).toEqual([]);
      }),
      { seed: settings.seed, numRuns: 500 },
    );
  });

  describe.each(Object.entries(plotMistakes))('%s', (title, plant) => {
    const id = title.split(':')[0];

    it(`${id} is found in an example, and it only`, () => {
      const { right, drawing } = firstPlanted(plant);
      expect(idsOf(right, drawing)).toEqual([id]);
    });

    it(`${id} is found in a drawing of any table, and it only`, () => {
      fc.assert(
        fc.property(someTable, fc.nat(), (table, pick) => {
          const right = plotOf(table);
          const drawing = plant(right, drawRight(right), pick);
          fc.pre(drawing !== null);
          expect(idsOf(right, drawing)).toEqual([id]);
        }),
        settings,
      );
    });
  });
});
