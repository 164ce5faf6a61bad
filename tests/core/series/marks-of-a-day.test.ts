import { describe, expect, it } from 'vitest';
import { civilDay, parseClockTime } from '#core/calendar';
import { foldEntries } from '#core/journal';
import { seriesOf } from '#core/series';
import { bean, begun, written } from '../journal/entries';

const day = civilDay('2026-03-10');
const cloudAt = (number: number, text?: string) => {
  const time = text === undefined ? null : parseClockTime(text);
  return written(number, {
    ...{ kind: 'day-marked', specimen: bean, day, state: 'no-sun' },
    ...(time?.ok ? { time: time.value } : {}),
  });
};
const marksOf = (...entries: ReturnType<typeof cloudAt>[]) => {
  const series = seriesOf(foldEntries([...begun, ...entries]), bean, day);
  const row = series?.days.find((each) => each.day === day);
  return { stand: row?.marks.length, crossedOut: row?.crossedOut.length };
};

describe('marks of one day', () => {
  it('keeps a cloud at ten beside a cloud at eleven', () => {
    expect(marksOf(cloudAt(5, '10:00'), cloudAt(6, '11:00'))).toEqual({ stand: 2, crossedOut: 0 });
  });

  it('crosses out the earlier of two marks for the same time', () => {
    expect(marksOf(cloudAt(5, '10:00'), cloudAt(6, '10:00'))).toEqual({ stand: 1, crossedOut: 1 });
    expect(marksOf(cloudAt(5), cloudAt(6))).toEqual({ stand: 1, crossedOut: 1 });
  });
});
