import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import {
  rightGraphOf,
  tableOf,
  type GraphKind,
  type GraphTable,
  type NoGraph,
  type RightGraph,
  type TableChoice,
} from '#core/graphs';
import type { EntryId, Notebook, Stage } from '#core/journal';
import { openDoubts, seriesOf, type Series } from '#core/series';
import type { NumberRange } from './question';

/** Everything that questions about one graph are made of. */
export interface LessonFacts {
  readonly notebook: Notebook;
  readonly today: CivilDay;
  readonly stage: Stage;
  readonly choice: TableChoice;
  readonly graph: GraphKind;
  readonly table: GraphTable;
  readonly right: RightGraph;
  /** The whole logs of the choice's specimens, in its order: the choice says which days are shown. */
  readonly series: readonly Series[];
  /** Readings with an open doubt: never asked about. */
  readonly doubted: ReadonlySet<EntryId>;
  /** The number ranges of the stage. */
  readonly ranges: readonly NumberRange[];
}

/** Which number ranges suit a stage, the narrower first. (Common Core grades 1 to 3.) */
export const rangesByStage: Readonly<Record<Stage, readonly NumberRange[]>> = {
  'grade-1': ['G1'],
  'grade-2': ['G2a', 'G2b', 'G2c'],
  'grade-3': ['G3'],
};

/**
 * The facts of a graph as the notebook stands now.
 *
 * Errors: `no-table` (none of the logs is there, or the choice does not say how measures are
 * told); `no-graph` with why: units that are mixed, more kinds than the stage's most, too few.
 * @param today the day it is where the family is
 * @example
 * lessonFactsOf(foldEntries([]), { source: 'day-values', specimens: ['no-such-bean'], from: '2026-03-02', to: '2026-03-10', told: null, mostKinds: null }, 'bar-graph', 'grade-2', '2026-03-10') // => { ok: false, error: { kind: 'no-table' } }
 */
export const lessonFactsOf = (
  notebook: Notebook,
  choice: TableChoice,
  graph: GraphKind,
  stage: Stage,
  today: CivilDay,
): Result<LessonFacts, LessonFactsError> => {
  const table = tableOf(choice, notebook, today);
  if (!table) return failed({ kind: 'no-table' });
  const right = rightGraphOf(graph, table, stage);
  if (!right.ok) return failed({ kind: 'no-graph', why: right.error });
  const series = choice.specimens.flatMap((id) => seriesOf(notebook, id, today) ?? []);
  return ok({
    ...{ notebook, today, stage, choice, graph, table, series },
    right: right.value,
    doubted: doubtedIn(notebook, series, today),
    ranges: rangesByStage[stage],
  });
};

const doubtedIn = (
  notebook: Notebook,
  series: readonly Series[],
  today: CivilDay,
): ReadonlySet<EntryId> =>
  new Set(
    series.flatMap((each) => {
      const others = [...notebook.specimens.values()]
        .filter(({ investigation }) => investigation === each.specimen.investigation)
        .flatMap(({ id }) => seriesOf(notebook, id, today) ?? []);
      return openDoubts(notebook, each, others).map(({ reading }) => reading.id);
    }),
  );

export type LessonFactsError =
  { readonly kind: 'no-table' } | { readonly kind: 'no-graph'; readonly why: NoGraph };
