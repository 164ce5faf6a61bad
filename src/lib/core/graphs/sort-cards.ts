import { formatDay, type CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { formatExact } from '#core/measure';
import { chosenSeries } from './chosen-series';
import type { CountTable } from './graph-table';
import { sortedThings, type Amount, type SortedThing } from './sorted-things';
import type { TableChoice } from './table-choice';

/** One thing a child sorts before counting: a day or a reading, and what the log says of it. */
export interface SortCard {
  /** Its own name in the log: the day, or the reading. */
  readonly thing: string;
  readonly day: CivilDay;
  /** The day as a child reads it. */
  readonly label: string;
  readonly says: string;
  /** Two heights to compare, the day before first: each as a share of the taller one. Else none. */
  readonly strips: readonly SortStrip[];
  /** The row of the log's table it belongs to. */
  readonly kind: string;
}

export interface SortStrip {
  readonly label: string;
  readonly says: string;
  /** From 0 to 1. */
  readonly share: number;
}

/**
 * The days (or readings) behind a table of counts, as cards to be sorted into its kinds one by
 * one, in the order of the days: sorting first is what makes a table understood (Garcia-Mila et
 * al. 2014, Mathematical Thinking and Learning 16(3)). For each row there are as many cards as the
 * table counts. None for a table that counts nothing.
 * @param today the day it is where the family is
 * @example
 * sortCards({ source: 'growth-days', specimens: [], from: '2026-03-02', to: '2026-03-10' }, { form: 'counts', counted: 'days', rows: [] }, foldEntries([]), '2026-03-10') // => []
 */
export function sortCards(
  choice: Pick<TableChoice, 'source' | 'specimens' | 'from' | 'to'>,
  table: CountTable,
  notebook: Notebook,
  today: CivilDay,
): readonly SortCard[] {
  const sorted = sortedThings(choice.source, chosenSeries(choice, notebook, today));
  const labels = table.rows.map(({ label }) => label);
  const together = labels.at(-1) ?? '';
  const cardByKey = new Map<string, SortCard>();
  for (const thing of sorted?.things ?? []) {
    const kind = labels.includes(thing.kind) ? thing.kind : together;
    const key = JSON.stringify([thing.thing, kind]);
    const known = cardByKey.get(key);
    cardByKey.set(key, known ? alsoSaying(known, thing) : cardOf(thing, kind));
  }
  return [...cardByKey.values()].toSorted((one, other) =>
    one.day < other.day ? -1 : one.day > other.day ? 1 : 0,
  );
}

const cardOf = (thing: SortedThing, kind: string): SortCard => ({
  ...{ thing: thing.thing, day: thing.day, label: formatDay(thing.day, 'short') },
  ...{ says: saysOf(thing), strips: stripsOf(thing), kind },
});

/** A day with two of the kinds that are put together is one card that says both. */
const alsoSaying = (card: SortCard, thing: SortedThing): SortCard => {
  const says = saysOf(thing);
  return card.says.split(', ').includes(says) ? card : { ...card, says: `${card.says}, ${says}` };
};

const saysOf = ({ says, of, before }: SortedThing): string => {
  const text = before ? `${textOf(before.read)}, then ${textOf(says)}` : textOf(says);
  return of === undefined ? text : `${of}: ${text}`;
};

const textOf = (says: string | Amount): string =>
  typeof says === 'string' ? says : formatExact(says.exact, says.unit, says.mark);

const stripsOf = ({ day, says, before }: SortedThing): readonly SortStrip[] => {
  if (!before || typeof says === 'string') return [];
  const tallest = Math.max(before.read.exact, says.exact);
  const strip = (on: CivilDay, read: Amount): SortStrip => ({
    ...{ label: formatDay(on, 'short'), says: textOf(read) },
    share: tallest > 0 ? Math.max(0, read.exact) / tallest : 0,
  });
  return [strip(before.day, before.read), strip(day, says)];
};
