import { failed, oneOf, seededRandom, type Random, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import { rightGraphOf, type GraphKind, type GraphTable, type TableChoice } from '#core/graphs';
import type { InvestigationId, Notebook, Stage } from '#core/journal';
import {
  answerWayOf,
  lessonFactsOf,
  questionsOf,
  rangesByStage,
  sameTold,
  type AskedQuestion,
  type LessonFacts,
  type LessonFactsError,
  type Told,
} from '#core/questions';
import { daysThrough } from './review-own-numbers';
import { isSameQuestion } from './questions-standing';

/** Which graph a question of a review is about: made again from this whenever it is shown. */
export type QuestionAbout =
  | {
      readonly kind: 'log';
      readonly choice: TableChoice;
      readonly graph: GraphKind;
      readonly stage: Stage;
      /** What was written for later days does not count. */
      readonly through: CivilDay;
    }
  /** Made-up counts, because no log makes a graph yet: always marked where they are shown. */
  | { readonly kind: 'practice'; readonly seed: number; readonly stage: Stage };

/** A question about a graph, with answers to choose from where it is not a number. */
export interface ReviewQuestion {
  readonly about: QuestionAbout;
  readonly question: AskedQuestion;
  readonly choices: readonly Told[] | null;
}

/**
 * The facts of the graph a review asks about, as the log stands now for its days: a number that
 * was put right is put right here too. Errors as of `lessonFactsOf`.
 * @example
 * reviewFactsOf(foldEntries([]), { kind: 'practice', seed: 1, stage: 'grade-2' }).value.graph // => 'bar-graph'
 */
export const reviewFactsOf = (
  notebook: Notebook,
  about: QuestionAbout,
): Result<LessonFacts, LessonFactsError> => {
  if (about.kind === 'practice') return practiceFacts(notebook, about);
  const { choice, graph, stage, through } = about;
  return lessonFactsOf(daysThrough(notebook, through), choice, graph, stage, through);
};

/**
 * Whether a question of a review may still be asked: the log still gives this answer to it.
 * @example
 * isQuestionStanding(foldEntries([]), { about: { kind: 'practice', seed: 1, stage: 'grade-2' }, question: { template: 'R2', blanks: {}, answer: { kind: 'count', count: 99, of: 'days' } } }) // => false
 */
export const isQuestionStanding = (
  notebook: Notebook,
  { about, question }: Pick<ReviewQuestion, 'about' | 'question'>,
): boolean => {
  const facts = reviewFactsOf(notebook, about);
  return facts.ok && questionsOf(facts.value).some((each) => isSameQuestion(each, question));
};

/**
 * The questions about a graph that a child can answer alone on a screen: to read the data or
 * between them, with a number, or with one of a few things to choose from. What a picture stands
 * for (R4) is a number and its noun: that is talked about. Not in the door.
 */
export const answerableOf = (
  facts: LessonFacts,
  about: QuestionAbout,
): readonly ReviewQuestion[] => {
  const possible = questionsOf(facts).filter(
    ({ level, template }) => (level === 'read' || level === 'between') && template !== 'R4',
  );
  return possible.flatMap((question): readonly ReviewQuestion[] => {
    const { kind } = question.answer;
    if (kind === 'length' || kind === 'count') return [{ about, question, choices: null }];
    if (kind !== 'day' && kind !== 'time' && kind !== 'word') return [];
    const offered = answerWayOf(question).choices;
    const choices = offered.length > 0 ? offered : choicesFor(question, possible);
    return choices.length > 1 ? [{ about, question, choices }] : [];
  });
};

/**
 * The name a question is asked again by: its template, its graph and what stands in its blanks.
 * Not part of the public door.
 */
export const questionName = ({ about, question }: ReviewQuestion): string => {
  const graph =
    about.kind === 'practice'
      ? `practice ${about.seed} ${about.stage}`
      : [
          ...[about.graph, about.choice.source, ...about.choice.specimens],
          ...[about.choice.from, about.through, about.stage],
        ].join(' ');
  const blanks = Object.entries(question.blanks)
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, told]) => `${name} ${textOf(told)}`);
  return ['question', question.template, graph, ...blanks].join(' ');
};

/** A question about made-up counts of days; the same for the same seed. Not in the door. */
export const practiceQuestion = (
  notebook: Notebook,
  stage: Stage,
  seed: number,
  random: Random,
): ReviewQuestion => {
  const about = { kind: 'practice', seed, stage } as const;
  const facts = reviewFactsOf(notebook, about);
  if (!facts.ok) throw new Error(`Practice numbers make no graph: ${facts.error.kind}`);
  const possible = answerableOf(facts.value, about);
  const toRead = possible.filter(({ question }) => question.level === 'read');
  return oneOf(toRead.length > 0 ? toRead : possible, random);
};

const practiceFacts = (
  notebook: Notebook,
  { seed, stage }: Extract<QuestionAbout, { kind: 'practice' }>,
): Result<LessonFacts, LessonFactsError> => {
  const table = practiceCounts(seed);
  const right = rightGraphOf('bar-graph', table, stage);
  if (!right.ok) return failed({ kind: 'no-graph', why: right.error });
  const today = '2001-01-01' as CivilDay;
  return {
    ok: true,
    value: {
      ...{ notebook, today, stage, graph: 'bar-graph', table, right: right.value, series: [] },
      ...{ doubted: new Set(), ranges: rangesByStage[stage] },
      choice: {
        ...{ source: 'kind-days', investigation: 'practice' as InvestigationId, specimens: [] },
        ...{ from: today, to: today, told: null, mostKinds: null },
      },
    },
  };
};

const practiceCounts = (seed: number): GraphTable => {
  const random = seededRandom(seed);
  const left = [2, 3, 4, 5, 6, 7, 8];
  const rows = ['sun', 'cloud', 'rain'].map((label) => {
    const count = oneOf(left, random);
    left.splice(left.indexOf(count), 1);
    return { label, count };
  });
  return { form: 'counts', counted: 'days', rows };
};

/** The answer and up to three others: its slips, then answers of the same question asked otherwise. */
const choicesFor = (
  { template, answer, slips }: AskedQuestion,
  possible: readonly AskedQuestion[],
): readonly Told[] => {
  const others = [
    ...slips.map(({ told }) => told),
    ...possible.filter((each) => each.template === template).map((each) => each.answer),
  ].filter((told) => told.kind === answer.kind);
  const distinct = [answer, ...others].filter(
    (told, index, all) => all.findIndex((each) => sameTold(each, told)) === index,
  );
  return distinct
    .slice(0, mostChoices)
    .toSorted((one, other) => (textOf(one) < textOf(other) ? -1 : 1));
};

const mostChoices = 4;

const textOf = (told: Told): string => {
  switch (told.kind) {
    case 'day':
      return told.day;
    case 'time':
      return told.time;
    case 'word':
      return told.word;
    case 'count':
      return `${told.count} ${told.of}`;
    case 'length':
      return `${told.exact} ${told.unit} ${told.mark}`;
    default:
      return JSON.stringify(told);
  }
};
