import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { civilDay } from '#core/calendar';
import type { EntryId, WeatherWord } from '#core/journal';
import { exactPerUnit, nearestOnMark, type MarkId, type Measured, type Unit } from '#core/measure';
import { doubtsAbout, type DoubtCandidate, type Series } from '#core/series';
import { read } from '../journal/entries';
import { ofExact } from './simulated-plants';

const mm = (value: number) => read(value, 'mm', '1 mm');

const rainLog = (
  ...rows: readonly (readonly [day: string, measured: Measured, weather?: WeatherWord])[]
): Series =>
  ({
    specimen: {},
    investigation: { quantity: 'rain' },
    days: rows.map(([day, , weather]) => ({ day, readings: [{ weather }] })),
    points: rows.map(([day, { exact, unit, mark }], index) => ({
      ...{ day, exact, unit, mark, spanDays: 1, reading: `r${index}` as EntryId },
    })),
  }) as unknown as Series;

const kindsAsked = (
  measured: Measured,
  series: Series,
  more: Partial<DoubtCandidate> = {},
): readonly string[] =>
  doubtsAbout({ day: civilDay('2026-03-10'), measured, ...more }, series, []).map(
    ({ kind }) => kind,
  );

describe('rain', () => {
  it('as much as the day before asks whether the gauge was emptied', () => {
    expect(
      doubtsAbout(
        { day: civilDay('2026-03-10'), measured: mm(12) },
        rainLog(['2026-03-09', mm(12)]),
        [],
      ),
    ).toEqual([{ kind: 'rain-as-before', before: expect.objectContaining({ day: '2026-03-09' }) }]);
  });

  it.each([
    ['a dry day after a dry day', mm(0), ['2026-03-09', mm(0)]],
    ['a little, twice', mm(4), ['2026-03-09', mm(4)]],
    ['as much as two days before', mm(12), ['2026-03-08', mm(12)]],
    ['more than the day before', mm(13), ['2026-03-09', mm(12)]],
    ['a cloudburst', mm(100), ['2026-03-09', mm(0)]],
  ] as const)('%s asks nothing', (_name, measured, row) => {
    expect(kindsAsked(measured, rainLog(row))).toEqual([]);
  });

  it('a total of three days is held against the reading before them', () => {
    const series = rainLog(['2026-03-07', mm(12)]);
    expect(kindsAsked(mm(12), series, { spanDays: 3 })).toEqual(['rain-as-before']);
    expect(kindsAsked(mm(12), series)).toEqual([]);
    const emptied = rainLog(['2026-03-07', mm(12)], ['2026-03-09', mm(0)]);
    expect(kindsAsked(mm(12), emptied, { spanDays: 3 })).toEqual([]);
  });

  // Caps of 100 mm and 4 in a day: common practice, no source.
  it.each([
    [read(4.25, 'in', '1/4 in'), 1, ['rain-unit']],
    [read(4, 'in', '1/4 in'), 1, []],
    [read(12, 'cm', '1 cm'), 1, ['rain-unit']],
    [mm(101), 1, ['past-the-cap']],
    [mm(101), 2, []],
  ])('%j over %i days asks %j', (measured, spanDays, expected) => {
    expect(kindsAsked(measured, rainLog(), { spanDays })).toEqual(expected);
  });

  it('12 inches were perhaps 12 millimetres', () => {
    expect(
      doubtsAbout({ day: civilDay('2026-03-10'), measured: read(12, 'in', '1 in') }, rainLog(), []),
    ).toEqual([{ kind: 'rain-unit', perhapsUnit: 'mm', perhapsExact: 12 * exactPerUnit('mm') }]);
  });

  it('on the first day there is, asks nothing of the day before', () => {
    const candidate = { day: civilDay('1900-01-01'), measured: mm(12), weather: 'sun' } as const;
    expect(doubtsAbout(candidate, rainLog(), [])).toEqual([]);
  });

  it('water after two dry days asks for sprinkler or dew; one dry morning says nothing', () => {
    const afterSun = rainLog(['2026-03-09', mm(0), 'sun']);
    expect(kindsAsked(mm(2), afterSun, { weather: 'sun' })).toEqual(['rain-though-dry']);
    expect(kindsAsked(mm(0), afterSun, { weather: 'sun' })).toEqual([]);
    expect(kindsAsked(mm(2), afterSun, { weather: 'cloud' })).toEqual([]);
    expect(kindsAsked(mm(2), rainLog(['2026-03-09', mm(0), 'rain']), { weather: 'sun' })).toEqual(
      [],
    );
    expect(kindsAsked(mm(2), rainLog(['2026-03-09', mm(0)]), { weather: 'sun' })).toEqual([]);
  });
});

// Daily rain at Seattle 2012 to 2014, a wet place: NOAA, as copied in tests/reference.
describe('three years of real rain, read to a mark', () => {
  const rows = readFileSync(new URL('../../reference/rain_seattle.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','));

  it.each<[Unit, MarkId, number]>([
    ['mm', '1 mm', 5],
    ['mm', '0.1 mm', 4],
    ['in', '1/4 in', 4],
    ['in', '0.01 in', 4],
  ])('in %s to %s asks no more than %i times in 1 096 days', (unit, mark, most) => {
    const series = rainLog(
      ...rows.map(([day = '', millimetres]) => {
        const exact = nearestOnMark(Math.round(Number(millimetres) * 1e6), mark);
        return [day, ofExact(exact, unit, mark)] as const;
      }),
    );
    const asked = series.points.filter(
      ({ day, exact, reading }) =>
        doubtsAbout({ reading, day, measured: ofExact(exact, unit, mark) }, series, []).length > 0,
    );
    expect(series.points).toHaveLength(1_096);
    expect(asked.length).toBeLessThanOrEqual(most);
  });
});
