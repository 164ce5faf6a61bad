import { getPosition } from 'suncalc';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay, type ClockTime } from '#core/calendar';
import type { EntryId } from '#core/journal';
import type { Measured } from '#core/measure';
import { doubtsAbout, type DoubtCandidate, type Series } from '#core/series';
import { read } from '../journal/entries';

const today = civilDay('2026-03-10');
const at = (time: string) => time as ClockTime;

const shadowLog = (
  rows: readonly (readonly [day: string, time: string | undefined, measured: Measured])[],
  stick?: Measured,
): Series =>
  ({
    specimen: stick ? { standHeight: stick } : {},
    investigation: { quantity: 'shadow' },
    days: [],
    points: rows.map(([day, time, { exact, unit, mark }], index) => ({
      ...{ day, exact, unit, mark, spanDays: 1, reading: `r${index}` as EntryId },
      ...(time === undefined ? {} : { time }),
    })),
  }) as unknown as Series;

const asked = (candidate: Partial<DoubtCandidate>, series: Series) =>
  doubtsAbout({ day: today, measured: read(40), ...candidate }, series, []);

describe('a shadow', () => {
  it('that is longer at midday than in the morning asks about the time', () => {
    const series = shadowLog([[today, '09:00', read(60)]]);
    expect(asked({ time: at('12:00'), measured: read(90) }, series)).toEqual([
      { kind: 'midday-longer', morning: expect.objectContaining({ time: '09:00' }) },
    ]);
    expect(asked({ time: at('12:00'), measured: read(40) }, series)).toEqual([]);
    expect(asked({ time: at('16:00'), measured: read(90) }, series)).toEqual([]);
    expect(asked({ measured: read(90) }, series)).toEqual([]);
  });

  it('that differs by more than 15 % at the same time next day asks about stick and place', () => {
    const series = shadowLog([['2026-03-09', '09:00', read(60)]]);
    const doubts = asked({ time: at('09:05'), measured: read(70) }, series);
    expect(doubts).toMatchObject([{ kind: 'shadow-not-as-before', before: { day: '2026-03-09' } }]);
    expect(doubts[0]).toHaveProperty('shareOff', 10 / 60);
    expect(asked({ time: at('09:00'), measured: read(69) }, series)).toEqual([]);
    expect(asked({ time: at('09:06'), measured: read(70) }, series)).toEqual([]);
    expect(
      asked({ time: at('09:00'), measured: read(70), day: addDays(today, 3) }, series),
    ).toEqual([]);
  });

  it('so short that one mark is a large share of it is not asked about', () => {
    const series = shadowLog([['2026-03-09', '12:00', read(5)]]);
    expect(asked({ time: at('12:00'), measured: read(6) }, series)).toEqual([]);
    expect(asked({ time: at('12:00'), measured: read(7) }, series)).toHaveLength(1);
  });

  it('of more than six sticks is asked about, and of nothing too', () => {
    expect(asked({ measured: read(181) }, shadowLog([], read(30)))).toEqual([
      { kind: 'past-the-cap', capExact: read(180).exact },
    ]);
    expect(asked({ measured: read(180) }, shadowLog([], read(30)))).toEqual([]);
    expect(asked({ measured: read(999) }, shadowLog([]))).toEqual([]);
    expect(asked({ measured: read(0) }, shadowLog([], read(30)))).toEqual([
      { kind: 'shadow-zero' },
    ]);
  });
});

/** Near the edges of time zones, where the sun's noon is furthest from the clock's. */
const places: readonly (readonly [
  name: string,
  north: number,
  east: number,
  hoursFromUtc: number,
])[] = [
  ['east of Maine', 44.9, -67, -5],
  ['west of Michigan', 46.5, -90.3, -5],
  ['west of Texas', 31, -104.9, -6],
  ['west of North Dakota', 46.9, -103.9, -6],
  ['east of Alabama', 31.2, -85, -6],
  ['south of Florida', 25, -80.3, -5],
  ['north of Idaho', 48.9, -116.1, -8],
  ['south of Arizona', 31.5, -110, -7],
];

// The sun's height from suncalc, an independent library; the rules know nothing of the place.
describe.each(places)('true shadows in the %s', (_name, north, east, hoursFromUtc) => {
  /** The shadow of a 30 cm stick in whole centimetres, or null while the sun is below ten degrees. */
  const shadowOn = (dayOfYear: number, time: string): Measured | null => {
    const [hour = 0, minute = 0] = time.split(':').map(Number);
    const moment = Date.UTC(2026, 0, 1 + dayOfYear, hour - hoursFromUtc, minute);
    const degrees = getPosition(new Date(moment), north, east).altitude;
    return degrees < 10 ? null : read(Math.round(30 / Math.tan((degrees * Math.PI) / 180)));
  };
  const daysOfYear = Array.from({ length: 92 }, (_, index) => index * 4);
  const newYear = civilDay('2026-01-01');
  const doubtsOf = (
    dayOfYear: number,
    time: string,
    earlierDay: number,
    earlierTime: string,
    readAt = time,
  ) => {
    const [before, now] = [shadowOn(earlierDay, earlierTime), shadowOn(dayOfYear, readAt)];
    if (!before || !now) return [];
    const log = shadowLog([[addDays(newYear, earlierDay), earlierTime, before]], read(30));
    return asked({ day: addDays(newYear, dayOfYear), time: at(time), measured: now }, log);
  };

  it.each(['08:00', '08:45', '09:15'])('at midday are never asked about after %s', (morning) => {
    for (const midday of ['11:30', '12:00', '13:00']) {
      for (const day of daysOfYear) expect(doubtsOf(day, midday, day, morning)).toEqual([]);
    }
  });

  it('at the same time up to three days later are never asked about', () => {
    for (const time of ['08:00', '10:00', '12:00', '14:00', '16:00']) {
      for (const day of daysOfYear) {
        for (const gap of [1, 2, 3]) expect(doubtsOf(day + gap, time, day, time)).toEqual([]);
      }
    }
  });

  it('read an hour and a half late in spring are', () => {
    expect(doubtsOf(81, '09:30', 80, '09:30', '11:00').length).toBe(1);
  });
});
