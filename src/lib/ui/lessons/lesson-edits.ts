import type { EntryDraft, LessonId } from '#core/journal';
import {
  lessonPlanOf,
  type Lesson,
  type LessonBlock,
  type LessonQuestion,
  type OwnLessonQuestion,
} from '#core/lessons';
import type { AskedQuestion, Level } from '#core/questions';

/** One change of a lesson: only what was changed, so that another window's changes stay. */
export interface LessonEdit {
  /** Null: the plan's own name again. */
  readonly title?: string | null;
  /** Null: the plan's own words again; '' leaves the block out. */
  readonly texts?: Readonly<Partial<Record<LessonBlock, string | null>>>;
  readonly questions?: readonly AskedQuestion[];
  readonly own?: readonly OwnLessonQuestion[];
}

export const levelOf = (each: LessonQuestion): Level =>
  each.kind === 'own' ? each.level : each.question.level;

export const editDraft = (lesson: LessonId, edit: LessonEdit): EntryDraft => ({
  ...{ kind: 'lesson-changed', lesson },
  to: { ...edit },
});

/** The questions a lesson keeps: those it asks and those that were withdrawn. */
const keptOf = ({ questions, withdrawn }: Lesson): readonly AskedQuestion[] => [
  ...askedOf({ questions }),
  ...withdrawn,
];

const askedOf = ({ questions }: Pick<Lesson, 'questions'>): readonly AskedQuestion[] =>
  questions.flatMap((each) => (each.kind === 'asked' ? [each.question] : []));

/** Without a question, or with another in its place. */
export const replaced = (
  lesson: Lesson,
  question: AskedQuestion,
  others: readonly AskedQuestion[],
): LessonEdit => ({
  questions: keptOf(lesson).flatMap((each) => (keyOf(each) === keyOf(question) ? others : [each])),
});

export const withOwn = ({ changes }: Lesson, own: OwnLessonQuestion): LessonEdit => ({
  own: [...changes.own, own],
});

/** Without a question of the grown-up's own; one of several that are alike. */
export const withoutOwn = ({ changes }: Lesson, own: OwnLessonQuestion): LessonEdit => {
  const at = changes.own.findIndex(
    ({ level, text, answer }) => level === own.level && text === own.text && answer === own.answer,
  );
  return { own: changes.own.filter((_, index) => index !== at) };
};

/**
 * Another set of the log's questions, chosen with the next seeds; the grown-up's own stay. Null
 * where the log has no other set: twenty seeds in a row chose the same.
 */
export const anotherSet = (lesson: Lesson): LessonEdit | null => {
  const { record, purpose, facts } = lesson;
  const now = namesOf(askedOf(lesson));
  for (let further = 1; further <= 20; further += 1) {
    const seed = record.seed + record.changes.length + further;
    const plan = lessonPlanOf(facts, { purpose: purpose.id, minutes: record.minutes, seed });
    const { read, between, beyond, behind } = plan.questions;
    const questions = [...read, ...between, ...beyond, ...behind];
    if (namesOf(questions) !== now) return { questions };
  }
  return null;
};

const namesOf = (questions: readonly AskedQuestion[]): string =>
  questions.map(keyOf).toSorted().join('\n');

/** What one question has in common with itself asked again: slips may differ. */
const keyOf = ({ template, blanks, answer }: AskedQuestion): string =>
  JSON.stringify([template, blanks, answer]);
