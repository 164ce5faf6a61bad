import fc from 'fast-check';
import { addDays, civilDay, formatDay } from '#core/calendar';
import { rightGraphOf, type GraphKind, type GraphTable, type RightGraph } from '#core/graphs';
import { exactPerUnit, formatExactNumber } from '#core/measure';

const kinds = ['sun', 'cloud', 'rain', 'snow', 'wind', 'fog'];

/** How many days of up to six kinds, at least one of them more than none. */
export const randomCounts: fc.Arbitrary<GraphTable> = fc
  .array(fc.integer({ min: 0, max: 12 }), { minLength: 2, maxLength: 6 })
  .filter((counts) => counts.some((count) => count > 0))
  .map((counts) => ({
    ...{ form: 'counts', counted: 'days' },
    rows: counts.map((count, index) => ({ label: kinds[index]!, count })),
  }));

/** Heights of up to ten days, some of them blank, in centimetres or in half inches. */
export const randomValues: fc.Arbitrary<GraphTable> = fc
  .record({
    inches: fc.boolean(),
    parts: fc.array(fc.option(fc.integer({ min: 0, max: 14 }), { freq: 4 }), {
      minLength: 3,
      maxLength: 10,
    }),
  })
  .filter(({ parts }) => parts.filter((each) => each).length > 1)
  .map(({ inches, parts }): GraphTable => {
    const [unit, mark] = inches ? (['in', '1/2 in'] as const) : (['cm', '1 cm'] as const);
    const part = exactPerUnit(unit) / (inches ? 2 : 1);
    const rows = parts.map((each, index) => {
      const day = addDays(civilDay('2026-03-02'), index);
      const label = formatDay(day, 'short').split(' ').slice(0, 2).join(' ');
      if (each === null) {
        return { label, day, exact: null, unit, text: '', state: 'blank' } as const;
      }
      const text = formatExactNumber(each * part, unit, mark);
      return { label, day, exact: each * part, unit, text, state: 'number' } as const;
    });
    return { form: 'values', measured: 'height', unit, mark, rows };
  });

/** The right graph of a random table, where there is one. */
export const randomRight = (
  graph: GraphKind,
  tables: fc.Arbitrary<GraphTable>,
): fc.Arbitrary<RightGraph> =>
  tables
    .map((table) => rightGraphOf(graph, table, 'grade-3'))
    .filter((right) => right.ok)
    .map((right) => (right as { readonly value: RightGraph }).value);
