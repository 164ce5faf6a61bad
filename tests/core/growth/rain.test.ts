import { describe, expect, it } from 'vitest';
import { addDays, civilDay, daysBetween, yearOf } from '#core/calendar';
import { amountIn, rainTotals, shadowDays, wetDays, type RainTotal } from '#core/growth';
import { exactPerUnit, formatExact, liesOnMark } from '#core/measure';
import { seriesWith, shadowSeries } from '../graphs/small-series';
import rain from '../../reference/rain.json';
import seattle from '../../reference/rain_seattle.csv?raw';

/**
 * Seattle 2012 to 2014 in tenths of a millimetre (npm vega-datasets 3.2.1, NOAA, US Government
 * work); totals of tests/reference/rain.json in exact rational arithmetic, agreeing with R.
 */
const rows = seattle
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','));
const seattleLog = seriesWith(
  rows.map((row) => Number(row[1])),
  { first: rows[0]![0]!, unit: 'mm', mark: '0.1 mm', quantity: 'rain' },
);
const inMm = ({ exact }: { exact: number }) => exact / exactPerUnit('mm');
const years = Object.entries(rain.years);
const months = years.flatMap(([, year]) => year.months);
const yearlyLog = (year: string) =>
  seattleLog.points.filter((point) => String(yearOf(point.day)) === year);

/** A year of it in hundredths of an inch: 0.1 mm is 50/127 of one, so no day falls half-way. */
const inchLog = (year: string) => {
  const days = rows.filter(([day]) => day!.startsWith(year));
  return seriesWith(
    days.map(([, mm]) => Math.round((Math.round(Number(mm) * 10) * 50) / 127) / 100),
    { first: `${year}-01-01`, unit: 'in', mark: '0.01 in', quantity: 'rain' },
  );
};

/** ISO 8601: a week belongs to the year of its Thursday. */
const isoWeekOf = ({ firstDay }: RainTotal): string => {
  const thursday = addDays(firstDay, 3);
  const week = Math.floor(daysBetween(civilDay(`${yearOf(thursday)}-01-01`), thursday) / 7) + 1;
  return `${yearOf(thursday)}-W${String(week).padStart(2, '0')}`;
};

describe('rain added up', () => {
  it('takes every day of the three years', () => {
    expect(seattleLog.points).toHaveLength(1461 - 365);
  });

  it.each(years)('of %s is the published total, though doubles would add to less', (year, each) => {
    const total = rainTotals(seattleLog, 'year').find(({ firstDay }) => firstDay.startsWith(year))!;
    expect(inMm(total)).toBe(Number(each.year.total_mm));
    expect(total.readings).toHaveLength(each.year.days);
    const running = total.readings.reduce((sum, reading) => sum + inMm(reading), 0);
    expect(running).not.toBe(Number(each.year.total_mm));
  });

  it.each(years)('of %s is written in inches to the hundredth', (year, each) => {
    const total = rainTotals(seattleLog, 'year').find(({ firstDay }) => firstDay.startsWith(year))!;
    const amount = amountIn(total.exact, ['0.1 mm'], 'in');
    expect(amount).toEqual({ text: `${each.year.total_in_exact_2dp} in`, isAbout: true });
  });

  // The same days as an observer in the United States writes them, each to the nearest 0.01 in.
  it.each(years)('of %s, read in inches each day, is the published sum of those', (year, each) => {
    const log = inchLog(year);
    const totals = rainTotals(log, 'month');
    const exact = totals.reduce((sum, total) => sum + total.exact, 0);
    expect(formatExact(exact, 'in', '0.01 in', { trailingZeros: 'keep' })).toBe(
      `${each.year['sum_of_days_each_rounded_to_0.01_in']} in`,
    );
    expect(rainTotals(log, 'year').map((total) => total.exact)).toEqual([exact]);
    expect(amountIn(exact, ['0.01 in'], 'in').isAbout).toBe(false);
    // Every reading is a whole number of hundredths, so no month can carry a part of one.
    for (const total of totals) expect(liesOnMark(total.exact, '0.01 in')).toBe(true);
  });

  it('of each of the 36 months is the published total', () => {
    const totals = rainTotals(seattleLog, 'month');
    expect(totals.map((total) => [total.firstDay.slice(0, 7), inMm(total)])).toEqual(
      months.map((month) => [month.month, Number(month.total_mm)]),
    );
    expect(totals.map((total) => total.readings.length)).toEqual(months.map(({ days }) => days));
  });

  it('of each week from Monday to Sunday is the published total', () => {
    // The reference cuts the first and last week of each year at the year's end: add the parts.
    const expected = new Map<string, number>();
    for (const [, year] of years) {
      const weeks = Object.entries(year['iso_weeks_mm (Mon-Sun; partial at year ends)']);
      for (const [week, mm] of weeks) {
        const tenths = (expected.get(week) ?? 0) + Math.round(Number(mm) * 10);
        expected.set(week, tenths);
      }
    }
    const totals = rainTotals(seattleLog, 'week');
    expect(totals.map((total) => [isoWeekOf(total), Math.round(inMm(total) * 10)])).toEqual([
      ...expected,
    ]);
  });
});

