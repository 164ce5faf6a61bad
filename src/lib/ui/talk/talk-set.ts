import { daysBetween, civilDay, type CivilDay } from '#core/calendar';
import { decodeTableChoice } from '#core/graphs';
import type { LessonId, LessonRecord, Notebook, PersonId, SpecimenId, Stage } from '#core/journal';
import { lessonOf, purposesReady } from '#core/lessons';
import { chooseQuestions, lessonFactsOf, type LessonFacts } from '#core/questions';
import { itemOf, keyOfSheet, type TalkItem } from './talk-item';

/** What there is to talk about, and the facts of the graph it is about. */
export interface TalkSet {
  readonly facts: LessonFacts;
  readonly lesson: LessonId | null;
  readonly items: readonly TalkItem[];
}

/**
 * The questions of a lesson that was made: the one asked for, else the newest that can be read and
 * has any. Null where there is none.
 */
export function lessonSet(notebook: Notebook, asked: string | null): TalkSet | null {
  const made = [...notebook.lessons.values()].toReversed();
  const first = made.filter(({ id }) => id === asked);
  for (const record of [...first, ...made]) {
    const set = setOf(notebook, record);
    if (set) return set;
  }
  return null;
}

const setOf = (notebook: Notebook, record: LessonRecord): TalkSet | null => {
  const lesson = lessonOf(notebook, record);
  if (!lesson.ok || lesson.value.questions.length === 0) return null;
  const { facts, questions } = lesson.value;
  const items = questions.map((each) => itemOf(each, record.id));
  return { facts, lesson: record.id, items };
};

/**
 * A small set from a graph of one log that is ready today: another graph on another day, the same
 * questions all day. Null where no graph of it is ready.
 */
export function daySet(
  notebook: Notebook,
  specimen: SpecimenId,
  { stage, today }: { readonly stage: Stage; readonly today: CivilDay },
): TalkSet | null {
  const investigation = notebook.specimens.get(specimen)?.investigation;
  if (!investigation) return null;
  const ready = purposesReady(notebook, { investigation, specimen }, stage, today).filter(
    ({ missing, choice }) => missing.length === 0 && decodeTableChoice(choice).ok,
  );
  const seed = daysBetween(civilDay('2020-01-01'), today);
  const turn = ready.length === 0 ? 0 : ((seed % ready.length) + ready.length) % ready.length;
  for (const { purpose, choice } of [...ready.slice(turn), ...ready.slice(0, turn)]) {
    const facts = lessonFactsOf(notebook, choice, purpose.graph, stage, today);
    const items = facts.ok ? smallSet(facts.value, seed) : [];
    if (facts.ok && items.length > 0) return { facts: facts.value, lesson: null, items };
  }
  return null;
}

/** Two to read, two between, one beyond and one behind: ten minutes of talk. */
const smallSet = (facts: LessonFacts, seed: number): readonly TalkItem[] => {
  const { read, between, beyond, behind } = chooseQuestions(facts, seed);
  return [...read, ...between.slice(0, 2), ...beyond.slice(0, 1), ...behind].map((question) =>
    itemOf({ kind: 'asked', question }, null),
  );
};

/** Questions that children wrote themselves and this one has not answered, at most two. */
export const ownItems = (notebook: Notebook, person: PersonId | null): readonly TalkItem[] => {
  const children = notebook.ownQuestions.filter(({ takenBack }) => takenBack === null);
  const answered = answeredBy(notebook, person, { lesson: null, today: null });
  return children
    .map(({ level, text, answer = '' }) => itemOf({ kind: 'own', level, text, answer }, null))
    .filter(({ key }) => !answered.has(key))
    .slice(0, mostOwn);
};

const mostOwn = 2;

/**
 * The keys of the questions somebody has answered: in a lesson, or else on a day. With neither,
 * whenever it was.
 */
export const answeredBy = (
  { answers }: Pick<Notebook, 'answers'>,
  person: PersonId | null,
  where: { readonly lesson: LessonId | null; readonly today: CivilDay | null },
): ReadonlySet<string> =>
  new Set(
    answers
      .filter(({ takenBack, author }) => takenBack === null && author === person)
      .filter(({ lesson, day }) =>
        where.lesson !== null
          ? lesson === where.lesson
          : where.today === null || (lesson === undefined && day === where.today),
      )
      .flatMap(({ question }) => keyOfAnswer(question)),
  );

const keyOfAnswer = (sheet: Parameters<typeof keyOfSheet>[0]): readonly string[] => {
  const key = keyOfSheet(sheet);
  return key === null ? [] : [key];
};
