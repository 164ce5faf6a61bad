import { systemOf } from '#core/measure';
import type { Hand, Notebook, PersonId, SpecimenId, Stage } from '#core/journal';
import type { UnitFamily } from '#core/lessons';

/** How a ruler lesson suits who takes it. */
export interface LessonSettings {
  readonly stage: Stage;
  readonly hand: Hand;
  readonly family: UnitFamily;
}

/**
 * Stage and hand of who writes, where that is a child; else of the first child; else a
 * right-handed second grader. Inches or centimetres as in the open log; inches where there is none.
 */
export function lessonSettings(
  notebook: Notebook,
  author: PersonId | null,
  specimen: SpecimenId | null,
): LessonSettings {
  const people = [...notebook.people.values()];
  const child =
    people.find(({ id, role }) => id === author && role === 'child') ??
    people.find(({ role }) => role === 'child');
  const investigation = specimen && notebook.specimens.get(specimen)?.investigation;
  const unit = investigation ? notebook.investigations.get(investigation)?.unit : undefined;
  return {
    stage: child?.stage ?? 'grade-2',
    hand: child?.hand ?? 'right',
    family: unit !== undefined && systemOf(unit) === 'metric' ? 'centimetres' : 'inches',
  };
}
