import { drawRight, type Drawing, type DrawRightOptions, type RightGraph } from '#core/graphs';
import { goldenLogs, goldenRight } from './golden-logs';

export type { Drawing };

/** Every right drawing of a right graph that a test looks at: both ways round. */
export const bothWays = (right: RightGraph, options: DrawRightOptions = {}): readonly Drawing[] =>
  [true, false].map((upright) => drawRight(right, { ...options, upright }));

/** The right graphs of the golden tables of one kind. */
export const goldenOf = (graph: RightGraph['kind']): readonly (readonly [string, RightGraph])[] =>
  goldenLogs
    .filter((log) => log.graph === graph)
    .map(({ name }) => [name, goldenRight(name)] as const);

/** The ids of the mistakes found, each once, in the order they are told. */
export const idsOf = (look: { readonly mistakes: readonly { readonly id: string }[] }) => [
  ...new Set(look.mistakes.map(({ id }) => id)),
];

/** A drawing with one item of a list changed. */
export const changed = <Item>(list: readonly Item[], index: number, part: Partial<Item>): Item[] =>
  list.map((item, each) => (each === index ? { ...item, ...part } : item));

/** A list without the item at an index. */
export const without = <Item>(list: readonly Item[], index: number): Item[] =>
  list.filter((_, each) => each !== index);
