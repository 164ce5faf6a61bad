import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, type JournalEntry } from '#core/journal';
import type { Measured } from '#core/measure';
import {
  estimatesBy,
  estimatesOf,
  guessUnitExact,
  isAnswered,
  missOf,
  openEstimate,
} from '#core/series';
import { bean, begun, child, phone, read, takenBack, took, written } from '../journal/entries';
import { corrected } from './bean-log';
import { guessed, idOf, other, tookIn } from './care-log';

const notebookOf = (...entries: readonly JournalEntry[]) => foldEntries([...begun, ...entries]);
const answers = (...entries: readonly JournalEntry[]) =>
  estimatesOf(notebookOf(...entries), bean).map(({ reading }) => reading?.id ?? null);
const monday = '2026-03-02';

describe('an estimate', () => {
  it('is answered by the first reading of its day written after it', () => {
    const entries = [
      took(10, monday, 3),
      guessed(11, monday, 5),
      took(12, monday, 4),
      took(13, monday, 6),
    ];
    expect(answers(...entries)).toEqual([idOf(12)]);
  });

  it('is not answered by a reading of another day, however soon it comes', () => {
    expect(answers(guessed(10, monday, 5), took(11, '2026-03-03', 5))).toEqual([null]);
  });

  it('is not answered by a reading of another person', () => {
    expect(answers(guessed(10, monday, 5), took(11, monday, 5, { author: other }))).toEqual([null]);
  });

  it('of nobody in particular is answered by a reading of nobody in particular', () => {
    const nobody = { author: null };
    expect(
      answers(
        guessed(10, monday, 5, nobody),
        took(11, monday, 5),
        took(12, monday, 6, { ...nobody }),
      ),
    ).toEqual([idOf(12)]);
  });

  it('is not answered by a reading that was taken back, or that moved to another day', () => {
    expect(answers(guessed(10, monday, 5), took(11, monday, 5), takenBack(12, 11))).toEqual([null]);
    const to = { day: civilDay('2026-03-03'), measured: read(5) };
    expect(answers(guessed(10, monday, 5), took(11, monday, 5), corrected(12, 11, to))).toEqual([
      null,
    ]);
  });

  it('that was taken back is left out', () => {
    expect(answers(guessed(10, monday, 5), took(11, monday, 5), takenBack(12, 10))).toEqual([]);
  });

  it('is held against the reading as it stands after a correction', () => {
    const to = { day: civilDay(monday), measured: read(8) };
    const notebook = notebookOf(
      guessed(10, monday, 5),
      took(11, monday, 18),
      corrected(12, 11, to),
    );
    expect(estimatesOf(notebook, bean)).toMatchObject([
      { missExact: -30_000_000, direction: 'too-short', size: 'far' },
    ]);
  });

  it('of a length is not answered by a count', () => {
    const count: Measured = { text: '5', unit: 'count', mark: '1', exact: 5 };
    expect(answers(guessed(10, monday, 5), tookIn(11, monday, count))).toEqual([null]);
  });

  it('written on another device at the same moment keeps the order of entries', () => {
    const at = { minute: 30 };
    expect(
      answers(guessed(10, monday, 5, at), took(11, monday, 5, { ...at, device: phone })),
    ).toEqual([idOf(11)]);
    expect(
      answers(guessed(10, monday, 5, { ...at, device: phone }), took(11, monday, 5, at)),
    ).toEqual([null]);
  });

  it('waits, open, until it is measured; the last one of the day is the open one', () => {
    const entries = [guessed(10, monday, 5), guessed(11, monday, 6)];
    const open = (...more: readonly JournalEntry[]) =>
      openEstimate(notebookOf(...entries, ...more), bean, civilDay(monday), child)?.id ?? null;
    expect(open()).toBe(idOf(11));
    expect(open(took(12, monday, 6))).toBeNull();
    expect(open(takenBack(12, 11))).toBe(idOf(10));
    expect(openEstimate(notebookOf(...entries), bean, civilDay('2026-03-03'), child)).toBeNull();
    expect(openEstimate(notebookOf(...entries), bean, civilDay(monday), other)).toBeNull();
  });

  it('is listed for its own author only', () => {
    const notebook = notebookOf(
      guessed(10, monday, 5, { author: other }),
      guessed(11, monday, 6),
      took(12, monday, 6),
    );
    const mine = estimatesBy(notebook, child);
    expect(mine.map(({ estimate }) => estimate.id)).toEqual([idOf(11)]);
    expect(mine.filter(isAnswered)).toHaveLength(1);
    expect(estimatesBy(notebook, null)).toEqual([]);
  });

  it('has the same outcome in whatever order the entries arrive', () => {
    const entries = [
      ...begun,
      guessed(10, monday, 5),
      took(11, monday, 4),
      guessed(12, monday, 9),
      took(13, monday, 8, { author: other }),
      took(14, monday, 7),
      written(15, { kind: 'entry-taken-back', entry: idOf(11) }),
    ];
    const expected = estimatesOf(foldEntries(entries), bean);
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (shuffled) => {
        expect(estimatesOf(foldEntries(shuffled), bean)).toEqual(expected);
      }),
      { seed: 7506, numRuns: 50 },
    );
  });
});

