import type { Series } from '#core/series';
import type { CountTable } from './graph-table';
import { sortedThings, type SortedThings } from './sorted-things';
import type { TableChoice } from './table-choice';
import { countTableOf, tallyOf, type Tally } from './tally';

export { namesOf } from './sorted-things';

/**
 * Tables of how many of each kind, out of logs that are cut to their days already. None of these
 * is part of the public door.
 */
export const countTable = (
  { source, mostKinds }: Pick<TableChoice, 'source' | 'mostKinds'>,
  logs: readonly Series[],
): CountTable | null => {
  const sorted = sortedThings(source, logs);
  return sorted ? countTableOf(countedIn(source), tallied(sorted), mostKinds) : null;
};

/** What a table of counts counts, in the plural. */
export const countedIn = (source: TableChoice['source']): string =>
  source === 'specimen-readings' ? 'readings' : 'days';

/** How many days a tally counts, or how many readings: those of two kinds once. */
export const thingsCounted = (source: TableChoice['source'], logs: readonly Series[]): number =>
  new Set(sortedThings(source, logs)?.things.map(({ thing }) => thing)).size;

const tallied = ({ kinds, things }: SortedThings): Tally =>
  tallyOf(
    kinds,
    things.map(({ kind, thing }) => [kind, thing] as const),
  );
