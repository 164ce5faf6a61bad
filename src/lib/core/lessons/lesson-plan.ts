import type { MistakeId } from '#core/graphs';
import type { LessonMinutes } from '#core/journal';
import type { AskedQuestion, ChosenQuestions, LessonFacts } from '#core/questions';
import type { Caution } from './caution';
import { cautionsOfLesson } from './cautions-of-lesson';
import { minutesOf, type LessonPartId } from './lesson-minutes';
import type { PurposeId } from './lesson-purpose';
import { practiceExample, type PracticeExample } from './practice-example';
import { questionsForPurpose, templatesByPurpose } from './questions-for-purpose';
import { shortSet } from './short-set';
import { teachingOf, type FeatureId, type MaterialId, type WordId } from './teaching-of';

/** A lesson made of a family's own log. What it says is keys of words; the face has the words. */
export interface LessonPlan {
  readonly purpose: PurposeId;
  readonly graph: LessonFacts['graph'];
  /** The one feature to teach. */
  readonly feature: FeatureId;
  readonly example: PracticeExample;
  readonly parts: readonly {
    readonly part: LessonPartId;
    readonly minutes: number;
    /** Grade 1 gives its lesson in two sittings. */
    readonly sitting: 1 | 2;
    readonly ideas: readonly string[];
  }[];
  readonly materials: readonly MaterialId[];
  readonly words: readonly WordId[];
  readonly accept: readonly string[];
  readonly ifStuck: readonly string[];
  readonly stopWhen: readonly string[];
  readonly watchFor: readonly MistakeId[];
  readonly cautions: readonly Caution[];
  /** Those there is time for. */
  readonly questions: ChosenQuestions;
  /** More, where a short lesson has no time for all. */
  readonly spare: readonly AskedQuestion[];
}

/**
 * The plan of a lesson: one feature taught on made-up numbers, the child's own graph drawn by the
 * child, and talk with the question ladder. In twenty minutes a half-drawn graph is finished and two
 * questions are talked about; more are offered beside them. The same facts, purpose, minutes and
 * seed make the same plan.
 * @example
 * lessonPlanOf({ graph: 'bar-graph', stage: 'grade-2', table: { form: 'counts', counted: 'days', rows: [] }, right: { keyValue: null, scale: { step: 1 } }, series: [], ranges: [], choice: { source: 'kind-days' }, notebook: foldEntries([]), today: '2026-03-10' }, { purpose: 'bar-graph-of-how-many-days', minutes: 20, seed: 1 }).feature // => 'bars-from-zero'
 */
export const lessonPlanOf = (
  facts: LessonFacts,
  { purpose, minutes, seed }: LessonWish,
): LessonPlan => {
  const { graph, stage } = facts;
  const teaching = teachingOf(facts, purpose);
  const opener = openerOf(facts, purpose);
  const materials = [...new Set([...teaching.materials, ...(laidReady[opener] ?? [])])];
  return {
    ...{ purpose, graph, ...teaching, materials },
    example: practiceExample(facts, seed, teaching.feature),
    parts: minutesOf(minutes).map(({ part, minutes: partMinutes }) => ({
      ...{ part, minutes: partMinutes, ideas: ideasOf(part, minutes, facts, purpose) },
      sitting: stage === 'grade-1' && secondSitting.has(part) ? 2 : 1,
    })),
    accept: [`accept-${graph}`, 'accept-wobbly', 'accept-range-with-reason'],
    ifStuck: ['stuck-point', 'stuck-idea', 'stuck-beside'],
    stopWhen: ['stop-while-willing', 'stop-and-keep'],
    cautions: cautionsOfLesson(facts, materials),
    ...shortSet(questionsForPurpose(facts, purpose, seed), minutes, templatesByPurpose[purpose]),
  };
};

export interface LessonWish {
  readonly purpose: PurposeId;
  readonly minutes: LessonMinutes;
  /** A whole number. */
  readonly seed: number;
}

const secondSitting: ReadonlySet<LessonPartId> = new Set(['draw', 'talk', 'sentence']);

const ideasOf = (
  part: LessonPartId,
  minutes: LessonMinutes,
  facts: LessonFacts,
  purpose: PurposeId,
): readonly string[] => {
  if (part === 'opener') return [openerOf(facts, purpose)];
  if (part === 'draw') {
    const drawn = minutes === 20 ? 'draw-finish-half' : 'draw-own-table';
    return purpose in drawnBeside ? [drawn, `draw-${purpose}`] : [drawn];
  }
  if (part === 'talk') return [minutes === 20 ? 'talk-two-questions' : 'talk-ladder'];
  return [part];
};

/** Where nothing can be read any more, the lesson opens with the log itself. */
const openerOf = ({ choice, series, today, notebook }: LessonFacts, purpose: PurposeId): string => {
  if (purpose in drawnBeside) return `opener-${purpose}`;
  const isEnded = series.every(({ specimen, investigation }) =>
    [specimen.ended?.day, notebook.investigations.get(investigation.id)?.ended?.day].some(
      (day) => day !== undefined && day <= today,
    ),
  );
  if (!isEnded) return `opener-${choice.source}`;
  return choice.told === null ? 'opener-ended-counts' : 'opener-ended-lengths';
};

/** What the first minutes need in the hand, beside what the graph needs. */
const laidReady: Readonly<Record<string, readonly MaterialId[]>> = {
  ...{ 'opener-kind-days': ['counters'], 'opener-weather-days': ['counters'] },
  ...{ 'opener-wet-days': ['counters'], 'opener-growth-days': ['counters'] },
  ...{ 'opener-state-days': ['counters'], 'opener-specimen-readings': ['counters'] },
  ...{ 'opener-each-specimen': ['sticky-notes'], 'opener-reads-of-one': ['sticky-notes'] },
  'opener-values-side-by-side': ['strips'],
  ...{ 'opener-growth-amounts': ['strips'], 'opener-how-much-taller': ['strips'] },
  ...{ 'opener-ended-counts': ['counters'], 'opener-ended-lengths': ['strips'] },
};

/** Purposes with something to do beside the graph. */
const drawnBeside: Readonly<Partial<Record<PurposeId, true>>> = {
  ...{ 'how-much-taller': true, 'two-units-of-one-thing': true },
  ...{ 'guess-before-measuring': true, 'fair-test-of-two': true },
};
