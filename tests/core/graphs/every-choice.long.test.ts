import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  begunDrawing,
  decodeTableChoice,
  drawingLevels,
  drawRight,
  lookAtDrawing,
  mostSquaresUp,
  rightGraphOf,
  tableChoicesOf,
  tableOf,
  tableSources,
  type GraphReadiness,
  type GraphTable,
  type RightGraph,
  type TableOffer,
  type TableVariant,
} from '#core/graphs';
import { quantities, stages, type Notebook, type Quantity, type Stage } from '#core/journal';
import { randomNotebook, randomToday } from './random-logs';
import { thing } from './small-notebook';

interface Offered {
  readonly notebook: Notebook;
  readonly stage: Stage;
  readonly offer: TableOffer;
  readonly variant: TableVariant;
  readonly table: GraphTable;
}

const everyVariant = (notebook: Notebook): readonly Offered[] =>
  stages.flatMap((stage) =>
    tableChoicesOf(notebook, { investigation: thing }, stage, randomToday).flatMap((offer) =>
      offer.variants.map((variant) => {
        const kept = decodeTableChoice(JSON.parse(JSON.stringify(variant.choice)));
        if (!kept.ok) throw new Error(`${offer.source} cannot be kept: ${kept.error.part}`);
        expect(kept.value).toEqual(variant.choice);
        const table = tableOf(kept.value, notebook, randomToday);
        if (!table) throw new Error(`${offer.source} has no table`);
        return { notebook, stage, offer, variant, table };
      }),
    ),
  );

const check = (quantity: Quantity, test: (each: Offered) => void): void =>
  fc.assert(
    fc.property(randomNotebook(quantity), (notebook) => everyVariant(notebook).forEach(test)),
    { seed: 20261125, numRuns: 40 },
  );

const isReady = ({ missing }: GraphReadiness): boolean => missing.length === 0;

const rightOf = ({ table, stage }: Offered, { graph }: GraphReadiness): RightGraph => {
  const right = rightGraphOf(graph, table, stage);
  if (!right.ok) throw new Error(`${graph} is said to be ready: ${JSON.stringify(right.error)}`);
  return right.value;
};

/** What was met among the random logs: a test that meets nothing says nothing. */
const readyBySource = new Map<string, number>();

/** Hundreds of drawings on a machine that has other things to do as well. */
const timeout = 30_000;

describe.each(quantities)('every way to draw any log of %s', (quantity) => {
  it(
    'has a right graph and a right drawing without a mistake where it is said to be ready',
    { timeout },
    () => {
      check(quantity, (each) => {
        for (const readiness of each.variant.graphs.filter(isReady)) {
          const right = rightOf(each, readiness);
          for (const upright of [true, false]) {
            const drawing = drawRight(right, { upright });
            expect(lookAtDrawing(right, drawing).mistakes).toEqual([]);
            const up = drawing.upright ? drawing.paper.rows : drawing.paper.columns;
            expect(up).toBeLessThanOrEqual(mostSquaresUp + 2);
          }
          for (const level of drawingLevels) {
            const { bars, points, crosses, symbols } = begunDrawing(drawRight(right), level);
            expect([bars, points, crosses, symbols].flat()).toEqual([]);
          }
          const given = each.variant.choice.givenSteps ? ' in a given frame' : '';
          const met = `${each.offer.source} as ${readiness.graph}${given}`;
          readyBySource.set(met, (readyBySource.get(met) ?? 0) + 1);
        }
      });
    },
  );

  it('says what is missing where it is not ready, and nothing that is not', { timeout }, () => {
    check(quantity, ({ variant, table, stage, offer }) => {
      for (const { graph, missing } of variant.graphs) {
        const right = rightGraphOf(graph, table, stage);
        if (!right.ok) expect(missing).not.toEqual([]);
        for (const each of missing) {
          if (each.kind === 'more-needed') expect(each.have).toBeLessThan(each.need);
          if (each.kind === 'no-graph') expect(right).toEqual({ ok: false, error: each.why });
        }
        // Bars of values are never a dead end only because they are tall.
        const isTooTall = missing.some((m) => m.kind === 'no-graph' && m.why.kind === 'too-tall');
        const [best] = offer.variants;
        if (offer.form === 'values' && variant === best) expect(isTooTall).toBe(false);
      }
      const ready = offer.variants.filter(({ graphs }) => graphs.some(isReady));
      // Each is a button: no two may have the same words.
      const names = ready.map(({ span, told, together, choice }) =>
        JSON.stringify([span, told, together, choice.specimens.length > 1]),
      );
      expect(new Set(names).size).toBe(names.length);
    });
  });
});

describe('the random logs', () => {
  it('have every kind of table ready now and then', () => {
    const neverMet = tableSources.filter(
      (source) => ![...readyBySource.keys()].some((name) => name.startsWith(`${source} as `)),
    );
    expect(neverMet).toEqual([]);
    expect(readyBySource.get('hour-values as bar-graph in a given frame')).toBeGreaterThan(0);
    expect(readyBySource.get('day-values as bar-graph in a given frame')).toBeGreaterThan(0);
  });
});
