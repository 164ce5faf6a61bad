import type { PersonId } from '#core/journal';
import type { RulerPair } from '#core/series';

/** The pairs of each who read, in the order of their first one: each person counts in their own way. */
export function pairsByAuthor(
  pairs: readonly RulerPair[],
): readonly { readonly author: PersonId | null; readonly pairs: readonly RulerPair[] }[] {
  const authors = [...new Set(pairs.map(({ author }) => author))];
  return authors.map((author) => ({
    author,
    pairs: pairs.filter((pair) => pair.author === author),
  }));
}
