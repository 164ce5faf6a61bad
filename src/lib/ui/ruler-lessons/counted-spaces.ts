import type { Space } from './piece-of-ruler';

export interface CountedSpaces {
  /** Every space, with what is said while counting it, or null where it was not tapped. */
  readonly spaces: readonly { readonly space: Space; readonly said: string | null }[];
  /** All of them together, in words: empty before the first tap. */
  readonly total: string;
}

/**
 * Counts the tapped spaces from left to right, whether or not the strip lies there: the child
 * counts, the page only keeps up. A space that the strip covers in part is "a part", not one.
 */
export function countedSpaces(spaces: readonly Space[], tapped: readonly number[]): CountedSpaces {
  const taken = spaces.filter(({ fromNumber }) => tapped.includes(fromNumber));
  const wholes = taken.filter(({ covered }) => covered !== 'part');
  const said = (space: Space): string | null => {
    if (!taken.includes(space)) return null;
    return space.covered === 'part' ? 'part' : String(wholes.indexOf(space) + 1);
  };
  const parts = [
    ...(wholes.length > 0 ? [`${wholes.length} ${wholes.length === 1 ? 'space' : 'spaces'}`] : []),
    ...(taken.length > wholes.length ? ['a part'] : []),
  ];
  return {
    spaces: spaces.map((space) => ({ space, said: said(space) })),
    total: parts.join(' and '),
  };
}
