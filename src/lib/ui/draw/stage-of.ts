import type { Person, PersonId, Stage } from '#core/journal';

/** The stage of who writes, where that is a child; else of the first child; else grade 2. */
export function stageOf(people: ReadonlyMap<PersonId, Person>, author: PersonId | null): Stage {
  const writer = author === null ? undefined : people.get(author);
  if (writer?.role === 'child') return writer.stage;
  return [...people.values()].find(({ role }) => role === 'child')?.stage ?? 'grade-2';
}
