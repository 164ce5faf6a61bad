import type { ChildTally, TallyCard } from './child-tally';
import type { SortCard } from './sort-cards';

/** What a child who sorts does next. */
export type SortingStep =
  /** Put this card to a kind. */
  | { readonly kind: 'sort'; readonly index: number }
  /** Look once more at a card that stands elsewhere than in the log. */
  | { readonly kind: 'look-again'; readonly index: number }
  /** All is sorted, and this many cards were kept elsewhere than in the log. */
  | { readonly kind: 'done'; readonly keptOwn: number };

/**
 * A tally to go on with, over the cards of the log as it is now: what was sorted before keeps its
 * place where the log still says the same and the kind still has a row; all else is open.
 * @param before the tally that was left half done; null to begin one
 * @example
 * tallyToSort([], ['sun', 'rain'], null) // => { kinds: ['sun', 'rain'], cards: [], use: 'sorting' }
 */
export const tallyToSort = (
  cards: readonly SortCard[],
  kinds: readonly string[],
  before: ChildTally | null,
): ChildTally => ({
  ...{ kinds, use: 'sorting' },
  cards: cards.map(({ thing, day, says }) => {
    const known = before?.cards.find((card) => card.thing === thing && card.says === says);
    const picks = known?.picks.every((kind) => kinds.includes(kind)) ? known.picks : [];
    return { thing, day, says, picks };
  }),
});

/**
 * What comes next: the first card not sorted yet; then, once, each card that was put elsewhere
 * than the log has it; then nothing. A second look that changes nothing is an answer too: the
 * child keeps its own.
 * @param cards the cards of the log, one for each card of the tally
 * @example
 * sortingStep({ kinds: ['sun'], cards: [], use: 'sorting' }, []) // => { kind: 'done', keptOwn: 0 }
 */
export const sortingStep = (tally: ChildTally, cards: readonly SortCard[]): SortingStep => {
  const open = tally.cards.findIndex(({ picks }) => picks.length === 0);
  if (open >= 0) return { kind: 'sort', index: open };
  const differs = ({ picks }: TallyCard, index: number): boolean =>
    picks.at(-1) !== cards[index]?.kind;
  const again = tally.cards.findIndex(
    (card, index) => card.picks.length === 1 && differs(card, index),
  );
  if (again >= 0) return { kind: 'look-again', index: again };
  return { kind: 'done', keptOwn: tally.cards.filter(differs).length };
};

/**
 * Puts a card to a kind: the first time, or after a second look. A card that is not there changes
 * nothing.
 * @example
 * withPick({ kinds: ['sun'], use: 'sorting', cards: [{ thing: '2026-03-02', day: '2026-03-02', says: 'sun', picks: [] }] }, 0, 'sun').cards[0].picks // => ['sun']
 */
export const withPick = (tally: ChildTally, index: number, kind: string): ChildTally => ({
  ...tally,
  cards: tally.cards.map((card, at) =>
    at === index ? { ...card, picks: [...card.picks.slice(0, 1), kind] } : card,
  ),
});

/**
 * Takes the last pick back: the last second look, else the last card that was sorted. A tally
 * without any pick stays as it is.
 * @example
 * withoutLastPick({ kinds: ['sun'], use: 'sorting', cards: [{ thing: '2026-03-02', day: '2026-03-02', says: 'sun', picks: ['sun'] }] }).cards[0].picks // => []
 */
export const withoutLastPick = (tally: ChildTally): ChildTally => {
  const looked = tally.cards.findLastIndex(({ picks }) => picks.length > 1);
  const last = looked >= 0 ? looked : tally.cards.findLastIndex(({ picks }) => picks.length > 0);
  return {
    ...tally,
    cards: tally.cards.map((card, at) =>
      at === last ? { ...card, picks: card.picks.slice(0, -1) } : card,
    ),
  };
};
