import type { SpecimenId } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import type { Chance } from './chance';
import {
  aDayText,
  beginJournal,
  journalWriter,
  madeInvestigation,
  madePeople,
  madeSpecimen,
  marksRead,
  sizeOfMark,
  type JournalWriter,
} from './journal-writer';
import { mannersOf, writeReading, type Manners } from './made-reading';
import { dayOfNumber, weekdayOfNumber } from './plain-days';
import type { MadeJournal } from './made-log';

/** The marks a plant is read to: the common ones most of the time, and every other now and then. */
const rulers: readonly (readonly [Unit, MarkId])[] = [
  ...Array.from({ length: 9 }, () => ['cm', '1 cm'] as const),
  ...[['mm', '1 mm'] as const, ['mm', '1 mm'] as const, ['cm', '0.5 cm'] as const],
  ...[['in', '1 in'] as const, ['in', '1 in'] as const, ['in', '1/2 in'] as const],
  ...[['in', '1/4 in'] as const, ['in', '1/8 in'] as const, ['in', '1/16 in'] as const],
  ...[['in', '0.1 in'] as const, ['in', '0.01 in'] as const, ['cm', '1 mm'] as const],
  ...[['mm', '0.1 mm'] as const, ['ft', '1 ft'] as const, ['yd', '1 yd'] as const],
  ...[['m', '1 m'] as const, ['m', '0.1 m'] as const],
];

/** Plants, day by day. */
export const makePlants = (chance: Chance, first: number): MadeJournal => {
  const writer = journalWriter();
  const [unit, mark] = chance.one(rulers);
  const howMany = chance.one([1, 1, 1, 1, 2, 2, 3, 8]);
  const isLightTest = howMany > 1 && chance.percent(20);
  const days = howMany > 3 ? chance.upTo(1, 3) : isLightTest ? 25 : chance.upTo(1, 14);
  const weekdays = chance.one([
    [1, 2, 3, 4, 5, 6, 7],
    [1, 2, 3, 4, 5, 6, 7],
    [1, 2, 3, 4, 5],
    [],
  ] as const);
  const pot = chance.percent(40) ? marksRead(chance.upTo(8, 30), unit, mark) : undefined;
  const names = ['Bean', 'Pea', 'Corn', 'Dill', 'Kale', 'Mint', 'Oat', 'Rye'];
  beginJournal(
    writer,
    {
      ...{ quantity: 'plant-height', unit, mark, weekdays },
      where: chance.one(['from the soil to the tip', 'from the rim of the pot']),
    },
    names.slice(0, howMany).map((name) => ({
      ...{ name, startedOn: dayOfNumber(first) },
      ...(pot ? { standHeight: pot } : {}),
    })),
  );
  writeCare(writer, chance, unit, mark);
  const isPlannedLate = chance.percent(15);
  if (isLightTest && !isPlannedLate) writePlan(writer, chance);
  const manners = mannersOf(chance);
  for (let index = 0; index < howMany; index += 1) {
    const specimen = madeSpecimen(index);
    writeDays(writer, chance, manners, {
      ...{ specimen, first, days, unit, mark, weekdays: isLightTest ? [] : weekdays },
      everyDays: isLightTest ? chance.upTo(3, 8) : 1,
    });
  }
  if (isLightTest) {
    if (isPlannedLate || chance.percent(15)) writePlan(writer, chance);
    writeNoticed(writer, chance, howMany, first + chance.upTo(0, days));
  }
  return {
    ...{ entries: writer.entries, quantity: 'plant-height', specimens: howMany, unit, mark },
    ...{ first, last: first + days - 1 },
  };
};

interface DaysToWrite {
  readonly specimen: SpecimenId;
  readonly first: number;
  readonly days: number;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly everyDays: number;
  readonly weekdays: readonly number[];
}

