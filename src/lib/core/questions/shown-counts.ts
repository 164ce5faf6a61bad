import { mostKindsByStage, sortCards } from '#core/graphs';
import type { LessonFacts } from './lesson-facts';
import { anyDoubted } from './shown-values';

/**
 * The counts of a graph, where they may be asked about: no more kinds than the stage's most, and
 * none that hangs on a doubted reading. None of this file is part of the public door.
 */
export interface ShownCounts {
  /** What is counted: "days", "readings". */
  readonly of: string;
  readonly rows: readonly { readonly label: string; readonly count: number }[];
  /** A thing of two kinds (a day of sun and of rain) is in two rows: rows cannot be put together. */
  readonly isEachOnce: boolean;
}

export const shownCounts = (facts: LessonFacts): ShownCounts | null => {
  const { table, choice, stage, notebook, today } = facts;
  if (table.form !== 'counts' || table.rows.length > mostKindsByStage[stage]) return null;
  const hangsOnReadings = choice.source === 'wet-days' || choice.source === 'growth-days';
  if (hangsOnReadings && anyDoubted(facts)) return null;
  const things = sortCards(choice, table, notebook, today).map(({ thing }) => thing);
  return {
    ...{ of: table.counted, rows: table.rows },
    isEachOnce: new Set(things).size === things.length,
  };
};

/** Every two different rows, each way round. */
export const pairsOf = <Row>(rows: readonly Row[]): readonly (readonly [Row, Row])[] =>
  rows.flatMap((one) => rows.flatMap((other) => (one === other ? [] : [[one, other] as const])));
