import type { CivilDay } from '#core/calendar';
import type { PersonId } from '#core/journal';

/**
 * The seed of a person's review on a day; `salt` tells the places of the page apart. Nobody is a
 * person of its own. Source: the FNV-1a hash of 32 bits (G. Fowler, L. C. Noll, K.-P. Vo), over
 * the characters' code units.
 * @example
 * reviewSeed(null, '2026-03-09', 'sum') === reviewSeed(null, '2026-03-09', 'sum') // => true
 * reviewSeed(null, '2026-03-09', 'sum') === reviewSeed(null, '2026-03-10', 'sum') // => false
 */
export const reviewSeed = (person: PersonId | null, day: CivilDay, salt: string): number => {
  let hash = 0x811c9dc5;
  for (const character of `${person ?? ''} ${day} ${salt}`) {
    hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193);
  }
  return hash >>> 0;
};
