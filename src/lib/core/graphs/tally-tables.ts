import { changesBetween } from '#core/growth';
import type { Series } from '#core/series';
import type { CountTable } from './graph-table';
import type { TableChoice } from './table-choice';
import { grewKinds, stateKinds, wetKinds } from './table-words';
import { countTableOf, tallyOf, type Sorted, type Tally } from './tally';

/**
 * Tables of how many of each kind, out of logs that are cut to their days already. None of these
 * is part of the public door.
 */
export const countTable = (
  { source, mostKinds }: Pick<TableChoice, 'source' | 'mostKinds'>,
  logs: readonly Series[],
): CountTable | null => {
  const tally = tallyBySource[source]?.(logs);
  return tally
    ? countTableOf(source === 'specimen-readings' ? 'readings' : 'days', tally, mostKinds)
    : null;
};

/** How many days a tally counts, or how many readings: those of two kinds once. */
export const thingsCounted = (source: TableChoice['source'], logs: readonly Series[]): number => {
  const tally = tallyBySource[source]?.(logs) ?? new Map<string, ReadonlySet<string>>();
  return new Set([...tally.values()].flatMap((things) => [...things])).size;
};

/** A word of the plan that never came has its row: did any kind happen no times? */
const kindDays = (logs: readonly Series[]): Tally =>
  tallyOf(
    logs.flatMap(({ investigation }) => investigation.kinds),
    logs.flatMap(({ days }) =>
      days.flatMap(({ day, words }) => words.map(({ word }) => [word, day] as const)),
    ),
  );

const weatherDays = (logs: readonly Series[]): Tally =>
  tallyOf(
    [],
    logs.flatMap(({ days }) =>
      days.flatMap(({ day, readings }) =>
        readings.flatMap(({ weather }) => (weather ? [[weather, day] as const] : [])),
      ),
    ),
  );

/** Only days read by themselves: nobody knows which days of a total of several were wet. */
const wetDays = (logs: readonly Series[]): Tally =>
  tallyOf(
    [wetKinds.dry, wetKinds.wet],
    logs.flatMap(({ days }) =>
      days.flatMap(({ day, state, readings }): readonly Sorted[] => {
        if (state === 'trace') return [[wetKinds.trace, day]];
        if (state !== 'number' || readings.some(({ spanDays }) => spanDays > 1)) return [];
        const isWet = readings.some(({ counted }) => counted.exact > 0);
        return [[isWet ? wetKinds.wet : wetKinds.dry, day]];
      }),
    ),
  );

/** Only from one day to the very next: over a longer gap, nobody knows which day it grew on. */
const growthDays = (logs: readonly Series[]): Tally =>
  tallyOf(
    [grewKinds.grew, grewKinds.same],
    logs.flatMap(({ points }) =>
      changesBetween(points).flatMap(({ gapDays, exact, to }) => {
        if (gapDays !== 1) return [];
        const kind = exact > 0 ? grewKinds.grew : exact === 0 ? grewKinds.same : grewKinds.less;
        return [[kind, to.day] as const];
      }),
    ),
  );

/** Days that were planned or written for; a free day nobody wrote for is none of them. */
const stateDays = (logs: readonly Series[]): Tally => {
  const sorted = logs.flatMap(({ days }) =>
    days.flatMap(({ day, state, planned }): readonly Sorted[] => {
      if (state === 'word' || (state === 'blank' && !planned)) return [];
      return [[stateKinds[state], day]];
    }),
  );
  const found = new Set(sorted.map(([kind]) => kind));
  return tallyOf(
    Object.values(stateKinds).filter((kind) => found.has(kind)),
    sorted,
  );
};

const specimenReadings = (logs: readonly Series[]): Tally =>
  tallyOf(
    namesOf(logs),
    logs.flatMap(({ points }, index) =>
      points.map(({ reading }) => [namesOf(logs)[index] as string, reading] as const),
    ),
  );

/** Two specimens of one name are told apart by a number. Not part of the public door. */
export const namesOf = (logs: readonly Series[]): readonly string[] => {
  const names = logs.map(({ specimen }) => specimen.name);
  return names.map((name, index) =>
    names.indexOf(name) === names.lastIndexOf(name)
      ? name
      : `${name} (${names.slice(0, index + 1).filter((each) => each === name).length})`,
  );
};

const tallyBySource: Readonly<
  Partial<Record<TableChoice['source'], (logs: readonly Series[]) => Tally>>
> = {
  'kind-days': kindDays,
  'weather-days': weatherDays,
  'wet-days': wetDays,
  'growth-days': growthDays,
  'state-days': stateDays,
  'specimen-readings': specimenReadings,
};
