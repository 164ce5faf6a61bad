import { formatDay, type CivilDay } from '#core/calendar';
import type { Notebook } from '#core/journal';
import { formatMeasured } from '#core/measure';
import type { SeriesDay } from '#core/series';
import { chosenSeries } from './chosen-series';
import type { CountTable } from './graph-table';
import type { TableChoice } from './table-choice';
import { stateKinds, wetKinds } from './table-words';

/** One thing a child sorts before counting: a day, what the log says of it, and its kind. */
export interface SortCard {
  readonly day: string;
  readonly says: string;
  /** The row of the table it belongs to. */
  readonly kind: string;
}

/**
 * The days behind a table of counts, as cards to be sorted into its kinds one by one: sorting
 * first is what makes a table understood (Garcia-Mila et al. 2014, Mathematical Thinking and
 * Learning 16(3)). None where a kind cannot be seen on one day by itself (how much it grew), or
 * where the cards would not add up to the table.
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
  const saysOf = saysBySource[choice.source];
  if (!saysOf) return [];
  const labels = table.rows.map(({ label }) => label);
  const together = labels.at(-1) ?? '';
  const cards = chosenSeries(choice, notebook, today)
    .flatMap(({ days }) => days)
    .flatMap((day) => saysOf(day).map((said) => ({ day: day.day, ...said })))
    .map(({ day, says, kind }) => ({
      ...{ at: day, day: formatDay(day, 'short'), says },
      kind: labels.includes(kind) ? kind : together,
    }));
  const own = cards.filter(
    (card, index) =>
      cards.findIndex((each) => each.at === card.at && each.kind === card.kind) === index,
  );
  const adds = table.rows.every(
    ({ label, count }) => own.filter(({ kind }) => kind === label).length === count,
  );
  return adds
    ? own
        .toSorted((one, other) => (one.at < other.at ? -1 : one.at > other.at ? 1 : 0))
        .map(({ day, says, kind }) => ({ day, says, kind }))
    : [];
}

type Said = Pick<SortCard, 'says' | 'kind'>;

const saysBySource: Readonly<
  Partial<Record<TableChoice['source'], (day: SeriesDay) => readonly Said[]>>
> = {
  'kind-days': ({ words }) => words.map(({ word }) => ({ says: word, kind: word })),
  'weather-days': ({ readings }) =>
    readings.flatMap(({ weather }) => (weather ? [{ says: weather, kind: weather }] : [])),
  'wet-days': ({ state, readings }) => {
    if (state === 'trace') return [{ says: wetKinds.trace, kind: wetKinds.trace }];
    if (state !== 'number' || readings.some(({ spanDays }) => spanDays > 1)) return [];
    const wettest = readings.toSorted((one, two) => two.counted.exact - one.counted.exact)[0];
    if (!wettest) return [];
    const kind = wettest.counted.exact > 0 ? wetKinds.wet : wetKinds.dry;
    return [{ says: formatMeasured(wettest.counted), kind }];
  },
  'state-days': ({ state, planned, readings }) => {
    if (state === 'word' || (state === 'blank' && !planned)) return [];
    const read = readings.at(-1);
    return [
      { says: read ? formatMeasured(read.counted) : stateKinds[state], kind: stateKinds[state] },
    ];
  },
};
