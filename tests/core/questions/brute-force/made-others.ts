import type { MarkId, Unit } from '#core/measure';
import type { Chance } from './chance';
import {
  aDayText,
  aTimeText,
  beginJournal,
  journalWriter,
  madePeople,
  madeSpecimen,
  marksRead,
} from './journal-writer';
import { mannersOf, writeReading } from './made-reading';
import { dayOfNumber, timeOf, weekdayOfNumber } from './plain-days';
import type { MadeJournal } from './made-log';

const everyDay = [1, 2, 3, 4, 5, 6, 7];

/** Rain, day by day, with totals of several days and traces. */
export const makeRain = (chance: Chance, first: number): MadeJournal => {
  const writer = journalWriter();
  const [unit, mark] = chance.one([
    ...[['mm', '1 mm'] as const, ['mm', '1 mm'] as const, ['mm', '1 mm'] as const],
    ...[['in', '1/4 in'] as const, ['in', '0.01 in'] as const, ['cm', '1 mm'] as const],
    ...[['in', '1/8 in'] as const, ['in', '0.1 in'] as const, ['mm', '0.1 mm'] as const],
  ]);
  const days = chance.upTo(1, 14);
  const weekdays = chance.one([everyDay, everyDay, [1, 2, 3, 4, 5]]);
  const specimens = [{ name: 'Gauge', startedOn: dayOfNumber(first) }];
  beginJournal(writer, { quantity: 'rain', unit, mark, weekdays }, specimens);
  const manners = { ...mannersOf(chance), leaves: 0, otherSide: 0 };
  const most = chance.one([3, 6, 12, 40, 130]);
  const dry = chance.one([0, 20, 40]);
  for (let index = 0; index < days; index += 1) {
    const day = first + index;
    const at = { specimen: madeSpecimen(0), day: aDayText(dayOfNumber(day)) };
    const way = chance.upTo(0, 99);
    const isFree = !weekdays.includes(weekdayOfNumber(day));
    if (way < 8 || (isFree && chance.percent(85))) continue;
    if (way < 14) {
      writer.write({ kind: 'day-marked', ...at, state: way < 11 ? 'trace' : 'missed' });
      continue;
    }
    const times = chance.percent(dry) ? 0 : chance.upTo(0, most);
    const spanDays = chance.percent(6) ? chance.upTo(2, 3) : 1;
    writeReading(writer, chance, manners, { ...at, day, unit, mark, times, spanDays });
    if (chance.percent(4)) {
      writeReading(writer, chance, manners, { ...at, day, unit, mark, times: chance.upTo(0, 5) });
    }
  }
  return {
    ...{ entries: writer.entries, quantity: 'rain', specimens: 1, unit, mark },
    ...{ first, last: first + days - 1 },
  };
};

/** The shadow of a stick over the hours of a day or two. */
export const makeShadow = (chance: Chance, first: number): MadeJournal => {
  const writer = journalWriter();
  const [unit, mark] = chance.one([
    ...[['cm', '1 cm'] as const, ['cm', '1 cm'] as const, ['cm', '0.5 cm'] as const],
    ...[['in', '1 in'] as const, ['in', '1/2 in'] as const, ['mm', '1 mm'] as const],
  ]);
  const isTold = chance.percent(50);
  const standHeight = isTold ? { standHeight: marksRead(chance.upTo(20, 60), unit, mark) } : {};
  const specimens = [{ name: 'Stick', startedOn: dayOfNumber(first), ...standHeight }];
  beginJournal(writer, { quantity: 'shadow', unit, mark, weekdays: everyDay }, specimens);
  const manners = { ...mannersOf(chance), leaves: 0, otherSide: 0 };
  const days = chance.upTo(1, 2);
  const stretch = chance.one([1, 2, 4]);
  for (let index = 0; index < days; index += 1) {
    const day = first + index;
    const step = chance.one([60, 60, 30, 90]);
    const start = chance.upTo(8, 13) * 60;
    const readings = chance.upTo(1, 7);
    for (let more = 0; more < readings; more += 1) {
      const minutes = start + more * step;
      if (minutes > 18 * 60) break;
      const at = { specimen: madeSpecimen(0), time: timeOf(minutes) };
      if (chance.percent(10)) {
        const where = { ...at, day: aDayText(dayOfNumber(day)), time: aTimeText(at.time) };
        writer.write({ kind: 'day-marked', ...where, state: 'no-sun' });
        continue;
      }
      const low = Math.abs(minutes - 750) / 12;
      const times = Math.max(0, Math.round(stretch * (8 + low)) + chance.upTo(-1, 1));
      writeReading(writer, chance, manners, { ...at, day, unit, mark, times });
    }
  }
  return {
    ...{ entries: writer.entries, quantity: 'shadow', specimens: 1, unit, mark },
    ...{ first, last: first + days - 1 },
  };
};

