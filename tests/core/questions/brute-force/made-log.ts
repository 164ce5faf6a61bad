import type { CivilDay } from '#core/calendar';
import type { GraphKind, TableChoice, TableSource } from '#core/graphs';
import { stages, type Entry, type Quantity, type Stage } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import { chanceOf, type Chance } from './chance';
import { aDayText, madeInvestigation, madeSpecimen } from './journal-writer';
import { makeKinds, makeLengths, makeRain, makeShadow } from './made-others';
import { makePlants } from './made-plants';
import { dayOfNumber, numberOfDay } from './plain-days';

export interface MadeJournal {
  readonly entries: readonly Entry[];
  readonly quantity: Quantity;
  readonly specimens: number;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly first: number;
  readonly last: number;
}

/** A made-up journal, and which graphs of it are asked about. */
export interface MadeLog {
  readonly seed: number;
  readonly entries: readonly Entry[];
  readonly quantity: Quantity;
  readonly stage: Stage;
  readonly today: CivilDay;
  readonly asks: readonly AskedGraph[];
}

export interface AskedGraph {
  readonly choice: TableChoice;
  readonly graph: GraphKind;
}

/** The journal of a seed: the same for the same seed, and unlike its neighbours. */
export const madeLog = (seed: number): MadeLog => {
  const chance = chanceOf(seed);
  const stage = stages[seed % 3]!;
  const first = numberOfDay('2026-01-01') + chance.upTo(0, 1200);
  const make = chance.one([
    ...[makePlants, makePlants, makePlants, makePlants, makePlants, makeRain],
    ...[makeRain, makeShadow, makeLengths, makeKinds],
  ]);
  const journal = make(chance, first);
  const today = aDayText(dayOfNumber(journal.last + chance.one([0, 0, 0, 1, 2, 9])));
  const { entries, quantity } = journal;
  return { seed, entries, quantity, stage, today, asks: asksOf(chance, journal, stage) };
};

const asksOf = (
  chance: Chance,
  { quantity, specimens, unit, mark, first, last }: MadeJournal,
  stage: Stage,
): readonly AskedGraph[] => {
  const fit = graphsByQuantity[quantity].filter(
    ([source]) => specimens > 3 === (source === 'each-specimen') || quantity === 'length',
  );
  const offers = fit.length > 0 ? fit : graphsByQuantity[quantity];
  return Array.from({ length: chance.one([1, 2, 2]) }, () => {
    const [source, graph] = chance.one(offers);
    const isCut = chance.percent(20);
    const oneDay = first + chance.upTo(0, last - first);
    const start = ofOneDay.has(source) ? oneDay : isCut ? first + chance.upTo(0, 2) : first;
    const end = ofOneDay.has(source) ? oneDay : isCut ? Math.max(start, last - 2) : last;
    const isOfLength = quantity === 'length' && !ofOneDay.has(source);
    const to = isOfLength ? last : end;
    const isCount = graph === 'picture-graph' || source.endsWith('-days') || isOfReadings(source);
    const converts = chance.percent(10) && unit !== 'count';
    const ruler = converts ? chance.one(otherRulers) : ([unit, mark] as const);
    const mostKinds = { 'grade-1': 3, 'grade-2': 4, 'grade-3': 8 }[stage];
    return {
      graph,
      choice: {
        ...{ source, investigation: madeInvestigation },
        specimens: specimensOf(source, specimens).map(madeSpecimen),
        ...{ from: aDayText(dayOfNumber(start)), to: aDayText(dayOfNumber(to)) },
        told: isCount ? null : { unit: ruler[0], mark: ruler[1], converts },
        mostKinds: isCount && chance.percent(60) ? mostKinds : null,
      },
    };
  });
};

const otherRulers: readonly (readonly [Unit, MarkId])[] = [
  ...[['cm', '1 cm'] as const, ['in', '1 in'] as const, ['in', '1/2 in'] as const],
  ...[['mm', '1 mm'] as const, ['mm', '0.1 mm'] as const],
];

const isOfReadings = (source: TableSource): boolean => source === 'specimen-readings';

const specimensOf = (source: TableSource, howMany: number): readonly number[] => {
  const all = Array.from({ length: howMany }, (_, index) => index);
  if (source === 'each-specimen' || isOfReadings(source) || source === 'weather-days') return all;
  return source === 'days-in-order' ? all.slice(0, 3) : [0];
};

const ofOneDay: ReadonlySet<TableSource> = new Set([
  ...(['reads-of-one', 'hour-values', 'hours-in-order'] as const),
]);

type Way = readonly [TableSource, GraphKind];
const counted = (source: TableSource): readonly Way[] => [
  [source, 'picture-graph'],
  [source, 'bar-graph'],
];
const graphsByQuantity: Readonly<Record<Quantity, readonly Way[]>> = {
  'plant-height': [
    ...([
      ['day-values', 'bar-graph'],
      ['day-values', 'bar-graph'],
    ] as const),
    ...([
      ['days-in-order', 'line-graph'],
      ['days-in-order', 'line-graph'],
    ] as const),
    ...([
      ['growth-amounts', 'line-plot'],
      ['growth-amounts', 'line-plot'],
    ] as const),
    ...([
      ['each-specimen', 'line-plot'],
      ['reads-of-one', 'line-plot'],
    ] as const),
    ...[...counted('growth-days'), ...counted('weather-days'), ...counted('state-days')],
    ...counted('specimen-readings'),
  ],
  rain: [
    ...([
      ['day-values', 'bar-graph'],
      ['day-values', 'bar-graph'],
    ] as const),
    ...([
      ['rain-amounts', 'line-plot'],
      ['rain-amounts', 'line-plot'],
    ] as const),
    ...[...counted('wet-days'), ...counted('weather-days'), ...counted('state-days')],
    ['week-values', 'bar-graph'],
  ],
  shadow: [
    ...([
      ['hour-values', 'bar-graph'],
      ['hours-in-order', 'line-graph'],
    ] as const),
    ...([
      ['hour-values', 'bar-graph'],
      ['hours-in-order', 'line-graph'],
    ] as const),
    ...counted('weather-days'),
  ],
  length: [
    ...([
      ['each-specimen', 'line-plot'],
      ['reads-of-one', 'line-plot'],
    ] as const),
    ...([
      ['each-specimen', 'line-plot'],
      ['reads-of-one', 'line-plot'],
    ] as const),
    ...([
      ['day-values', 'bar-graph'],
      ['days-in-order', 'line-graph'],
    ] as const),
    ...counted('specimen-readings'),
  ],
  'daily-kind': counted('kind-days'),
};
