import { failed, ok, type Result } from '#core/base';
import { decodeTableChoice, graphKinds, type GraphKind } from '#core/graphs';
import type { LessonRecord, Notebook } from '#core/journal';
import {
  lessonFactsOf,
  levels,
  type AskedQuestion,
  type LessonFacts,
  type LessonFactsError,
  type Level,
} from '#core/questions';
import { asItWas } from './as-it-was';
import { decodeLessonChanges, type LessonChanges } from './lesson-changes';
import { lessonPlanOf, type LessonPlan } from './lesson-plan';
import { lessonPurposes, type LessonPurpose } from './lesson-purpose';
import { questionsStanding } from './questions-standing';

/** A question of a lesson: asked of the log, or put in by the grown-up. */
export type LessonQuestion =
  | { readonly kind: 'asked'; readonly question: AskedQuestion }
  | {
      readonly kind: 'own';
      readonly level: Level;
      readonly text: string;
      readonly answer: string;
    };

/** A lesson as it was made and changed, with its facts, its plan and its questions. */
export interface Lesson {
  readonly record: LessonRecord;
  readonly purpose: LessonPurpose;
  /** As of the day and the moment it was made, with what was put right since. */
  readonly facts: LessonFacts;
  readonly plan: LessonPlan;
  readonly changes: LessonChanges;
  /** Read, between, beyond, behind; in each level those of the log first. */
  readonly questions: readonly LessonQuestion[];
  /** More questions of the plan, for a child who wants them. */
  readonly spare: readonly AskedQuestion[];
  /** Kept questions whose answer the log does not hold any more: never asked. */
  readonly withdrawn: readonly AskedQuestion[];
}

/**
 * A lesson, out of the notebook as it stands. Its facts are those of the moment it was made: what
 * was measured since is left out, so that paper and screen ask the same; what was put right since
 * counts, and a kept question that the log no longer answers so is withdrawn.
 *
 * Errors: `not-a-lesson` names the part that this program cannot read (`graph`, `purpose`,
 * `choice.…` or `changes.…`); `no-table` and `no-graph` are those of `lessonFactsOf`: the log was
 * removed, or corrections leave nothing to draw.
 * @example
 * lessonOf(foldEntries([]), { graph: 'pie', purpose: 'value-bars', choice: {}, changes: [] }).error // => { kind: 'not-a-lesson', part: 'graph' }
 */
export const lessonOf = (notebook: Notebook, record: LessonRecord): Result<Lesson, LessonError> => {
  const graph = graphKinds.find((each) => each === record.graph);
  if (!graph) return notALesson('graph');
  const purpose = lessonPurposes.find(({ id }) => id === record.purpose);
  if (!purpose || purpose.graph !== graph) return notALesson('purpose');
  const changes = decodeLessonChanges(record.changes);
  if (!changes.ok) return notALesson(`changes.${changes.error.part}`);
  const facts = factsOf(notebook, record, graph, changes.value);
  if (!facts.ok) return facts;
  const { minutes, seed } = record;
  const plan = lessonPlanOf(facts.value, { purpose: purpose.id, minutes, seed });
  const { standing, withdrawn, spare } = questionsStanding(
    facts.value,
    plan,
    changes.value.questions,
  );
  const questions = inOrder(standing, changes.value.own);
  return ok({
    ...{ record, purpose, facts: facts.value, plan, changes: changes.value },
    ...{ questions, spare, withdrawn },
  });
};

export type LessonError =
  { readonly kind: 'not-a-lesson'; readonly part: string } | LessonFactsError;

const notALesson = (part: string): Result<never, LessonError> =>
  failed({ kind: 'not-a-lesson', part });

const factsOf = (
  notebook: Notebook,
  record: LessonRecord,
  graph: GraphKind,
  { madeOn }: LessonChanges,
): Result<LessonFacts, LessonError> => {
  const choice = decodeTableChoice(record.choice);
  if (!choice.ok) return notALesson(`choice.${choice.error.part}`);
  // A log that was removed can still be worked out, but nothing is taught with it.
  if (!notebook.investigations.has(record.investigation)) return failed({ kind: 'no-table' });
  const day = madeOn ?? choice.value.to;
  const then = asItWas(notebook, record.madeAt, day);
  return lessonFactsOf(then, choice.value, graph, record.stage, day);
};

const inOrder = (
  asked: readonly AskedQuestion[],
  own: LessonChanges['own'],
): readonly LessonQuestion[] =>
  levels.flatMap((level): readonly LessonQuestion[] => [
    ...asked
      .filter((question) => question.level === level)
      .map((question) => ({ kind: 'asked' as const, question })),
    ...own
      .filter((question) => question.level === level)
      .map((question) => ({ kind: 'own' as const, ...question })),
  ]);
