/** What a key does at a column of the board. */
export type ColumnDeed =
  'next' | 'back' | 'first' | 'last' | 'raise' | 'lower' | 'halve' | 'clear' | 'put';

/**
 * The deed of a key, or null where the key is the browser's own. Arrows go the way they point:
 * along the row of columns they move on, along a column they raise and lower.
 */
export function columnDeed(key: string, upright: boolean): ColumnDeed | null {
  const arrows = upright ? arrowsUpright : arrowsLying;
  return arrows[key] ?? otherKeys[key] ?? null;
}

type Keys = Readonly<Record<string, ColumnDeed | undefined>>;

const arrowsUpright: Keys = {
  ...{ ArrowRight: 'next', ArrowLeft: 'back', ArrowUp: 'raise', ArrowDown: 'lower' },
};
const arrowsLying: Keys = {
  ...{ ArrowDown: 'next', ArrowUp: 'back', ArrowRight: 'raise', ArrowLeft: 'lower' },
};
const otherKeys: Keys = {
  ...{ Home: 'first', End: 'last', Delete: 'clear', Enter: 'put', ' ': 'put' },
  ...{ '+': 'raise', '=': 'raise', '-': 'lower', '/': 'halve' },
};
