import { differenceChoices, type DifferenceChoice } from '#core/series';
import { differenceWords } from './fair-test-words';

/** What a plan can name as the same in every pot. */
export const sameThings = ['seed', 'pot', 'soil', 'depth', 'water', 'light', 'place'] as const;
export type SameThing = (typeof sameThings)[number];

/** Everything that is to be the same when one thing differs. */
export const sameBeside = (different: string | null): readonly SameThing[] =>
  sameThings.filter((thing) => thing !== different);

export const isDifferenceChoice = (text: string): text is DifferenceChoice =>
  differenceChoices.some((choice) => choice === text);

/** The one difference as it is said: the word of a choice, or the family's own words. */
export const toldDifference = (different: string): string =>
  isDifferenceChoice(different) ? differenceWords[different] : different;
