import type { CivilDay } from '#core/calendar';
import type {
  EntryDraft,
  EntryId,
  EvidenceLevel,
  LessonId,
  Notebook,
  Person,
  PersonId,
  QuestionAnswered,
} from '#core/journal';
import { skills } from '#core/lessons';
import type { AskedQuestion } from '#core/questions';

/** The children of the notebook, the one the lesson is likely for first. */
export const childrenOf = (
  { people }: Pick<Notebook, 'people'>,
  first: PersonId | null,
): readonly Person[] => {
  const children = [...people.values()].filter(({ role }) => role === 'child');
  return [
    ...children.filter(({ id }) => id === first),
    ...children.filter(({ id }) => id !== first),
  ];
};

/** What was noted today about a question of a lesson, about one child, and still stands. */
export const noteOf = (
  { answers, evidence }: Pick<Notebook, 'answers' | 'evidence'>,
  { lesson, question, person, day }: AnswerNote,
): QuestionAnswered | undefined => {
  const asked = JSON.stringify(question);
  return answers.findLast(
    (each) =>
      each.lesson === lesson &&
      each.day === day &&
      each.takenBack === null &&
      // Answers of the child's own stand with their words.
      each.answer === '' &&
      JSON.stringify(each.question) === asked &&
      (person === null ||
        evidence.some(
          (note) => note.answer === each.id && note.person === person && note.takenBack === null,
        )),
  );
};

/** Takes a note back, with what was said about whose it is. */
export const withoutNote = (
  { evidence }: Pick<Notebook, 'evidence'>,
  note: QuestionAnswered | undefined,
): readonly EntryDraft[] =>
  note === undefined
    ? []
    : [...evidence.filter((each) => each.answer === note.id && each.takenBack === null), note].map(
        ({ id }) => ({ kind: 'entry-taken-back', entry: id }),
      );

/**
 * How an answer went: the question as it was asked, and for each skill it shows, whose it is. The
 * grown-up writes, so the child is named.
 */
export const noteDrafts = (
  id: EntryId,
  { lesson, question, person, day }: AnswerNote,
  how: EvidenceLevel,
): readonly (EntryDraft & { readonly id?: EntryId })[] => [
  { ...{ id, kind: 'question-answered', lesson, day, how, answer: '' }, question: { ...question } },
  ...(person === null
    ? []
    : skills
        .filter(({ questions }) => questions.includes(question.template))
        .map((skill) => ({
          ...{ kind: 'evidence-noted' as const, person, day, how, answer: id },
          skill: skill.id,
        }))),
];

/** What a note is about. The person is null where the notebook has no child in it. */
export interface AnswerNote {
  readonly lesson: LessonId;
  readonly question: AskedQuestion;
  readonly person: PersonId | null;
  readonly day: CivilDay;
}
