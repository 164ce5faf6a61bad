import type { LessonId } from './id';
import type * as teaching from './teaching';

/** Teaching while it is being added up: `TeachingOfNotebook` that can still grow. */
export interface FoldTeaching {
  readonly lessons: Map<LessonId, teaching.LessonRecord>;
  readonly answers: teaching.QuestionAnswered[];
  readonly ownQuestions: teaching.OwnQuestion[];
  readonly reviews: teaching.ReviewAnswered[];
  readonly evidence: teaching.EvidenceNote[];
}

export const emptyFoldTeaching = (): FoldTeaching => ({
  lessons: new Map(),
  answers: [],
  ownQuestions: [],
  reviews: [],
  evidence: [],
});
