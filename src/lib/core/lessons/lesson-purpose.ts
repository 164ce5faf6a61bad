import type { GraphKind, StandardCode, TableSource } from '#core/graphs';
import type { Stage } from '#core/journal';

/** What a lesson is for, in the trade's words. Ids; the face has the sentences. */
export const purposeIds = [
  'picture-graph-of-kinds',
  'bar-graph-of-how-many-days',
  'value-bars',
  'line-plot-of-one-thing',
  'line-plot-of-many',
  'line-plot-of-amounts',
  'line-graph-guided',
] as const;
export type PurposeId = (typeof purposeIds)[number];

export interface LessonPurpose {
  readonly id: PurposeId;
  readonly graph: GraphKind;
  readonly sources: readonly TableSource[];
  readonly stages: readonly Stage[];
  /** Beside those of the drawing itself, which `standardsOf` tells. */
  readonly alsoServes: readonly StandardCode[];
}

const all: readonly Stage[] = ['grade-1', 'grade-2', 'grade-3'];
const fromGrade2: readonly Stage[] = ['grade-2', 'grade-3'];
const counted: readonly TableSource[] = [
  ...(['kind-days', 'weather-days', 'wet-days', 'growth-days'] as const),
  ...(['state-days', 'specimen-readings'] as const),
];
const values: readonly TableSource[] = ['day-values', 'week-values', 'hour-values'];

/** Every purpose a graph lesson can have, each with the tables it is taught with. */
export const lessonPurposes: readonly LessonPurpose[] = [
  purpose('picture-graph-of-kinds', 'picture-graph', counted, all),
  purpose('bar-graph-of-how-many-days', 'bar-graph', counted, all),
  purpose('value-bars', 'bar-graph', values, all, ['2.MD.A.4']),
  purpose('line-plot-of-one-thing', 'line-plot', ['reads-of-one'], fromGrade2),
  purpose('line-plot-of-many', 'line-plot', ['each-specimen'], fromGrade2),
  purpose('line-plot-of-amounts', 'line-plot', ['growth-amounts', 'rain-amounts'], fromGrade2),
  purpose('line-graph-guided', 'line-graph', ['days-in-order', 'hours-in-order'], all),
];

function purpose(
  id: PurposeId,
  graph: GraphKind,
  sources: readonly TableSource[],
  stages: readonly Stage[],
  alsoServes: readonly StandardCode[] = [],
): LessonPurpose {
  return { id, graph, sources, stages, alsoServes };
}
