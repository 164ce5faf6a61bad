import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import {
  drawRight,
  rightGraphOf,
  tableChoicesOf,
  tableOf,
  type CountTable,
  type GraphKind,
  type GraphTable,
  type TableSource,
  type ValueTable,
} from '#core/graphs';
import { exactPerUnit } from '#core/measure';
import { notebookOf, specimenId, thing, type Line } from './small-notebook';

// An amount read after several days is the total of them and of none of them (observing practice
// of the US National Weather Service, from memory): here every such total is of 100 mm and more,
// and no single day has more than 9.
const mm = exactPerUnit('mm');
const first = civilDay('2026-03-02');
const gauge = { quantity: 'rain', unit: 'mm', mark: '1 mm' } as const;

type Day = { readonly read: string; readonly spanDays: number; readonly time?: string } | null;

const linesOf = (days: readonly Day[]): readonly Line[] =>
  days.flatMap((each, index) => (each ? [{ day: addDays(first, index), ...each }] : []));

const tableIn = (days: readonly Day[], source: TableSource, converts = false): GraphTable => {
  const table = tableOf(
    {
      ...{ source, investigation: thing, specimens: [specimenId(0)], mostKinds: null },
      ...{ from: first, to: addDays(first, days.length + 7) },
      told: { unit: 'mm', mark: '1 mm', converts },
    },
    notebookOf({ Gauge: linesOf(days) }, gauge),
    addDays(first, days.length - 1),
  );
  if (!table) throw new Error(`${source} has no table`);
  return table;
};

const numbersIn = (table: GraphTable): readonly number[] => {
  if (table.form === 'counts') return [];
  const rows: readonly { readonly exact: number | null }[] =
    table.form === 'measures' ? table.values : table.rows;
  return rows.flatMap(({ exact }) => (exact === null ? [] : [exact / mm]));
};

const single = fc.record({
  read: fc.integer({ min: 0, max: 9 }).map(String),
  spanDays: fc.constant(1),
  time: fc.constant('08:00'),
});
const total = fc.record({
  read: fc.integer({ min: 100, max: 160 }).map(String),
  spanDays: fc.integer({ min: 2, max: 4 }),
  time: fc.constant('09:00'),
});
const days: fc.Arbitrary<readonly Day[]> = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: single },
    { weight: 2, arbitrary: total },
    { weight: 1, arbitrary: fc.constant(null) },
  ),
  { minLength: 2, maxLength: 20 },
);
const check = (test: (days: readonly Day[]) => void): void =>
  fc.assert(fc.property(days, test), { seed: 20261125, numRuns: 150 });

const ofOneDay = (all: readonly Day[]): readonly number[] =>
  all.flatMap((each) => (each?.spanDays === 1 ? [Number(each.read)] : []));

describe('a total of several days of rain', () => {
  it.each(['day-values', 'rain-amounts', 'days-in-order', 'reads-of-one'] as const)(
    'is no number of a table of %s, which has every single day',
    (source) => {
      check((all) => {
        for (const converts of [false, true]) {
          expect(numbersIn(tableIn(all, source, converts))).toEqual(ofOneDay(all));
        }
      });
    },
  );

  it.each(['each-specimen', 'hour-values', 'hours-in-order', 'growth-amounts'] as const)(
    'is no number of a table of %s either, though rain is not offered so',
    (source) => {
      check((all) => {
        for (const exact of numbersIn(tableIn(all, source))) {
          expect(Math.abs(exact)).toBeLessThanOrEqual(9);
        }
      });
    },
  );

  it('is no wet day and no dry day', () => {
    check((all) => {
      const { rows } = tableIn(all, 'wet-days') as CountTable;
      const singles = ofOneDay(all);
      const wet = singles.filter((amount) => amount > 0).length;
      expect(rows.map(({ count }) => count)).toEqual([singles.length - wet, wet]);
    });
  });

  it('is told beside its day in the table of days, and keeps its place without a bar', () => {
    const all: readonly Day[] = [
      ...[{ read: '3', spanDays: 1 }, { read: '0', spanDays: 1 }, null, null],
      ...[
        { read: '12', spanDays: 3 },
        { read: '5', spanDays: 1 },
        { read: '1', spanDays: 1 },
      ],
    ];
    const table = tableIn(all, 'day-values') as ValueTable;
    expect(table.rows.map(({ text }) => text)).toEqual([
      ...['3', '0', '', '', '12 in 3 days', '5', '1'],
    ]);
    const right = rightGraphOf('bar-graph', table, 'grade-2');
    if (!right.ok) throw new Error(right.error.kind);
    const { bars, places } = drawRight(right.value);
    expect(bars.map(({ to }) => to)).toEqual([3, 0, 5, 1]);
    expect(places).toHaveLength(7);
    expect(bars.some(({ at }) => at === places[4]?.at)).toBe(false);
  });

  it('counts in its week, and in none where it was begun in the week before', () => {
    // 2 March 2026 is a Monday: a total of three days on the 6th is of that week alone, one on
    // Tuesday the 10th began on Sunday the 8th.
    const none = [null, null];
    const all: readonly Day[] = [
      ...[null, { read: '2', spanDays: 1 }, ...none, { read: '120', spanDays: 3 }, ...none],
      ...[null, { read: '130', spanDays: 3 }, { read: '4', spanDays: 1 }],
    ];
    const table = tableIn(all, 'week-values') as ValueTable;
    expect(table.rows.map(({ exact }) => exact)).toEqual([122 * mm, null]);
    expect(table.rows[1]?.text).toBe('134, some of it from the week before');
  });

  it('is never drawn, whatever the notebook offers for a log with one', () => {
    check((all) => {
      const notebook = notebookOf({ Gauge: linesOf(all) }, gauge);
      const today = addDays(first, all.length - 1);
      for (const offer of tableChoicesOf(notebook, { investigation: thing }, 'grade-3', today)) {
        if (offer.form === 'counts' || offer.source === 'week-values') continue;
        for (const { choice, graphs } of offer.variants) {
          const table = tableOf(choice, notebook, today)!;
          expect(Math.max(0, ...numbersIn(table))).toBeLessThanOrEqual(9);
          for (const { graph, missing } of graphs) {
            if (missing.length === 0) expect(marksOf(graph, table)).toBe(numbersIn(table).length);
          }
        }
      }
    });
  });
});

const marksOf = (graph: GraphKind, table: GraphTable): number => {
  const right = rightGraphOf(graph, table, 'grade-3');
  if (!right.ok) throw new Error(right.error.kind);
  const { bars, crosses, points } = drawRight(right.value);
  return bars.length + crosses.length + points.length;
};
