import {
  drawRight,
  rightGraphOf,
  type Drawing,
  type GraphTable,
  type RightGraph,
} from '#core/graphs';
import { practiceTable, type LessonFacts } from '#core/questions';

/** A worked example on made-up numbers: "practice numbers, not ours". */
export interface PracticeExample {
  readonly isPractice: true;
  readonly seed: number;
  readonly table: GraphTable;
  readonly right: RightGraph;
  readonly drawing: Drawing;
}

/**
 * A worked example for a family's graph, of the same kind and never the family's own numbers: a
 * seed whose numbers, put in order, are the family's is passed over for the next one. The same
 * facts and seed make the same example. Lengths are whole centimetres or inches.
 * @example
 * practiceExample({ graph: 'bar-graph', stage: 'grade-2', table: { form: 'counts', counted: 'days', rows: [] } }, 1).isPractice // => true
 */
export const practiceExample = (
  { graph, table, stage }: Pick<LessonFacts, 'graph' | 'table' | 'stage'>,
  seed: number,
): PracticeExample => {
  const isInInches = table.form !== 'counts' && table.unit === 'in';
  const told = isInInches
    ? ({ unit: 'in', mark: '1 in' } as const)
    : ({ unit: 'cm', mark: '1 cm' } as const);
  for (let tried = 0; tried < mostTries; tried += 1) {
    const made = practiceTable(table.form, told, seed + tried);
    if (numbersOf(made.table) === numbersOf(table)) continue;
    const right = rightGraphOf(graph, made.table, stage);
    if (!right.ok) throw new Error(`Practice numbers make no ${graph}: ${right.error.kind}`);
    const drawing = drawRight(right.value);
    return { ...made, right: right.value, drawing };
  }
  throw new Error('No practice numbers differ from these');
};

const mostTries = 20;

const numbersOf = (table: GraphTable): string => {
  if (table.form === 'counts') return sorted(table.rows.map(({ count }) => count));
  const rows = table.form === 'measures' ? table.values : table.rows;
  return sorted(rows.flatMap(({ exact }) => exact ?? []));
};

const sorted = (numbers: readonly number[]): string =>
  numbers.toSorted((one, other) => one - other).join(' ');
