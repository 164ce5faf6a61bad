import type { EntryDraft, InvestigationId, LessonId, SpecimenId } from '#core/journal';
import type { LessonFacts } from '#core/questions';
import { lessonPlanOf, type LessonWish } from './lesson-plan';

/**
 * What is written when a lesson is made: the lesson, and a change that keeps the questions it was
 * given and the day they were chosen on. Questions are kept as they were asked, so that another
 * program, or another day, asks the same.
 *
 * @param about what the lesson belongs to; the specimen where it is about one
 * @param facts of today: `today` is kept as the day the lesson was made
 * @example
 * lessonDrafts('lesson', { investigation: 'weather' }, { graph: 'bar-graph', stage: 'grade-2', table: { form: 'counts', counted: 'days', rows: [] }, right: { keyValue: null, scale: { step: 1 } }, series: [], ranges: [], choice: { source: 'kind-days' }, notebook: foldEntries([]), today: '2026-03-10' }, { purpose: 'bar-graph-of-how-many-days', minutes: 20, seed: 1 })[1] // => { kind: 'lesson-changed', lesson: 'lesson', to: { madeOn: '2026-03-10', questions: [] } }
 */
export const lessonDrafts = (
  id: LessonId,
  { investigation, specimen }: LessonAbout,
  facts: LessonFacts,
  wish: LessonWish,
): readonly EntryDraft[] => {
  const { graph, choice, stage, today } = facts;
  const { read, between, beyond, behind } = lessonPlanOf(facts, wish).questions;
  return [
    {
      ...{ kind: 'lesson-made', lesson: id, investigation, graph, choice: { ...choice }, stage },
      ...(specimen === undefined ? {} : { specimen }),
      ...wish,
    },
    {
      ...{ kind: 'lesson-changed', lesson: id },
      to: { madeOn: today, questions: [...read, ...between, ...beyond, ...behind] },
    },
  ];
};

/** What a lesson belongs to. */
export interface LessonAbout {
  readonly investigation: InvestigationId;
  readonly specimen?: SpecimenId;
}
