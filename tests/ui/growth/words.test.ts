import { describe, expect, it } from 'vitest';
import { addDays, civilDay, type CivilDay } from '#core/calendar';
import {
  changesBetween,
  fastestStretch,
  fastestWindow,
  latestChange,
  rainTotals,
  shadowDays,
  wetDays,
  type GrowthPoint,
} from '#core/growth';
import { kindTally } from '#core/graphs';
import type { Quantity } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import type { Series } from '#core/series';
import {
  childGrowthWords,
  childKindWords,
  childRainWords,
  childShadowWords,
  fastestWords,
  periodWords,
  shareWords,
  spokenWords,
  totalNotes,
  totalWords,
  trendTooFewWords,
  wetDayWords,
  whyTooShortWords,
} from '#ui/growth-words';
import { pointsOn, sunflower } from '../../core/growth/log-points';
import { seriesWith, shadowSeries } from '../../core/graphs/small-series';

const friday = civilDay('2026-03-13');
const told = (
  points: readonly GrowthPoint[],
  today: CivilDay = friday,
  quantity: Quantity = 'plant-height',
) => childGrowthWords(latestChange(points), quantity, today);
/** Readings so many days before Friday 13 March. */
const ago = (
  days: readonly number[],
  values: readonly number[],
  unit: Unit = 'cm',
  mark: MarkId = '1 cm',
) =>
  pointsOn(
    days.map((day) => -day),
    values,
    unit,
    mark,
    friday,
  );

describe('the sentence to read with the child', () => {
  it('names the days of the last week', () => {
    expect(told(ago([3, 0], [4, 7]))).toEqual(['It grew 3 cm from Tuesday to Friday.']);
  });

  it('gives the date of an older day, and the year of an older year', () => {
    expect(told(ago([10, 7], [4, 7]))).toEqual(['It grew 3 cm from 3 March to 6 March.']);
    expect(told(ago([10, 7], [4, 7]), civilDay('2027-01-05'))).toEqual([
      ...['It grew 3 cm.', 'That was from 3 March 2026 to 6 March 2026.'],
    ]);
  });

  it('speaks in the unit that was read, fractions and all', () => {
    expect(told(ago([3, 0], [2, 3.5], 'in', '1/2 in'))).toEqual([
      'It grew 1 1/2 inches from Tuesday to Friday.',
    ]);
  });

  it('is kind about a plant that stayed or became shorter', () => {
    expect(told(ago([3, 0], [4, 4]))).toEqual(['It stayed the same from Tuesday to Friday.']);
    expect(told(ago([3, 0], [4, 3]))).toEqual(['It got 1 cm shorter from Tuesday to Friday.']);
  });

  it('lets another length get longer, and counts be counted', () => {
    expect(told(ago([3, 0], [4, 6]), friday, 'length')).toEqual([
      'It got 2 cm longer from Tuesday to Friday.',
    ]);
    expect(told(ago([3, 0], [4, 6], 'count', '1'))).toEqual([
      'We counted 2 more from Tuesday to Friday.',
    ]);
    expect(told(ago([3, 0], [6, 5], 'count', '1'))).toEqual([
      'We counted 1 fewer from Tuesday to Friday.',
    ]);
  });

  it('asks for one more measure, and for none too soon', () => {
    expect(told(ago([0], [4]))).toEqual(['We need one more measure.']);
    expect(told([])).toEqual(['We have no measure yet.']);
    expect(told(ago([1, 0], [4, 5]))).toEqual([
      ...['It is too soon to tell.', 'Measure again on Sunday.'],
    ]);
    expect(told(ago([9, 8], [4, 5]))).toEqual(['We need one more measure.']);
  });

  it('asks for one unit when there are two', () => {
    expect(told([...ago([5], [4]), ...ago([0], [2], 'in', '1 in')])).toEqual([
      ...['We used two units.', 'We need two measures in the same unit.'],
    ]);
  });

  it('is said aloud with its units in full', () => {
    expect(spokenWords(['It grew 3 cm from Tuesday to Friday.'])).toBe(
      'It grew 3 centimetres from Tuesday to Friday.',
    );
    expect(spokenWords(['It grew 1 ft 3 inches.', 'It got 2 mm shorter.'])).toBe(
      'It grew 1 foot 3 inches. It got 2 millimetres shorter.',
    );
    expect(spokenWords(['We counted 2 more in May.'])).toBe('We counted 2 more in May.');
  });
});