const writeDays = (
  writer: JournalWriter,
  chance: Chance,
  manners: Manners,
  { specimen, first, days, unit, mark, everyDays, weekdays }: DaysToWrite,
): void => {
  const perDay = Math.max(1, Math.round(10_000_000 / sizeOfMark(mark)));
  const style = chance.one(['steady', 'steady', 'slow', 'fast', 'jagged'] as const);
  const missed = chance.one([0, 5, 25]);
  const many = chance.percent(10) ? chance.upTo(4, 9) : 0;
  const manyOn = chance.upTo(0, days - 1);
  const startUp = chance.percent(20) ? chance.upTo(1, 3) : 0;
  let times = chance.upTo(0, 8) * perDay;
  let leaves = chance.upTo(0, 3);
  for (let index = 0; index < days; index += 1) {
    const day = first + index;
    const at = { specimen, day: aDayText(dayOfNumber(day)) };
    if (index < startUp) {
      writer.write({ kind: 'day-marked', ...at, state: 'not-up-yet' });
      continue;
    }
    times = Math.max(0, times + grown(chance, style, perDay));
    if (chance.percent(35)) leaves += chance.upTo(1, 2);
    const isFree = weekdays.length > 0 && !weekdays.includes(weekdayOfNumber(day));
    if (index % everyDays !== 0 || (isFree && chance.percent(85))) continue;
    if (chance.percent(missed)) {
      writeWithout(writer, chance, at);
      continue;
    }
    const truth = { ...at, day, unit, mark, times, leaves };
    writeReading(writer, chance, manners, truth);
    if (chance.percent(manners.otherPerson)) {
      const theirs = Math.max(0, times + chance.upTo(-1, 1));
      const author = chance.one([...madePeople, null]);
      writeReading(writer, chance, manners, { ...truth, times: theirs, author });
    }
    for (let more = 0; index === manyOn && more < many; more += 1) {
      const read = Math.max(0, times + chance.upTo(-2, 2));
      writeReading(writer, chance, manners, { ...truth, times: read });
    }
  }
  if (chance.percent(6)) {
    const how = chance.one(['lost', 'finished'] as const);
    const day = aDayText(dayOfNumber(first + days));
    writer.write({ kind: 'specimen-ended', specimen, day, how });
  }
};

const grown = (
  chance: Chance,
  style: 'steady' | 'slow' | 'fast' | 'jagged',
  perDay: number,
): number => {
  const share = (most: number): number => Math.floor((chance.upTo(0, most) * perDay) / 2);
  if (style === 'slow') return chance.percent(40) ? Math.ceil(perDay / 2) : 0;
  if (style === 'fast') return chance.percent(10) ? perDay * chance.upTo(3, 6) : share(6);
  if (style === 'jagged') return chance.upTo(-2, 4) * perDay;
  return share(4);
};

const writeWithout = (
  { write }: JournalWriter,
  chance: Chance,
  at: { readonly specimen: SpecimenId; readonly day: ReturnType<typeof aDayText> },
): void => {
  const kind = chance.upTo(0, 9);
  if (kind < 4) return;
  const why = chance.percent(50) ? { why: 'we were out' } : {};
  const state = kind < 8 ? 'missed' : chance.one(['lost', 'trace', 'no-sun'] as const);
  const id = write({ kind: 'day-marked', ...at, state, ...why });
  if (chance.percent(15)) write({ kind: 'entry-taken-back', entry: id });
  if (chance.percent(10)) write({ kind: 'day-marked', ...at, state: 'missed', ...why });
};

const writeCare = ({ write }: JournalWriter, chance: Chance, unit: Unit, mark: MarkId): void => {
  if (!chance.percent(25) || unit === 'count') return;
  const person = chance.one(madePeople);
  const measured = marksRead(chance.upTo(5, 30), unit, mark);
  write({ kind: 'helper-length-measured', person, helper: 'hand-span', measured });
};

const writePlan = ({ write }: JournalWriter, chance: Chance): void => {
  write({
    ...{ kind: 'fair-test-planned', investigation: madeInvestigation },
    different: chance.one(['light', 'light', 'light', 'water']),
    same: ['seed', 'pot'],
    second: [chance.one(['leaves', 'colour'] as const)],
  });
};

const writeNoticed = (
  { write }: JournalWriter,
  chance: Chance,
  howMany: number,
  on: number,
): void => {
  const day = aDayText(dayOfNumber(on));
  for (let index = 0; index < howMany; index += 1) {
    if (chance.percent(85)) {
      write({ kind: 'looks-noted', specimen: madeSpecimen(index), day, colour: 'pale-green' });
    }
  }
  if (!chance.percent(25)) return;
  const investigation = madeInvestigation;
  const id = write({ kind: 'difference-noticed', investigation, day, what: 'one pot was moved' });
  if (chance.percent(20)) write({ kind: 'entry-taken-back', entry: id });
};
