import type { Notebook, Person, PersonId } from '#core/journal';

/** The children of the notebook, in the order they came in. */
export const childrenIn = ({ people }: Pick<Notebook, 'people'>): readonly Person[] =>
  [...people.values()].filter(({ role }) => role === 'child');

/** The child that is asked for, or the one who writes now, or the first. */
export const childOf = (
  notebook: Pick<Notebook, 'people'>,
  asked: PersonId | null,
  author: PersonId | null,
): Person | undefined => {
  const children = childrenIn(notebook);
  const named = (wanted: PersonId | null) => children.find(({ id }) => id === wanted);
  return named(asked) ?? named(author) ?? children[0];
};
