import type { Stage } from '#core/journal';
import { graphFit, graphsByForm } from './graph-fit';
import type { GraphTable } from './graph-table';
import type { NoGraph } from './no-graph';
import { rightGraphOf } from './right-graph-of';
import { standardsOf, type Subject } from './standards-of';
import type { GraphReadiness, Missing } from './table-offer';

/** A table of fewer rows with something in them is not worth looking at (common practice). */
export const fewestForTable = 3;

/** How many days, values or marks make a graph worth drawing (common practice, no source). */
export const fewestByForm: Readonly<Record<GraphTable['form'], number>> = {
  counts: 8,
  values: 4,
  measures: 8,
  times: 5,
};

/**
 * For each graph that a table may become: who draws it, which standards it serves, and what is
 * missing. A graph is worth drawing with 8 days of kinds, 4 values, 8 marks of which some repeat,
 * or 5 readings over time. (Common practice, no source.)
 *
 * @param have how many days or readings were counted, for a table of counts
 * @example
 * readinessOf({ form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 2 }] }, 'grade-2', 'weather', 5)[0].missing // => [{ kind: 'more-needed', have: 5, need: 8 }]
 */
export const readinessOf = (
  table: GraphTable,
  stage: Stage,
  subject: Subject,
  have: number = numbersIn(table),
): readonly GraphReadiness[] =>
  graphsByForm[table.form].map((graph) => {
    const need = fewestByForm[table.form];
    const missing: Missing[] = have < need ? [{ kind: 'more-needed', have, need }] : [];
    if (table.form === 'measures' && have >= need && !hasRepeats(table)) {
      missing.push({ kind: 'no-repeats' });
    }
    const right = rightGraphOf(graph, table, stage);
    if (!right.ok && !(have < need && willMend(table, right.error))) {
      missing.push({ kind: 'no-graph', why: right.error });
    }
    const standards = standardsOf(graph, table, stage, subject);
    return { graph, fit: graphFit(graph, table, stage), standards, missing };
  });

/** What more readings will mend is said once; one kind only is another thing than few days. */
const willMend = ({ form }: GraphTable, { kind }: NoGraph): boolean =>
  kind === 'no-numbers' || (kind === 'too-few' && form !== 'counts');

/**
 * How many values a table has to draw: the sum of its counts, its numbers, its marks, or the
 * numbers of its longest line.
 * @example
 * numbersIn({ form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 2 }] }) // => 5
 */
export const numbersIn = (table: GraphTable): number => {
  switch (table.form) {
    case 'counts':
      return table.rows.reduce((sum, { count }) => sum + count, 0);
    case 'values':
      return table.rows.filter(({ exact }) => exact !== null).length;
    case 'measures':
      return table.values.length;
    case 'times':
      return Math.max(
        0,
        ...table.seriesNames.map(
          (_, index) =>
            table.rows.filter(({ exact, series }) => exact !== null && series === index).length,
        ),
      );
  }
};

const hasRepeats = ({ values }: Extract<GraphTable, { form: 'measures' }>): boolean =>
  new Set(values.map(({ exact }) => exact)).size < values.length;