describe('wet days', () => {
  it.each(years)('of %s are counted by both thresholds', (year, each) => {
    expect(wetDays(yearlyLog(year))).toMatchObject({
      daysRead: each.year.days,
      moreThanNothing: each.year.wet_days_gt_0,
      atLeastAHundredthInch: each.year['days_ge_0.254mm(0.01in)'],
      atLeastOneMillimetre: each.year.days_ge_1mm,
    });
  });

  it.each(years)('of %s have the published wettest day', (year, each) => {
    const { wettest } = wetDays(yearlyLog(year));
    expect(wettest?.exact).toBe(Math.round(Number(each.year.wettest_mm) * exactPerUnit('mm')));
    expect(wettest?.days).toEqual(each.year.wettest_dates);
  });

  it.each(months)('of $month are counted, with all its wettest days', (month) => {
    const points = seattleLog.points.filter(({ day }) => day.startsWith(month.month));
    const found = wetDays(points);
    expect(found.moreThanNothing).toBe(month.wet_days_gt_0);
    expect(found.atLeastOneMillimetre).toBe(month.days_ge_1mm);
    if (Number(month.wettest_mm) > 0) expect(found.wettest?.days).toEqual(month.wettest_dates);
  });

  it('do not take a several-day total for one wet day', () => {
    const log = seriesWith([0, 0, 9, 2], { spanDays: { 2: 3 }, unit: 'mm', mark: '1 mm' });
    expect(wetDays(log.points)).toMatchObject({
      ...{ daysRead: 3, moreThanNothing: 1, severalDayTotals: 1 },
      wettest: { exact: 2 * exactPerUnit('mm'), days: ['2026-03-05'] },
    });
  });

  it('add two readings of one day', () => {
    const log = seriesWith([[0.6, 0.6]], { unit: 'mm', mark: '0.1 mm' });
    expect(wetDays(log.points)).toMatchObject({ daysRead: 1, atLeastOneMillimetre: 1 });
  });

  it('have no wettest day when it never rained', () => {
    expect(wetDays(seriesWith([0, 0], { unit: 'mm' }).points).wettest).toBeNull();
  });
});

describe('a total of several days', () => {
  // Friday read; Saturday and Sunday not; Monday's reading holds three days.
  const log = seriesWith([1, 2, 3, 4, 5, null, null, 9, 1], {
    ...{ unit: 'mm', mark: '1 mm', quantity: 'rain' },
    spanDays: { 7: 3 },
  });
  const weeks = rainTotals(log, 'week');

  it('is counted once, in the week it ends in', () => {
    expect(weeks.map(inMm)).toEqual([15, 10]);
  });

  it('is pointed out there, as begun in the week before', () => {
    expect(weeks.map(({ fromBefore }) => fromBefore.map(({ day }) => day))).toEqual([
      [],
      ['2026-03-09'],
    ]);
    expect(rainTotals(log, 'month')[0]!.fromBefore).toEqual([]);
    expect(rainTotals(log, 'month')[0]!.severalDays).toHaveLength(1);
  });

  it('accounts for its days: they were not missed', () => {
    expect(weeks.map(({ daysWithout }) => daysWithout)).toEqual([0, 0]);
  });
});

