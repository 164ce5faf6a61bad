import type { CivilDay } from '#core/calendar';
import { changesBetween } from '#core/growth';
import type { Measured } from '#core/measure';
import { dayAmount, type Series, type SeriesDay } from '#core/series';
import type { TableSource } from './table-choice';
import { grewKinds, stateKinds, wetKinds } from './table-words';

/** One thing that is counted: a day, or a reading. */
export interface SortedThing {
  /** Its own name: what has the same one is counted once in a kind. */
  readonly thing: string;
  readonly kind: string;
  readonly day: CivilDay;
  /** What the log says of it: a word, or what was read. */
  readonly says: string | Amount;
  /** Whose it is, where that is what it is sorted by. */
  readonly of?: string;
  /** Where two days are compared: the earlier one, and what was read then. */
  readonly before?: { readonly day: CivilDay; readonly read: Amount };
}

/** What was read, without the words it was written in. */
export type Amount = Omit<Measured, 'text'>;

/** The kinds that have a row though nothing came of them, and everything that is sorted. */
export interface SortedThings {
  readonly kinds: readonly string[];
  readonly things: readonly SortedThing[];
}

/**
 * What a table of counts counts, each with its kind: the table and the cards a child sorts are
 * both made of it, so that they always agree. Undefined for a source that counts nothing. Not part
 * of the public door.
 */
export const sortedThings = (
  source: TableSource,
  logs: readonly Series[],
): SortedThings | undefined => thingsBySource[source]?.(logs);

type Sorting = (logs: readonly Series[]) => SortedThings;

const ofEachDay =
  (
    kinds: readonly string[],
    thingsOf: (day: SeriesDay, series: Series) => readonly SortedThing[],
  ): Sorting =>
  (logs) => ({
    kinds,
    things: logs.flatMap((series) => series.days.flatMap((day) => thingsOf(day, series))),
  });

const thingOf = (
  { day }: SeriesDay,
  kind: string,
  says: SortedThing['says'] = kind,
): SortedThing => ({ thing: day, day, kind, says });

/** A word of the plan that never came has its row: did any kind happen no times? */
const kindDays: Sorting = (logs) =>
  ofEachDay(
    logs.flatMap(({ investigation }) => investigation.kinds),
    (day) => day.words.map(({ word }) => thingOf(day, word)),
  )(logs);

const weatherDays = ofEachDay([], (day) =>
  day.readings.flatMap(({ weather }) => (weather ? [thingOf(day, weather)] : [])),
);

/** Only days read by themselves: nobody knows which days of a total of several were wet. */
const wetDays = ofEachDay([wetKinds.dry, wetKinds.wet], (day, series) => {
  const rain = dayAmount(series, day);
  if (day.state === 'trace') return [thingOf(day, wetKinds.trace)];
  if (!rain || day.readings.some(({ spanDays }) => spanDays > 1)) return [];
  return [thingOf(day, rain.exact > 0 ? wetKinds.wet : wetKinds.dry, rain)];
});

/** Only from one day to the very next: over a longer gap, nobody knows which day it grew on. */
const growthDays: Sorting = (logs) => ({
  kinds: [grewKinds.grew, grewKinds.same],
  things: logs.flatMap(({ points }) =>
    changesBetween(points).flatMap(({ gapDays, exact, from, to }) => {
      if (gapDays !== 1) return [];
      const kind = exact > 0 ? grewKinds.grew : exact === 0 ? grewKinds.same : grewKinds.less;
      const before = { day: from.day, read: from };
      return [{ thing: to.day, day: to.day, kind, says: to, before }];
    }),
  ),
});

/** Days that were planned or written for; a free day nobody wrote for is none of them. */
const stateDays: Sorting = (logs) => {
  const { things } = ofEachDay([], (day, series) => {
    if (day.state === 'word' || (day.state === 'blank' && !day.planned)) return [];
    return [thingOf(day, stateKinds[day.state], dayAmount(series, day) ?? undefined)];
  })(logs);
  const found = new Set(things.map(({ kind }) => kind));
  return { kinds: Object.values(stateKinds).filter((kind) => found.has(kind)), things };
};

const specimenReadings: Sorting = (logs) => {
  const names = namesOf(logs);
  return {
    kinds: names,
    things: logs.flatMap(({ days }, index) => {
      const name = names[index] as string;
      return days.flatMap(({ day, readings }) =>
        readings.map(({ id, counted }) => ({
          ...{ thing: id, day, kind: name, of: name, says: counted },
        })),
      );
    }),
  };
};

/** Two specimens of one name are told apart by a number. Not part of the public door. */
export const namesOf = (logs: readonly Series[]): readonly string[] => {
  const names = logs.map(({ specimen }) => specimen.name);
  return names.map((name, index) =>
    names.indexOf(name) === names.lastIndexOf(name)
      ? name
      : `${name} (${names.slice(0, index + 1).filter((each) => each === name).length})`,
  );
};

const thingsBySource: Readonly<Partial<Record<TableSource, Sorting>>> = {
  'kind-days': kindDays,
  'weather-days': weatherDays,
  'wet-days': wetDays,
  'growth-days': growthDays,
  'state-days': stateDays,
  'specimen-readings': specimenReadings,
};
