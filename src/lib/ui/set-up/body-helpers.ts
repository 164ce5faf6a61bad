import { helperLengths, type HelperLength } from '#core/journal';

/** A helper length of one's own body: everybody has their own. A ruler is as long for all. */
export type BodyHelper = Exclude<HelperLength, 'ruler'>;

export const bodyHelpers = helperLengths.filter(
  (helper): helper is BodyHelper => helper !== 'ruler',
);