describe('a rain log with holes', () => {
  it('counts the days nobody can account for, and keeps a trace apart from a dry day', () => {
    const log = seriesWith([3, 'trace', 0, 'missed', null, 2], { unit: 'mm', mark: '1 mm' });
    expect(rainTotals(log, 'week')[0]).toMatchObject({
      exact: 5 * exactPerUnit('mm'),
      traceDays: 1,
      daysWithout: 2,
    });
  });

  it('counts traces as 0 in the sum, but neither as dry nor as without', () => {
    const log = seriesWith(['trace', 'trace', 'trace', 'trace', 'trace', 'trace', 'trace'], {
      ...{ unit: 'in', mark: '0.01 in' },
    });
    // Any number of traces adds up to a trace (NWSM 10-1315, from memory).
    expect(rainTotals(log, 'week')).toMatchObject([
      { exact: 0, traceDays: 7, daysWithout: 0, readings: [] },
    ]);
    expect(wetDays(log.points)).toMatchObject({ daysRead: 0, moreThanNothing: 0 });
  });

  it('adds quarter inches and hundredths exactly', () => {
    const log = seriesWith([0.25, 0.75, 0.5, 0, 0.01, 0.02, 0.07], { unit: 'in', mark: '0.01 in' });
    expect(rainTotals(log, 'week')[0]!.exact).toBe(Math.round(1.6 * exactPerUnit('in')));
  });

  it('keeps the two thresholds of a wet day apart', () => {
    // The third is 0.01 in exactly.
    const log = seriesWith([0.1, 0.2, 0.254, 0.3, 0.9, 1], { unit: 'mm', mark: '0.1 mm' });
    expect(wetDays(log.points)).toMatchObject({
      ...{ moreThanNothing: 6, atLeastAHundredthInch: 4, atLeastOneMillimetre: 1 },
    });
  });

  it('gives a total of several days over a month’s end to the month it was read in', () => {
    const log = seriesWith([2, null, null, 9], {
      ...{ first: '2026-03-30', unit: 'mm', mark: '1 mm', spanDays: { 3: 3 } },
    });
    const months = rainTotals(log, 'month');
    expect(months.map(inMm)).toEqual([2, 9]);
    expect(months.map(({ fromBefore }) => fromBefore.length)).toEqual([0, 1]);
    expect(months.map(({ daysWithout }) => daysWithout)).toEqual([0, 0]);
  });

  it('shows a week without a reading as a week without a reading, not as dry', () => {
    const log = seriesWith([4, ...Array<null>(14).fill(null), 4], { unit: 'mm', mark: '1 mm' });
    const weeks = rainTotals(log, 'week');
    expect(weeks.map(({ readings }) => readings.length)).toEqual([1, 0, 1]);
    expect(weeks[1]!.daysWithout).toBe(7);
  });

  it('is empty when nothing was written', () => {
    expect(rainTotals(seriesWith([null, null]), 'week')).toEqual([]);
  });
});

describe('a shadow day by day', () => {
  const day = (readings: Parameters<typeof shadowSeries>[1]) =>
    shadowDays(shadowSeries('2026-06-01', readings).points)[0]!;

  it('names the shortest reading, and both when two are equal', () => {
    const one = day([
      ['15:00', 80],
      ['09:00', 95],
      ['12:30', 40],
    ]);
    expect(one.readings.map(({ time }) => time)).toEqual(['09:00', '12:30', '15:00']);
    expect(one.shortest.map(({ time }) => time)).toEqual(['12:30']);
    const two = day([
      ['12:00', 40],
      ['13:00', 40],
      ['15:00', 80],
    ]);
    expect(two.shortest.map(({ time }) => time)).toEqual(['12:00', '13:00']);
  });

  it('names none of two readings, nor of those without a time', () => {
    expect(
      day([
        ['09:00', 95],
        ['12:00', 40],
        [undefined, 30],
      ]).shortest,
    ).toEqual([]);
  });

  it('keeps days apart', () => {
    const points = [
      ...shadowSeries('2026-06-02', [['09:00', 95]]).points,
      ...shadowSeries('2026-06-01', [['09:00', 90]]).points,
    ];
    expect(shadowDays(points).map((each) => [each.day, each.readings.length])).toEqual([
      ['2026-06-01', 1],
      ['2026-06-02', 1],
    ]);
  });
});
