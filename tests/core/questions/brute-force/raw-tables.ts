import { knownOnce } from './known-once';
import { dayOfNumber, numberOfDay } from './plain-days';
import {
  isPlanned,
  lastDayOf,
  markOn,
  middleOf,
  readingsOn,
  type RawLog,
  type RawMeasure,
} from './raw-log';
import { nameOf, type RawAsking } from './raw-asking';

/** What stands for one day, or null: no number, or only as a total of several days. */
export const amountOn = (log: RawLog, specimen: string, day: string): RawMeasure | null => {
  const readings = readingsOn(log, specimen, day);
  const [first] = readings;
  if (!first || readings.some(({ spanDays }) => spanDays > 1)) return null;
  if (log.quantity !== 'rain') return middleOf(readings.map(({ counted }) => counted));
  let exact = 0;
  for (const { counted } of readings) exact += counted.exact;
  return { ...first.counted, exact };
};

/** Every day from the one to the other, both included. */
export const daysFromTo = (from: string, to: string): readonly string[] => {
  const days: string[] = [];
  for (let day = numberOfDay(from); day <= numberOfDay(to); day += 1) days.push(dayOfNumber(day));
  return days;
};

/** The days of the graph that have one number, with it. */
export const numbersOf = (asking: RawAsking, specimen: string): readonly NumberOfDay[] =>
  numbersBySpecimen(asking).get(specimen) ?? [];

export interface NumberOfDay {
  readonly day: string;
  readonly amount: RawMeasure;
}

const numbersBySpecimen = knownOnce(({ log, from, to, specimens }: RawAsking) => {
  const found = new Map<string, readonly NumberOfDay[]>();
  for (const specimen of specimens) {
    const numbers = daysFromTo(from, to).flatMap((day) => {
      const amount = amountOn(log, specimen, day);
      return amount ? [{ day, amount }] : [];
    });
    found.set(specimen, numbers);
  }
  return found;
});

/** A thing that was counted, and its kind: one thing may be of two kinds. */
export type Counted = readonly [kind: string, thing: string];

/** All that a graph of counts counts, before small kinds are put together. */
export const countedOf = knownOnce((asking: RawAsking): readonly Counted[] => {
  const found: Counted[] = [];
  for (const specimen of asking.specimens) {
    for (const each of sortedOf(asking, specimen)) {
      if (!found.some(([kind, thing]) => kind === each[0] && thing === each[1])) found.push(each);
    }
  }
  return found;
});

const sortedOf = (asking: RawAsking, specimen: string): readonly Counted[] => {
  const { log, source, from, to, today } = asking;
  const isIn = ({ day, specimen: whose }: { day: string; specimen: string }): boolean =>
    whose === specimen && day >= from && day <= to;
  switch (source) {
    case 'kind-days':
      return byDay(log.words.filter(isIn)).map(({ word, day }) => [word, day]);
    case 'weather-days':
      return byDay(log.readings.filter(isIn)).flatMap(({ weather, day }): readonly Counted[] =>
        weather ? [[weather, day]] : [],
      );
    case 'specimen-readings': {
      const name = log.specimens.find(({ id }) => id === specimen)?.name ?? '';
      return log.readings.filter(isIn).map(({ id }) => [name, id]);
    }
    case 'wet-days':
      return daysFromTo(from, to).flatMap((day): readonly Counted[] => {
        const amount = amountOn(log, specimen, day);
        if (amount) return [[amount.exact > 0 ? 'wet' : 'dry', day]];
        const isRead = readingsOn(log, specimen, day).length > 0;
        const isTrace = !isRead && markOn(log, specimen, day)?.state === 'trace';
        return isTrace ? [['a trace', day]] : [];
      });
    case 'growth-days':
      return growthOf(asking, specimen).map(({ day, exact }) => [
        exact > 0 ? 'grew' : exact === 0 ? 'did not grow' : 'got shorter',
        day,
      ]);
    case 'state-days':
      return daysFromTo(from, to).flatMap((day): readonly Counted[] => {
        const state = stateOn(log, specimen, day);
        const isOver = day > lastDayOf(log, specimen, today);
        if (state === 'nothing written' && (isOver || !isPlanned(log, day))) return [];
        return [[state, day]];
      });
    default:
      return [];
  }
};

