import type { LessonId, Notebook, OwnQuestion, PersonId } from '#core/journal';

/** After so many lessons a child writes questions of its own. (Common practice, no source.) */
const lessonsFirst = 3;

/**
 * Which questions of their own a child is invited to write: one to read and one between, once
 * three lessons were given, and anew with every lesson after that.
 */
export function ownTurn(
  { lessons, ownQuestions }: Pick<Notebook, 'lessons' | 'ownQuestions'>,
  person: PersonId | null,
): OwnTurn | null {
  const given = [...lessons.values()].filter(({ givenOn }) => givenOn.length > 0);
  const last = given.at(-1);
  if (given.length < lessonsFirst || !last) return null;
  const written = ownQuestions.filter(
    ({ author, takenBack, lesson }) =>
      takenBack === null && author === person && lesson === last.id,
  );
  const level = (['read', 'between'] as const).find(
    (each) => !written.some((question) => question.level === each),
  );
  return level ? { level, lesson: last.id } : null;
}

export interface OwnTurn {
  readonly level: OwnQuestion['level'];
  readonly lesson: LessonId;
}