/** Things that do not grow: many once, or one of them again and again. */
export const makeLengths = (chance: Chance, first: number): MadeJournal => {
  const writer = journalWriter();
  const [unit, mark] = chance.one<readonly [Unit, MarkId]>([
    ...[['cm', '1 cm'] as const, ['in', '1 in'] as const, ['in', '1/2 in'] as const],
    ...[['in', '1/4 in'] as const, ['mm', '1 mm'] as const, ['cm', '1 cm'] as const],
    ['count', '1'],
  ]);
  const isOne = chance.percent(40);
  const howMany = isOne ? 1 : chance.upTo(2, 11);
  const names = Array.from({ length: howMany }, (_, index) => `Thing ${'ABCDEFGHIJK'[index]!}`);
  beginJournal(
    writer,
    { quantity: 'length', unit, mark, weekdays: [] },
    names.map((name) => ({ name, startedOn: dayOfNumber(first) })),
  );
  const manners = { ...mannersOf(chance), leaves: 0, otherSide: 0 };
  const days = isOne ? chance.one([1, 1, 9]) : 1;
  const middle = chance.upTo(3, 14);
  for (let index = 0; index < howMany; index += 1) {
    const reads = isOne ? chance.upTo(2, 10) : 1;
    for (let more = 0; more < reads; more += 1) {
      const day = first + (days === 1 ? 0 : more % days);
      const times = Math.max(0, middle + chance.upTo(-2, 2));
      const author = chance.one([...madePeople, null]);
      const truth = { specimen: madeSpecimen(index), day, unit, mark, times, author };
      writeReading(writer, chance, manners, truth);
    }
  }
  return {
    ...{ entries: writer.entries, quantity: 'length', specimens: howMany, unit, mark },
    ...{ first, last: first + days - 1 },
  };
};

/** A kind of day, each day: the sky, or what a child was wearing. */
export const makeKinds = (chance: Chance, first: number): MadeJournal => {
  const writer = journalWriter();
  const all = chance.one([
    ...[
      ['sun', 'cloud', 'rain', 'snow', 'wind', 'fog'],
      ['sun', 'cloud', 'rain'],
    ],
    ['red boots', 'blue boots', 'bare feet'],
  ]);
  const kinds = all.slice(0, chance.upTo(2, all.length));
  const specimens = [{ name: 'Sky', startedOn: dayOfNumber(first) }];
  const plan = { quantity: 'daily-kind', unit: 'count', mark: '1', kinds } as const;
  beginJournal(writer, { ...plan, weekdays: everyDay }, specimens);
  const days = chance.one([3, 8, 15, 25, 40]);
  const favourite = chance.one(kinds);
  const doubled = chance.one([0, 0, 6]);
  for (let index = 0; index < days; index += 1) {
    const at = { specimen: madeSpecimen(0), day: aDayText(dayOfNumber(first + index)) };
    if (chance.percent(10)) {
      if (chance.percent(60)) writer.write({ kind: 'day-marked', ...at, state: 'missed' });
      continue;
    }
    const word = (): string => (chance.percent(30) ? favourite : chance.one(kinds));
    const id = writer.write({ kind: 'kind-noted', ...at, word: word() });
    if (chance.percent(doubled)) writer.write({ kind: 'kind-noted', ...at, word: word() });
    if (chance.percent(3)) writer.write({ kind: 'entry-taken-back', entry: id });
  }
  return {
    ...{ entries: writer.entries, quantity: 'daily-kind', specimens: 1, unit: 'count', mark: '1' },
    ...{ first, last: first + days - 1 },
  };
};
