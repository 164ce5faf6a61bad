import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import { foldEntries, type JournalEntry, type PersonId, type Quantity } from '#core/journal';
import { daysReadByMany, seriesOf, spreadOfDay } from '#core/series';
import logs from '../../reference/logs.json';
import { anId, bean, begun, child, heights, read, took, written } from '../journal/entries';

const monday = civilDay('2026-03-02');
const [brother, mother] = [anId<PersonId>(702), anId<PersonId>(703)];

const seriesWith = (...entries: readonly JournalEntry[]) =>
  seriesOf(foldEntries([...begun, ...entries]), bean, civilDay('2026-03-10'))!;

const three = [
  took(10, monday, 12, { author: child }),
  took(11, monday, 14, { author: brother }),
  took(12, monday, 13, { author: mother }),
];

describe('the spread of a day', () => {
  it('is told by the smallest, the largest and the middle number, with whose they are', () => {
    const spread = spreadOfDay(seriesWith(...three), monday)!;
    expect(spread).toMatchObject({ day: monday, unit: 'cm', spreadExact: 20_000_000 });
    expect([spread.smallest.text, spread.middle.text, spread.largest.text]).toEqual([
      '12',
      '13',
      '14',
    ]);
    expect(spread.readings.map(({ author }) => author)).toEqual([child, mother, brother]);
  });

  it('of two, has the smaller in the middle, because it was read', () => {
    expect(spreadOfDay(seriesWith(three[0]!, three[1]!), monday)?.middle.text).toBe('12');
  });

  it('takes the last reading of a person who read again', () => {
    const again = took(13, monday, 13, { author: child });
    const spread = spreadOfDay(seriesWith(...three, again), monday)!;
    expect(spread.readings).toHaveLength(3);
    expect(spread.smallest.text).toBe('13');
  });

  it('takes each reading that nobody signed for a person’s own', () => {
    const unsigned = [12, 14, 13, 13].map((value, index) =>
      took(20 + index, monday, value, { author: null }),
    );
    const spread = spreadOfDay(seriesWith(...unsigned), monday)!;
    expect(spread.readings.map(({ counted }) => counted.text)).toEqual(['12', '13', '13', '14']);
    expect(spread.middle.text).toBe('13');
    const mixed = spreadOfDay(seriesWith(three[0]!, ...unsigned), monday)!;
    expect(mixed.readings).toHaveLength(5);
  });

  it('needs two people, on that day, in one unit', () => {
    expect(spreadOfDay(seriesWith(three[0]!), monday)).toBeNull();
    expect(
      spreadOfDay(seriesWith(three[0]!, took(13, monday, 13, { author: child })), monday),
    ).toBeNull();
    expect(
      spreadOfDay(seriesWith(three[0]!, took(13, '2026-03-03', 13, { author: brother })), monday),
    ).toBeNull();
    const inInches = written(
      13,
      { kind: 'reading-taken', specimen: bean, day: monday, measured: read(5, 'in', '1 in') },
      { author: brother },
    );
    expect(spreadOfDay(seriesWith(three[0]!, inInches), monday)).toBeNull();
    expect(spreadOfDay(seriesWith(...three, inInches), monday)?.readings).toHaveLength(3);
  });

  it.each<Quantity>(['rain', 'shadow'])('is not told of %s', (quantity) => {
    const change = written(5, {
      kind: 'investigation-changed',
      investigation: heights,
      to: { quantity },
    });
    expect(spreadOfDay(seriesWith(change, ...three), monday)).toBeNull();
  });

  // Source: tests/reference/logs.json, made for testing and worked out in exact fractions.
  it('is told for each day with two readings of the log with a same-day repeat', () => {
    const rows = logs.logs.find(({ name }) => name === 'same-day repeat')![
      'rows (date,value,unit)'
    ];
    const entries = rows.map(([day = '', text], index) =>
      written(
        10 + index,
        {
          kind: 'reading-taken',
          specimen: bean,
          day: civilDay(day),
          measured: read(Number(text), 'cm', '1 mm'),
        },
        { author: index % 2 === 0 ? child : brother },
      ),
    );
    expect(daysReadByMany(seriesWith(...entries))).toMatchObject([
      {
        day: '2025-05-01',
        smallest: { text: '3' },
        largest: { text: '3.2' },
        spreadExact: 2_000_000,
      },
    ]);
  });
});
