import type { CivilDay } from '#core/calendar';
import type { LeafColour, Notebook, SpecimenId, StemStand } from '#core/journal';
import type { Series } from '#core/series';

/** How one plant looked on one day; null for what was not written down. */
export interface LooksOfPlant {
  readonly leaves: number | null;
  readonly colour: LeafColour | null;
  readonly stands: StemStand | null;
}

export interface LooksOfDay {
  readonly day: CivilDay;
  readonly bySpecimen: ReadonlyMap<SpecimenId, LooksOfPlant>;
}

/**
 * The looks of some plants, day by day in order, for the days on which anything was written.
 * Leaves come from the readings, colour and standing from looks; of a day the last word counts.
 */
export function looksByDay(
  notebook: Pick<Notebook, 'looks'>,
  allSeries: readonly Series[],
): readonly LooksOfDay[] {
  const byDay = new Map<CivilDay, Map<SpecimenId, LooksOfPlant>>();
  const add = (day: CivilDay, specimen: SpecimenId, part: Partial<LooksOfPlant>): void => {
    const plants = byDay.get(day) ?? new Map<SpecimenId, LooksOfPlant>();
    byDay.set(day, plants.set(specimen, { ...(plants.get(specimen) ?? nothing), ...part }));
  };
  for (const { specimen, days } of allSeries) {
    for (const { day, readings } of days) {
      const leaves = readings.findLast((reading) => reading.leaves !== undefined)?.leaves;
      if (leaves !== undefined) add(day, specimen.id, { leaves });
    }
    for (const look of notebook.looks.get(specimen.id) ?? []) {
      if (look.takenBack !== null) continue;
      add(look.day, specimen.id, {
        ...(look.colour === undefined ? {} : { colour: look.colour }),
        ...(look.stands === undefined ? {} : { stands: look.stands }),
      });
    }
  }
  return [...byDay]
    .map(([day, bySpecimen]) => ({ day, bySpecimen }))
    .sort((one, other) => (one.day < other.day ? -1 : 1));
}

const nothing: LooksOfPlant = { leaves: null, colour: null, stands: null };
