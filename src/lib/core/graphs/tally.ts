import type { CountTable } from './graph-table';
import { togetherKinds } from './table-words';

/** The things counted for each kind, each known by a name so that none is counted twice. */
export type Tally = ReadonlyMap<string, ReadonlySet<string>>;

/** A thing and the kind it is of. */
export type Sorted = readonly [kind: string, thing: string];

/**
 * Sorts things into kinds: pairs of a kind and the name of a thing. Kinds given beforehand come
 * first and stay where nothing was sorted into them. Not part of the public door.
 */
export const tallyOf = (kinds: readonly string[], sorted: readonly Sorted[]): Tally => {
  const tally = new Map<string, Set<string>>(kinds.map((kind) => [kind, new Set()]));
  for (const [kind, thing] of sorted) {
    const things = tally.get(kind);
    if (things) things.add(thing);
    else tally.set(kind, new Set([thing]));
  }
  return tally;
};

/**
 * The table of a tally. Where it has more kinds than `most`, the smallest are put together as
 * "other", last; of kinds that came equally often the earlier keeps its row. A thing that is of
 * two of them is counted once. Not part of the public door.
 */
export const countTableOf = (counted: string, tally: Tally, most: number | null): CountTable => {
  const kinds = [...tally].map(([label, things]) => ({ label, things, count: things.size }));
  if (most === null || kinds.length <= most) {
    return { form: 'counts', counted, rows: kinds.map(({ label, count }) => ({ label, count })) };
  }
  const largest = new Set(kinds.toSorted((one, two) => two.count - one.count).slice(0, most - 1));
  const kept = kinds.filter((kind) => largest.has(kind));
  const rest = kinds.filter((kind) => !largest.has(kind));
  const label = togetherKinds.find((each) => !kept.some((kind) => kind.label === each));
  const together = {
    label: label ?? rest.map((kind) => kind.label).join(', '),
    count: new Set(rest.flatMap(({ things }) => [...things])).size,
  };
  const rows = [...kept.map(({ label, count }) => ({ label, count })), together];
  return { form: 'counts', counted, rows };
};