/** The rule of the sizes is common practice without a source; each row is worked out by hand. */
describe('the size of a miss', () => {
  it.each([
    // Below 5 units only units count.
    [2, 3, 'very-close'],
    [3, 2, 'very-close'],
    [0, 1, 'very-close'],
    [6, 4, 'close'],
    [1, 3, 'close'],
    [1, 4, 'far'],
    [7, 4, 'far'],
    // From 5 units on: 1 unit or a tenth, then a quarter.
    [6, 5, 'very-close'],
    [7, 5, 'far'],
    [10, 8, 'close'],
    [11, 8, 'far'],
    [9, 10, 'very-close'],
    [8, 10, 'close'],
    [22, 20, 'very-close'],
    [23, 20, 'close'],
    [25, 20, 'close'],
    [26, 20, 'far'],
    [15, 20, 'close'],
    [14, 20, 'far'],
    [110, 100, 'very-close'],
    [111, 100, 'close'],
  ] as const)('of %s cm for %s cm is %s', (guess, reading, size) => {
    expect(missOf(read(guess), read(reading)).size).toBe(size);
  });

  it('lies exactly on a tenth and a quarter without any dust of fractions', () => {
    const mm = (value: number) => read(value, 'mm', '1 mm');
    expect(missOf(mm(77), mm(70)).size).toBe('very-close');
    expect(missOf(mm(78), mm(70)).size).toBe('close');
    expect(missOf(mm(105), mm(84)).size).toBe('close');
    expect(missOf(mm(106), mm(84)).size).toBe('far');
  });

  it("is judged by the reading's unit, and compared exactly, across units", () => {
    const inches = (value: number) => read(value, 'in', '1 in');
    // 1 in = 2.54 cm exactly (NIST SP 811 App. B.8): 12.7 cm for 15 cm misses by 2.3 cm.
    expect(missOf(inches(5), read(15))).toEqual({
      missExact: -23_000_000,
      direction: 'too-short',
      size: 'close',
    });
    // 15 cm for 5 in misses by 0.91 in: within one inch.
    expect(missOf(read(15), inches(5))).toMatchObject({
      direction: 'too-long',
      size: 'very-close',
    });
  });

  it('takes a metre for no unit: a shadow of metres is judged by the unit of its mark', () => {
    const metres = (value: number) => read(value, 'm', '1 cm');
    expect(missOf(metres(2.1), metres(1.2)).size).toBe('far');
    expect(missOf(metres(1.3), metres(1.2)).size).toBe('very-close');
    expect(guessUnitExact(read(6, 'ft', '1 in'))).toBe(25_400_000);
    expect(guessUnitExact(read(2, 'm', '0.1 m'))).toBe(100_000_000);
  });

  it('names the direction, and only an equal length is exact', () => {
    expect(missOf(read(4), read(4))).toEqual({
      missExact: 0,
      direction: 'exact',
      size: 'very-close',
    });
    expect(missOf(read(10), read(100, 'mm', '1 mm')).direction).toBe('exact');
  });

  it('never gets kinder as the miss grows', () => {
    const rank = { 'very-close': 0, close: 1, far: 2 };
    fc.assert(
      fc.property(fc.nat(400), fc.nat(400), fc.nat(400), (reading, one, more) => {
        const ofMiss = (miss: number) =>
          rank[missOf(read(reading + miss, 'mm'), read(reading, 'mm')).size];
        expect(ofMiss(one)).toBeLessThanOrEqual(ofMiss(one + more));
      }),
      { seed: 7507 },
    );
  });

  it('of a count for a length is our own mistake', () => {
    const count: Measured = { text: '5', unit: 'count', mark: '1', exact: 5 };
    expect(() => missOf(count, read(5))).toThrow('A count cannot be held against a length');
  });
});