const byDay = <Line extends { readonly day: string }>(lines: readonly Line[]): readonly Line[] =>
  [...lines].sort((one, other) => (one.day === other.day ? 0 : one.day < other.day ? -1 : 1));

const stateOn = (log: RawLog, specimen: string, day: string): string => {
  if (readingsOn(log, specimen, day).length > 0) return 'measured';
  const mark = markOn(log, specimen, day);
  if (!mark) return 'nothing written';
  return mark.state === 'trace' ? 'a trace' : mark.state.replaceAll('-', ' ');
};

export interface KindShown {
  readonly label: string;
  readonly things: ReadonlySet<string>;
}

/** In the order they stand on a log's page. */
const states = [
  ...['measured', 'not up yet', 'missed', 'no sun', 'a trace', 'lost', 'nothing written'],
];

/**
 * The rows of a graph of counts: kinds that were to be expected and never came have a row too;
 * where there are more kinds than it may have, the smallest are put together.
 */
export const kindsShown = knownOnce((asking: RawAsking): readonly KindShown[] => {
  const expected: Readonly<Record<string, readonly string[]>> = {
    ...{ 'kind-days': asking.log.kinds, 'wet-days': ['dry', 'wet'] },
    ...{ 'growth-days': ['grew', 'did not grow'] },
    'specimen-readings': asking.specimens.map((each) => nameOf(asking, each)),
    'state-days': states.filter((each) => countedOf(asking).some(([kind]) => kind === each)),
  };
  const thingsOf = new Map<string, Set<string>>();
  for (const kind of expected[asking.source] ?? []) thingsOf.set(kind, new Set());
  for (const [kind, thing] of countedOf(asking)) {
    const things = thingsOf.get(kind) ?? new Set();
    thingsOf.set(kind, things.add(thing));
  }
  const kinds = [...thingsOf].map(([label, things]) => ({ label, things }));
  const most = asking.mostKinds;
  if (most === null || kinds.length <= most) return kinds;
  const left = [...kinds];
  const kept: KindShown[] = [];
  while (kept.length < most - 1) {
    const largest = left.reduce((best, each) =>
      each.things.size > best.things.size ? each : best,
    );
    left.splice(left.indexOf(largest), 1);
    kept.push(largest);
  }
  const together = new Set(left.flatMap(({ things }) => [...things]));
  return [...kept, { label: 'other', things: together }];
});

/** How much it grew from one day to the very next, where both have a number of their own. */
export const growthOf = (
  { log, from, to }: RawAsking,
  specimen: string,
): readonly { day: string; exact: number; units: readonly string[] }[] => {
  const found: { day: string; exact: number; units: string[] }[] = [];
  for (const day of daysFromTo(from, to)) {
    const before = dayOfNumber(numberOfDay(day) - 1);
    if (before < from) continue;
    const [was, is] = [amountOn(log, specimen, before), amountOn(log, specimen, day)];
    if (was && is) {
      found.push({ day, exact: is.exact - was.exact, units: [was.unit, is.unit] });
    }
  }
  return found;
};

/** Every cross of a line plot. */
export const crossesOf = (asking: RawAsking): readonly RawMeasure[] => {
  const { log, source, from, to, specimens } = asking;
  const found: RawMeasure[] = [];
  for (const specimen of specimens) {
    if (source === 'each-specimen') {
      const last = numbersOf(asking, specimen).at(-1);
      if (last) found.push(last.amount);
    }
    if (source === 'rain-amounts') {
      found.push(...numbersOf(asking, specimen).map(({ amount }) => amount));
    }
    if (source === 'growth-amounts') {
      for (const { exact, units } of growthOf(asking, specimen)) {
        found.push({ exact, unit: units[0]!, mark: '' });
      }
    }
    if (source === 'reads-of-one') {
      for (const reading of log.readings) {
        if (reading.specimen !== specimen || reading.spanDays > 1) continue;
        if (reading.day >= from && reading.day <= to) found.push(...reading.reads);
      }
    }
  }
  return found;
};
