import * as v from 'valibot';
import type { CivilDay } from '#core/calendar';
import type { PersonId } from '#core/journal';
import { reviewPicks, type ReviewPick } from '#core/lessons';
import type { DeviceMemory } from '#notebook';

/** Where a review was left: what was skipped, tried and chosen. Losing it loses no answer. */
export interface KeptPlace {
  /** Places that were skipped or gone past, by their key. */
  readonly passed: readonly string[];
  /** Items that were tried once and not found yet. */
  readonly tried: readonly string[];
  /** What was chosen and is not answered yet. */
  readonly picked: { readonly pick: ReviewPick; readonly round: number } | null;
}

export const emptyPlace: KeptPlace = { passed: [], tried: [], picked: null };

/** Reads the place of a day and a person; an empty one where there is none, or it is of another. */
export function readPlace(
  memory: Pick<DeviceMemory, 'read'>,
  day: CivilDay,
  person: PersonId | null,
): KeptPlace {
  try {
    const kept = v.safeParse(placeSchema, JSON.parse(memory.read(memoryKey) ?? 'null'));
    if (!kept.success || kept.output.day !== day || kept.output.person !== person)
      return emptyPlace;
    const { passed, tried, picked } = kept.output;
    return { passed, tried, picked };
  } catch {
    return emptyPlace;
  }
}

export const writePlace = (
  memory: Pick<DeviceMemory, 'write'>,
  day: CivilDay,
  person: PersonId | null,
  place: KeptPlace,
): void => memory.write(memoryKey, JSON.stringify({ day, person, ...place }));

const memoryKey = 'review-place';
const names = v.array(v.string());
const placeSchema = v.object({
  ...{ day: v.string(), person: v.nullable(v.string()), passed: names, tried: names },
  picked: v.nullable(v.object({ pick: v.picklist(reviewPicks), round: v.number() })),
});
