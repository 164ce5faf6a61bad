import { describe, expect, test } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { foldEntries, type JournalEntry } from '#core/journal';
import { exactPerUnit } from '#core/measure';
import { seriesOf, type Series } from '#core/series';
import { stripDaysOf } from '../../../src/lib/ui/strips/strip-days';
import { bean, begun, heights, read, took, written } from '../../core/journal/entries';

const seriesWith = (...entries: readonly JournalEntry[]): Series =>
  seriesOf(foldEntries([...begun, ...entries]), bean, civilDay('2026-04-03'))!;
const cm = exactPerUnit('cm');

describe('the places of a strip row', () => {
  test('are the days from the first thing written to the last, and name a month where it begins', () => {
    const series = seriesWith(took(10, '2026-03-30', 3), took(11, '2026-04-02', 5));
    expect(stripDaysOf(series).map(({ day, state, exact }) => [day, state, exact])).toEqual([
      ['Mon 30 Mar', 'number', 3 * cm],
      ['Tue 31', 'blank', null],
      ['Wed 1 Apr', 'blank', null],
      ['Thu 2', 'number', 5 * cm],
    ]);
  });

  test('say the day in full to who hears the row', () => {
    const series = seriesWith(took(10, '2026-03-30', 3), took(11, '2026-03-31', 5));
    expect(stripDaysOf(series).map((each) => each.dayInFull)).toEqual(['Mon 30 Mar', 'Tue 31 Mar']);
  });

  test('show the middle one of several readings of a day, and the newest in its colour', () => {
    const day = '2026-03-30';
    const series = seriesWith(took(10, day, 9), took(11, day, 7), took(12, day, 8));
    expect(stripDaysOf(series)).toMatchObject([{ exact: 8 * cm, text: '8 cm', isNewest: true }]);
  });

  test('of a shadow are one for each reading, by its time', () => {
    const day = civilDay('2026-03-30');
    const at = (number: number, time: string, value: number) =>
      written(number, {
        ...{ kind: 'reading-taken', specimen: bean, day, time: time as never },
        measured: read(value),
      });
    const series = seriesWith(
      written(5, {
        kind: 'investigation-changed',
        investigation: heights,
        to: { quantity: 'shadow' },
      }),
      at(10, '12:00', 60),
      at(11, '09:00', 110),
    );
    expect(stripDaysOf(series).map(({ day, dayInFull, text }) => [day, dayInFull, text])).toEqual([
      ['Mon 09:00', 'Mon 30 Mar 09:00', '110 cm'],
      ['Mon 12:00', 'Mon 30 Mar 12:00', '60 cm'],
    ]);
  });

  test('keep each state apart, and a total as wide as its days', () => {
    const first = civilDay('2026-03-30');
    const series = seriesWith(
      written(10, { kind: 'day-marked', specimen: bean, day: first, state: 'missed' }),
      written(11, { kind: 'kind-noted', specimen: bean, day: addDays(first, 1), word: 'sun' }),
      written(12, {
        ...{ kind: 'reading-taken', specimen: bean, day: addDays(first, 2) },
        ...{ measured: read(4), spanDays: 2 },
      }),
    );
    expect(stripDaysOf(series).map(({ state, spanDays }) => [state, spanDays])).toEqual([
      ['missed', undefined],
      ['blank', undefined],
      ['number', 2],
    ]);
  });
});
