import type { GraphKind, StandardCode, TableSource } from '#core/graphs';
import type { Quantity, Stage } from '#core/journal';

/** What a lesson is for, in the trade's words. Ids; the face has the sentences. */
export const purposeIds = [
  'picture-graph-of-kinds',
  'bar-graph-of-how-many-days',
  'value-bars',
  'line-plot-of-one-thing',
  'line-plot-of-many',
  'line-plot-of-amounts',
  'line-graph-guided',
  'how-much-taller',
  'two-units-of-one-thing',
  'guess-before-measuring',
  'fair-test-of-two',
  'two-side-by-side',
] as const;
export type PurposeId = (typeof purposeIds)[number];

export interface LessonPurpose {
  readonly id: PurposeId;
  readonly graph: GraphKind;
  readonly sources: readonly TableSource[];
  readonly stages: readonly Stage[];
  /** Beside those of the drawing itself, which `standardsOf` tells. */
  readonly alsoServes: readonly StandardCode[];
  /** What the log must hold beside a table that makes the graph. */
  readonly needs: PurposeNeed | null;
  /** Of which quantities; null for every one that has the table. */
  readonly quantities: readonly Quantity[] | null;
}

/**
 * What some purposes need of a log: a height that changed, readings on both sides of the ruler,
 * guesses that were measured, or a fair test whose two logs both have numbers.
 */
export type PurposeNeed = 'growth' | 'pairs' | 'guesses' | 'two-logs';

const all: readonly Stage[] = ['grade-1', 'grade-2', 'grade-3'];
const fromGrade2: readonly Stage[] = ['grade-2', 'grade-3'];
const counted: readonly TableSource[] = [
  ...(['kind-days', 'weather-days', 'wet-days', 'growth-days'] as const),
  ...(['state-days', 'specimen-readings'] as const),
];
const lengths: readonly Quantity[] = ['plant-height', 'length'];
const values: readonly TableSource[] = ['day-values', 'week-values', 'hour-values'];

/** Every purpose a graph lesson can have, each with the tables it is taught with. */
export const lessonPurposes: readonly LessonPurpose[] = [
  purpose('picture-graph-of-kinds', 'picture-graph', counted, all),
  purpose('bar-graph-of-how-many-days', 'bar-graph', counted, all),
  purpose('value-bars', 'bar-graph', values, all),
  purpose('line-plot-of-one-thing', 'line-plot', ['reads-of-one'], fromGrade2, {
    alsoServes: ['2.MD.A.1'],
  }),
  purpose('line-plot-of-many', 'line-plot', ['each-specimen'], fromGrade2, {
    alsoServes: ['2.MD.A.1'],
  }),
  purpose('line-plot-of-amounts', 'line-plot', ['growth-amounts', 'rain-amounts'], fromGrade2),
  purpose('line-graph-guided', 'line-graph', ['days-in-order', 'hours-in-order'], all),
  purpose('how-much-taller', 'bar-graph', ['day-values'], fromGrade2, {
    ...{ needs: 'growth', quantities: lengths, alsoServes: ['2.MD.B.5', '2.MD.B.6'] },
  }),
  purpose('two-units-of-one-thing', 'bar-graph', ['day-values'], fromGrade2, {
    ...{ needs: 'pairs', quantities: lengths, alsoServes: ['2.MD.A.1', '2.MD.A.2'] },
  }),
  purpose('guess-before-measuring', 'bar-graph', ['day-values'], fromGrade2, {
    ...{ needs: 'guesses', quantities: lengths, alsoServes: ['2.MD.A.3'] },
  }),
  purpose('fair-test-of-two', 'line-graph', ['days-in-order'], fromGrade2, {
    ...{ needs: 'two-logs', quantities: ['plant-height'], alsoServes: ['2-LS2-1'] },
  }),
  purpose('two-side-by-side', 'bar-graph', ['values-side-by-side'], fromGrade2),
];

function purpose(
  id: PurposeId,
  graph: GraphKind,
  sources: readonly TableSource[],
  stages: readonly Stage[],
  { alsoServes = [], needs = null, quantities = null }: Partial<LessonPurpose> = {},
): LessonPurpose {
  return { id, graph, sources, stages, alsoServes, needs, quantities };
}
