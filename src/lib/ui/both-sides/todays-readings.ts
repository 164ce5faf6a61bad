import type { CivilDay } from '#core/calendar';
import type { PersonId, Reading } from '#core/journal';
import type { RulerPair, Series } from '#core/series';

/** What who writes has already read today: the last pair, and the last reading without one. */
export interface ReadToday {
  readonly pair: RulerPair | null;
  readonly alone: Reading | null;
}

/**
 * Readings of other people are left out, so that each reads for themselves; what nobody signed is
 * anybody’s. A shadow that was read alone has moved on: its other side cannot be read any more.
 */
export function readToday(
  series: Series,
  pairs: readonly RulerPair[],
  today: CivilDay,
  author: PersonId | null,
): ReadToday {
  const isOurs = (by: PersonId | null): boolean => author === null || by === null || by === author;
  const readings = series.days.find(({ day }) => day === today)?.readings ?? [];
  const pair = pairs.findLast((each) => each.day === today && isOurs(each.author)) ?? null;
  const stays = series.investigation.quantity !== 'shadow';
  const alone =
    stays && pair === null ? readings.findLast((each) => isOurs(each.author)) : undefined;
  return { pair, alone: alone ?? null };
}