describe('inches in a sentence', () => {
  it('are written out, one of them and a part of one as one inch', () => {
    const grew = (value: number, mark: MarkId = '1/2 in') =>
      told(ago([7, 0], [2, 2 + value], 'in', mark))[0];
    expect(grew(1)).toMatch(/grew 1 inch from/);
    expect(grew(0.5)).toMatch(/grew 1\/2 inch from/);
    expect(grew(2.5)).toMatch(/grew 2 1\/2 inches from/);
    expect(grew(0.3, '0.1 in')).toMatch(/grew 0.3 inches from/);
  });
});

describe('every sentence for a child', () => {
  const rain = seriesWith([1, 0, 2.5], { unit: 'mm', mark: '0.1 mm', quantity: 'rain' });
  const dry = seriesWith([0, 0], { unit: 'mm', quantity: 'rain' });
  const noon = shadowSeries('2026-03-12', [
    ['09:00', 95],
    ['12:00', 40.5],
    ['13:00', 40.5],
  ]);
  const kinds = (words: readonly string[]) =>
    kindTally({
      ...seriesWith(words.map(() => null)),
      days: words.map((word) => ({ words: [{ word }], planned: true })),
    } as unknown as Series);
  const inches = ago([20, 13], [12.25, 20.5], 'in', '1/4 in');
  const sentences = [
    ...told(inches),
    ...told(inches, civilDay('2027-01-01')),
    ...told(inches, civilDay('2027-01-01'), 'length'),
    ...told(ago([20, 13], [4, 9], 'count', '1')),
    ...told(ago([20, 13], [4, 4], 'count', '1')),
    ...told([...ago([5], [4]), ...ago([0], [2], 'in', '1 in')]),
    ...childRainWords(rainTotals(rain, 'week'), 'mm', civilDay('2026-03-05')),
    ...childRainWords(rainTotals(rain, 'week'), 'in', friday),
    ...childRainWords(rainTotals(dry, 'week'), 'mm', civilDay('2026-03-05')),
    ...childRainWords(rainTotals(dry, 'week'), 'mm', friday),
    ...childRainWords([], 'mm', friday),
    ...childShadowWords(shadowDays(noon.points)[0], friday),
    ...childShadowWords(shadowDays(noon.points.slice(1))[0], friday),
    ...childShadowWords(undefined, friday),
    ...childKindWords(kinds(['sun', 'sun', 'rain'])),
    ...childKindWords(kinds(['sun', 'snow', 'rain'])),
    ...childKindWords(kinds([])),
  ];

  it.each(sentences)('"%s" has at most ten words and ends', (sentence) => {
    expect(sentence.split(' ').length).toBeLessThanOrEqual(10);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect(sentence).not.toMatch(/wrong|NaN|undefined/);
  });
});

describe('a change shared out', () => {
  const share = (gap: number, value: number, unit: Unit = 'cm', mark: MarkId = '1 cm') =>
    shareWords(changesBetween(pointsOn([0, gap], [10, 10 + value], unit, mark))[0]!);

  it('has its left-overs said aloud', () => {
    expect(share(3, 4)).toBe('about 1 cm a day, and a bit more');
    expect(share(3, 3)).toBe('1 cm a day');
    expect(share(3, 2)).toBe('less than 1 cm a day');
    expect(share(3, 0)).toBe('no change');
    expect(share(3, -4)).toBe('shorter by about 1 cm a day, and a bit more');
    expect(share(2, 1.5, 'in', '1/2 in')).toBe('about 1/2 inch a day, and a bit more');
    expect(share(2, 5, 'count', '1')).toBe('about 2 a day, and a bit more');
  });

  it('is a decimal where no cubes can be laid', () => {
    const mixed = [...pointsOn([0], [10]), ...pointsOn([4], [5], 'in', '1 in')];
    expect(shareWords(changesBetween(mixed)[0]!)).toBe('about 0.27 inches a day');
  });

  it('says once for each mark why a gap is too short', () => {
    const changes = changesBetween(pointsOn([0, 1, 2, 7], [2, 2.5, 3, 4], 'in', '1/2 in'));
    const whole = changesBetween(pointsOn([0, 4], [2, 3], 'in', '1 in'));
    expect(whyTooShortWords(changes)).toHaveLength(1);
    expect(whyTooShortWords(changes)[0]).toMatch(/half inch, two readings need 3 days/);
    expect(whyTooShortWords(whole)[0]).toMatch(/whole inch, two readings need 5 days/);
    expect(whyTooShortWords(changes.slice(2))).toEqual([]);
  });
});

