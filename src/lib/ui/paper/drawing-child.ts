import type { Notebook, Person, PersonId } from '#core/journal';

/** Who will draw on a sheet nobody has drawn on yet: the child who writes now, else the first. */
export function drawingChild(
  { people }: Pick<Notebook, 'people'>,
  author: PersonId | null,
): Person | undefined {
  const writer = author === null ? undefined : people.get(author);
  if (writer?.role === 'child') return writer;
  return [...people.values()].find(({ role }) => role === 'child');
}
