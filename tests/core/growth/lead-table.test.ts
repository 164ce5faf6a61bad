import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { foldEntries, type Entry, type JournalEntry, type SpecimenId } from '#core/journal';
import type { Measured } from '#core/measure';
import { seriesOf, type Series } from '#core/series';
import { largestLead, leadTable } from '#core/growth';
import { anId, bean, begun, heights, read, written } from '../journal/entries';

const first = civilDay('2026-03-02');
const beanB = anId<SpecimenId>(902);
const addedB = written(5, {
  kind: 'specimen-added',
  ...{ specimen: beanB, investigation: heights, name: 'Bean B', startedOn: first },
});

const took = (
  number: number,
  specimen: SpecimenId,
  day: number,
  measured: Measured,
  spanDays?: number,
): Entry =>
  written(number, {
    ...{ kind: 'reading-taken', specimen, day: addDays(first, day), measured },
    ...(spanDays === undefined ? {} : { spanDays }),
  });

const pairOf = (...entries: readonly JournalEntry[]): readonly [Series, Series] => {
  const notebook = foldEntries([...begun, addedB, ...entries]);
  const today = addDays(first, 6);
  return [seriesOf(notebook, bean, today)!, seriesOf(notebook, beanB, today)!];
};

describe('the table of leads', () => {
  it('has a row for each day on which both were measured, and no other', () => {
    const [a, b] = pairOf(
      took(10, bean, 0, read(3)),
      took(11, beanB, 0, read(2)),
      took(12, bean, 1, read(4)),
      took(13, beanB, 2, read(5)),
      took(14, bean, 3, read(6)),
      took(15, beanB, 3, read(6)),
      took(16, bean, 4, read(7)),
      took(17, beanB, 4, read(11)),
    );
    expect(leadTable(a, b)).toEqual([
      { day: '2026-03-02', a: read(3), b: read(2), leadExact: 10_000_000, leader: 'a' },
      { day: '2026-03-05', a: read(6), b: read(6), leadExact: 0, leader: 'same' },
      { day: '2026-03-06', a: read(7), b: read(11), leadExact: 40_000_000, leader: 'b' },
    ]);
  });

  it('has no row, and no 0, for a seed that is not up', () => {
    const notUp = written(20, {
      kind: 'day-marked',
      ...{ specimen: beanB, day: first, state: 'not-up-yet' as const },
    });
    const [a, b] = pairOf(took(10, bean, 0, read(3)), notUp);
    expect(leadTable(a, b)).toEqual([]);
  });

  it('compares readings in one unit only for a child, and lengths exactly for a grown-up', () => {
    const [a, b] = pairOf(
      took(10, bean, 0, read(13)),
      took(11, beanB, 0, read(5, 'in', '1 in')),
      took(12, bean, 1, read(14)),
      took(13, beanB, 1, read(135, 'mm', '1 mm')),
    );
    expect(leadTable(a, b)).toEqual([]);
    // 5 in = 12.7 cm exactly (NIST SP 811 App. B.8).
    expect(leadTable(a, b, 'grown-up').map(({ leadExact, leader }) => [leadExact, leader])).toEqual(
      [
        [3_000_000, 'a'],
        [5_000_000, 'a'],
      ],
    );
  });

  it('never compares a count with a length', () => {
    const [a, b] = pairOf(took(10, bean, 0, read(3)), took(11, beanB, 0, read(3, 'count', '1')));
    expect(leadTable(a, b, 'grown-up')).toEqual([]);
  });

  it('takes the middle reading of a day', () => {
    const [a, b] = pairOf(
      ...[9, 3, 4].map((value, index) => took(10 + index, bean, 0, read(value))),
      took(20, beanB, 0, read(4)),
    );
    expect(leadTable(a, b)[0]).toMatchObject({ a: read(4), leader: 'same' });
  });

  it('leaves out rain of different numbers of days, and shadows', () => {
    const [a, b] = pairOf(
      took(10, bean, 0, read(9, 'mm', '1 mm'), 3),
      took(11, beanB, 0, read(2, 'mm', '1 mm')),
      took(12, bean, 1, read(4, 'mm', '1 mm')),
      took(13, beanB, 1, read(6, 'mm', '1 mm')),
    );
    const as = (series: Series, quantity: 'rain' | 'shadow'): Series => ({
      ...series,
      investigation: { ...series.investigation, quantity },
    });
    expect(leadTable(as(a, 'rain'), as(b, 'rain')).map(({ day }) => day)).toEqual(['2026-03-03']);
    expect(leadTable(as(a, 'shadow'), as(b, 'shadow'))).toEqual([]);
    expect(leadTable(a, as(b, 'rain'))).toEqual([]);
  });

  it('is the same seen from the other side', () => {
    const heightsOfDays = fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 6 });
    const mirrored = { a: 'b', b: 'a', same: 'same' } as const;
    fc.assert(
      fc.property(heightsOfDays, (values) => {
        const [a, b] = pairOf(
          ...values.flatMap(([ofA, ofB], day) => [
            took(10 + 2 * day, bean, day, read(ofA)),
            took(11 + 2 * day, beanB, day, read(ofB)),
          ]),
        );
        const rows = leadTable(a, b);
        expect(rows).toHaveLength(values.length);
        expect(leadTable(b, a)).toEqual(
          rows.map((row) => ({ ...row, a: row.b, b: row.a, leader: mirrored[row.leader] })),
        );
        const largest = Math.max(0, ...values.map(([ofA, ofB]) => Math.abs(ofA - ofB)));
        const days = values.flatMap(([ofA, ofB], day) =>
          largest > 0 && Math.abs(ofA - ofB) === largest ? [addDays(first, day)] : [],
        );
        expect(largestLead(rows).map(({ day }) => day)).toEqual(days);
      }),
      { seed: 7710, numRuns: 100 },
    );
  });
});