describe('the fastest stretch', () => {
  const seed = addDays(sunflower.points[0]!.day, -7);

  it('of the sunflowers of 1919 was the week from day 35 to day 42, 5.5 cm a day', () => {
    // Reed & Holland 1919: 131.00 cm on day 35, 169.50 cm on day 42 (tests/reference/growth.json).
    const [sentence] = fastestWords(fastestWindow(sunflower.points, 7), 'cm', seed);
    expect(sentence).toContain('(day 35 to day 42): 38.5 cm in 7 days, 5.50 cm a day');
  });

  it('is not named when two are about the same', () => {
    const [sentence] = fastestWords(
      fastestStretch(pointsOn([0, 3, 6, 9], [1, 4, 7, 8])),
      'cm',
      civilDay('2026-03-02'),
    );
    expect(sentence).toBe('2 were about the same, too close to name one:');
  });

  it('leaves out stretches of another length, and says so', () => {
    const points = pointsOn([0, 1, 2, 3, 6, 7, 8], [1, 2, 3, 6, 9, 10, 11]);
    const words = fastestWords(fastestStretch(points), 'cm', civilDay('2026-03-02'));
    expect(words[1]).toMatch(/^One stretch of another length left out/);
  });
});

describe('words for a grown-up', () => {
  it('say what is missing for a trend', () => {
    expect(trendTooFewWords({ kind: 'too-few', have: 3, need: 5 })).toBe(
      'Too few days to say. There are readings on 3 days; 5 are needed, over at least a week.',
    );
    expect(trendTooFewWords({ kind: 'too-short', days: 5, need: 7 })).toBe(
      'Too few days to say. The readings span 5 days; 7 are needed.',
    );
  });

  it('call a week of traces just a bit wet, and neither dry nor without a reading', () => {
    const wet = seriesWith(['trace', 'trace'], { unit: 'in', mark: '0.01 in', quantity: 'rain' });
    const weeks = rainTotals(wet, 'week');
    expect(childRainWords(weeks, 'in', civilDay('2026-03-05'))).toEqual([
      'The gauge was just a bit wet this week.',
    ]);
    expect(weeks.map((week) => totalWords(week, 'in'))).toEqual(['a trace']);
  });

  it('state what counts as a wet day, in the unit of the page', () => {
    const wet = seriesWith([0.3, 0.1, 2], { unit: 'mm', mark: '0.1 mm', quantity: 'rain' });
    expect(wetDayWords(wetDays(wet.points), wet, 'mm')[0]).toContain('1 had 1 mm or more');
    expect(wetDayWords(wetDays(wet.points), wet, 'in')[0]).toContain('2 had 0.01 inches or more');
  });

  it('name a week, a month and a year of rain', () => {
    const rain = seriesWith([1], { first: '2026-12-30', unit: 'mm', mark: '1 mm' });
    const words = (['week', 'month', 'year'] as const).map((period) =>
      periodWords(rainTotals(rain, period)[0]!, period),
    );
    expect(words).toEqual(['Mon 28 Dec to Sun 3 Jan 2027', 'December 2026', '2026']);
  });

  it('point out a total of several days, a trace and a day without', () => {
    const rain = seriesWith(['trace', null, 2, null, null, null, null, 9], {
      ...{ unit: 'mm', mark: '1 mm', quantity: 'rain' },
      spanDays: { 7: 3 },
    });
    const notes = rainTotals(rain, 'week').map(totalNotes);
    expect(notes[0]).toEqual([
      '1 day just a bit wet (a trace, 0 in the sum).',
      '3 days without a reading: it may have been more.',
    ]);
    expect(notes[1]).toEqual(['The reading of Mon 9 Mar holds 3 days, and began before this.']);
  });
});
