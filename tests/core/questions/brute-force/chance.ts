/**
 * A small source of chance for made-up logs: the same numbers for the same seed. (Mulberry32, T.
 * Ettinger, public domain, from memory; the journals need no better one.)
 */
export interface Chance {
  /** A whole number from low to high, both included. */
  upTo(low: number, high: number): number;
  /** True in so many of a hundred. */
  percent(share: number): boolean;
  one<Item>(items: readonly Item[]): Item;
}

export const chanceOf = (seed: number): Chance => {
  let state = (seed * 2_654_435_761) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const upTo = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    upTo,
    percent: (share) => next() * 100 < share,
    one: (items) => items[upTo(0, items.length - 1)]!,
  };
};
