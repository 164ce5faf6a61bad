import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, type EntryId, type Quantity } from '#core/journal';
import { exactPerUnit } from '#core/measure';
import {
  questionsAboutCorrection,
  questionsAboutEntry,
  rulerExactFor,
  seriesOf,
  type EntryQuestion,
  type Series,
} from '#core/series';
import { anId, bean, begun, heights, read, takenBack, took, written } from '../journal/entries';
import { marked, onDay, seriesAt } from './bean-log';

const today = civilDay('2026-03-10');
const kinds = (questions: readonly EntryQuestion[]) => questions.map((each) => each.kind);
const asOf = (quantity: Quantity, ...entries: Parameters<typeof seriesAt>[1][]): Series => {
  const change = written(5, {
    kind: 'investigation-changed',
    investigation: heights,
    to: { quantity },
  });
  return seriesOf(foldEntries([...begun, change, ...entries]), bean, today)!;
};

describe('before a line is written', () => {
  it('nothing is asked about an ordinary reading of today or of a past day', () => {
    const series = seriesAt(today, took(10, '2026-03-09', 3));
    expect(questionsAboutEntry(read(4), today, today, series)).toEqual([]);
    expect(questionsAboutEntry(read(4), civilDay('2026-03-03'), today, series)).toEqual([]);
    expect(questionsAboutEntry(read(0), today, today, series)).toEqual([]);
  });

  it('a day that has not come yet is asked about, for a stamp too', () => {
    const series = seriesAt(today);
    const tomorrow = civilDay('2026-03-11');
    expect(questionsAboutEntry(read(4), tomorrow, today, series)).toEqual([
      { kind: 'day-not-come-yet', day: tomorrow, today },
    ]);
    expect(kinds(questionsAboutEntry(null, tomorrow, today, series))).toEqual(['day-not-come-yet']);
  });

  it('a day before the start is asked about, and the day of the start is not', () => {
    const series = seriesAt(today);
    expect(questionsAboutEntry(read(4), civilDay('2026-03-01'), today, series)).toEqual([
      { kind: 'before-the-start', day: '2026-03-01', startedOn: '2026-03-02' },
    ]);
    expect(questionsAboutEntry(read(4), civilDay('2026-03-02'), today, series)).toEqual([]);
  });

  // Source: common practice, a ruler in the house is 12 inches or 30 centimetres long.
  it.each([
    [read(12, 'in', '1 in'), []],
    [read(13, 'in', '1 in'), ['past-the-ruler']],
    [read(12.5, 'in', '1/2 in'), ['past-the-ruler']],
    [read(1, 'ft', '1 ft'), []],
    [read(30), []],
    [read(31), ['past-the-ruler']],
    [read(301, 'mm', '1 mm'), ['past-the-ruler']],
    [read(40, 'count', '1'), []],
  ])('$text $unit on a plant asks %j', (measured, expected) => {
    expect(kinds(questionsAboutEntry(measured, today, today, seriesAt(today)))).toEqual(expected);
  });

  it('the end of the ruler is asked about once: a plant that grew past it stays past it', () => {
    const series = seriesAt(today, took(10, '2026-03-09', 31));
    expect(questionsAboutEntry(read(33), today, today, series)).toEqual([]);
  });

  it('a shadow may be longer than any ruler', () => {
    expect(questionsAboutEntry(read(180), today, today, asOf('shadow'))).toEqual([]);
  });

  it.each([
    ['plant-height', ['already-read-today']],
    ['rain', ['already-read-today']],
    ['shadow', []],
    ['length', []],
  ] as const)('a second number for a day asks, with %s: %j', (quantity, expected) => {
    const series = asOf(quantity, took(10, today, 3));
    expect(kinds(questionsAboutEntry(read(4), today, today, series))).toEqual(expected);
  });

  it('a second number is not asked about when the first was taken back or was only a stamp', () => {
    const undone = seriesAt(today, took(10, today, 3), takenBack(11, 10));
    expect(questionsAboutEntry(read(4), today, today, undone)).toEqual([]);
    const stamped = seriesAt(today, marked(10, today, 'missed'));
    expect(questionsAboutEntry(read(4), today, today, stamped)).toEqual([]);
  });

  it('several doubts are all asked, the day first', () => {
    const series = seriesAt(today, took(10, '2026-03-12', 3));
    const questions = questionsAboutEntry(read(31), civilDay('2026-03-12'), today, series);
    expect(kinds(questions)).toEqual(['day-not-come-yet', 'past-the-ruler', 'already-read-today']);
  });

  it('the ruler of a unit is the one that carries it', () => {
    expect(rulerExactFor('yd')).toBe(12 * exactPerUnit('in'));
    expect(rulerExactFor('m')).toBe(30 * exactPerUnit('cm'));
  });
});

describe('before a correction is written', () => {
  const day = civilDay('2026-03-09');
  const readingIn = (series: Series, on: string, number: number) =>
    onDay(series, on).readings.find((each) => each.id === anId<EntryId>(number))!;

  it('nothing is asked about a number fixed on its own day', () => {
    const series = seriesAt(today, took(10, day, 3), took(11, day, 5));
    const reading = readingIn(series, day, 10);
    expect(questionsAboutCorrection(reading, { day, measured: read(4) }, today, series)).toEqual(
      [],
    );
  });

  it('the day is not doubted again where only the number is fixed', () => {
    const series = seriesAt(today, took(10, '2026-03-01', 3));
    const reading = readingIn(series, '2026-03-01', 10);
    const to = { day: reading.day, measured: read(4) };
    expect(questionsAboutCorrection(reading, to, today, series)).toEqual([]);
  });

  it('a day it is moved to is asked about, and a number already there', () => {
    const series = seriesAt(today, took(10, day, 3), took(11, '2026-03-12', 5));
    const reading = readingIn(series, day, 10);
    const to = { day: civilDay('2026-03-12'), measured: read(3) };
    expect(kinds(questionsAboutCorrection(reading, to, today, series))).toEqual([
      'day-not-come-yet',
      'already-read-today',
    ]);
  });

  it('a number past the ruler is asked about once', () => {
    const series = seriesAt(today, took(10, day, 31));
    const reading = readingIn(series, day, 10);
    const moved = { day: civilDay('2026-03-06'), measured: read(31) };
    expect(questionsAboutCorrection(reading, moved, today, series)).toEqual([]);
    const longer = { day, measured: read(41) };
    expect(kinds(questionsAboutCorrection(reading, longer, today, series))).toEqual([
      'past-the-ruler',
    ]);
  });
});
