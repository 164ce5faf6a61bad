import { addDays, type CivilDay } from '#core/calendar';
import {
  cautionPlaces,
  cautionsAtReading,
  cautionsDue,
  mayBePutAway,
  type Caution,
  type CautionFacts,
  type CautionPlace,
} from '#core/lessons';
import type { Quantity } from '#core/journal';

/** A caution as the set-up page shows it: always there, with when it matters. */
export interface CautionHere {
  readonly caution: Caution;
  /** The moments to come that it is told at, beside the set-up itself. */
  readonly moments: readonly CautionPlace[];
  /** Until when it rests on the other pages; null while it does not. */
  readonly restsUntil: CivilDay | null;
  /** Whether it can be put away now: it is told elsewhere, and is neither sun nor thunder. */
  readonly mayRest: boolean;
}

/** All cautions of an investigation, the gravest first, as `cautionsDue` tells them at set-up. */
export function cautionsHere(
  quantity: Quantity,
  facts: Pick<CautionFacts, 'putAway' | 'today'>,
): readonly CautionHere[] {
  const { today, putAway } = facts;
  const toldAt = (place: CautionPlace): readonly Caution[] =>
    cautionsDue(place, quantity, { putAway: new Map(), today });
  const later = cautionPlaces.filter((place) => place !== 'set-up');
  const due = new Set(later.flatMap((place) => cautionsDue(place, quantity, facts)));
  return cautionsDue('set-up', quantity, facts).map((caution): CautionHere => {
    const moments = later.filter(
      (place) =>
        toldAt(place).includes(caution) ||
        (place === 'reading' && cautionsAtReading(quantity).includes(caution)),
    );
    const since = putAway.get(caution);
    const rests = moments.length > 0 && since !== undefined && !due.has(caution);
    return {
      ...{ caution, moments },
      restsUntil: rests ? addDays(since, restDays) : null,
      mayRest: moments.length > 0 && !rests && mayBePutAway(caution),
    };
  });
}

/** As long as `cautionsDue` lets one rest. */
const restDays = 7;
