import { doubtAnswers, weatherWords, type EntryId, type SpecimenId } from '#core/journal';
import type { MarkId, Measured, Unit } from '#core/measure';
import type { Chance } from './chance';
import {
  aDayText,
  aTimeText,
  madePeople,
  marksRead,
  sizeOfMark,
  type JournalWriter,
} from './journal-writer';
import { dayOfNumber } from './plain-days';

/** How often things beside the plain number happen in a log, in hundredths. */
export interface Manners {
  readonly weather: number;
  readonly again: number;
  readonly otherPerson: number;
  readonly otherUnit: number;
  readonly slip: number;
  readonly corrected: number;
  readonly takenBack: number;
  readonly answered: number;
  readonly leaves: number;
  readonly otherSide: number;
}

export const mannersOf = (chance: Chance): Manners => {
  const sometimes = (inLogs: number, share: number): number => (chance.percent(inLogs) ? share : 0);
  return {
    weather: sometimes(60, 85),
    again: sometimes(25, 25),
    otherPerson: sometimes(30, 25),
    otherUnit: sometimes(12, 15),
    slip: sometimes(30, 15),
    corrected: sometimes(35, 18),
    takenBack: sometimes(20, 12),
    answered: chance.one([0, 50, 100]),
    leaves: sometimes(35, 80),
    otherSide: sometimes(30, 70),
  };
};

export interface ReadAt {
  readonly specimen: SpecimenId;
  readonly day: number;
  readonly time?: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  /** How many marks there truly are. */
  readonly times: number;
  readonly spanDays?: number;
  readonly leaves?: number;
  readonly author?: (typeof madePeople)[number] | null;
}

/** A reading as a family writes one: with slips, second reads, corrections and answers. */
export const writeReading = (
  writer: JournalWriter,
  chance: Chance,
  manners: Manners,
  truth: ReadAt,
): EntryId => {
  const { unit, mark, times, spanDays, leaves, author } = truth;
  const isSlip = chance.percent(manners.slip);
  const isOther = chance.percent(manners.otherUnit) && unit !== 'count';
  const number = isSlip ? chance.one([times * 10, 0, times + 30, Math.floor(times / 2)]) : times;
  const measured = isOther ? inOtherUnit(chance, truth) : marksRead(number, unit, mark);
  const near = (): Measured => marksRead(Math.max(0, times + chance.upTo(-1, 1)), unit, mark);
  const again = chance.percent(manners.again)
    ? Array.from({ length: chance.upTo(1, 4) }, near)
    : undefined;
  const where = {
    day: aDayText(dayOfNumber(truth.day)),
    ...(truth.time ? { time: aTimeText(truth.time) } : {}),
  };
  const id = writer.write(
    {
      ...{ kind: 'reading-taken', specimen: truth.specimen, ...where, measured },
      ...(again ? { again } : {}),
      ...(spanDays ? { spanDays } : {}),
      ...(chance.percent(manners.weather) ? { weather: chance.one(weatherWords.slice(0, 4)) } : {}),
      ...(leaves !== undefined && chance.percent(manners.leaves) ? { leaves } : {}),
    },
    author,
  );
  if (chance.percent(manners.otherSide)) writeOtherSide(writer, chance, id, truth);
  const answer = () => {
    if (!chance.percent(manners.answered)) return;
    const said = { doubt: 'big-jump', answer: chance.one(doubtAnswers) };
    writer.write({ kind: 'doubt-answered', reading: id, ...said });
  };
  answer();
  if (chance.percent(isSlip ? 40 : manners.corrected)) {
    const to = chance.percent(15)
      ? { ...where, day: aDayText(dayOfNumber(truth.day + 1)), measured }
      : { ...where, measured: chance.percent(20) ? measured : marksRead(times, unit, mark) };
    const by = writer.write({
      kind: 'reading-corrected',
      ...{ reading: id, to: { ...to, ...(spanDays ? { spanDays } : {}) }, why: 'read it again' },
    });
    if (chance.percent(10)) writer.write({ kind: 'entry-taken-back', entry: by });
    answer();
  }
  if (chance.percent(manners.takenBack)) {
    const back = writer.write({ kind: 'entry-taken-back', entry: id });
    if (chance.percent(30)) writer.write({ kind: 'entry-taken-back', entry: back });
  }
  return id;
};

const inOtherUnit = (chance: Chance, { times, mark }: ReadAt): Measured => {
  const other = chance.one([
    ['cm', '1 cm'],
    ['mm', '1 mm'],
    ['in', '1 in'],
    ['in', '1/4 in'],
    ['ft', '1 ft'],
  ] as const);
  const exact = times * sizeOfMark(mark);
  return marksRead(Math.round(exact / sizeOfMark(other[1])), other[0], other[1]);
};

const writeOtherSide = (
  { write }: JournalWriter,
  chance: Chance,
  reading: EntryId,
  { times, unit, mark }: ReadAt,
): void => {
  const exact = times * sizeOfMark(mark);
  const isInches = unit === 'in' || unit === 'ft' || unit === 'yd';
  const otherMark = isInches ? '1 cm' : chance.one<MarkId>(['1 in', '1 in', '1/2 in']);
  const otherTimes = Math.round(exact / sizeOfMark(otherMark));
  const measured = marksRead(otherTimes, isInches ? 'cm' : 'in', otherMark);
  write({ kind: 'other-side-read', reading, measured });
};
