import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import type { SpecimenId } from '#core/journal';
import { exactPerUnit, type Measured } from '#core/measure';
import { doubtsAbout, plausibleWindow, type Doubt, type Series } from '#core/series';
import { read } from '../journal/entries';
import { seriesOfReadings } from './simulated-plants';

const monday = civilDay('2026-03-02');
const centimetre = exactPerUnit('cm');
const day = (number: number) => addDays(monday, number - 1);

/** A log of one number a day, from the first on; null for a day without. */
const logOf = (numbers: readonly (Measured | number | null)[], standCm?: number): Series =>
  Object.freeze(
    seriesOfReadings(
      numbers.flatMap((each, index) =>
        each === null
          ? []
          : [{ day: day(index + 1), measured: typeof each === 'number' ? read(each) : each }],
      ),
      standCm,
    ),
  );

/** What is asked about a number on the day after the log, or on another. */
const askedAbout = (
  numbers: readonly (Measured | number | null)[],
  next: Measured | number,
  {
    on = numbers.length + 1,
    standCm,
    others = [],
  }: {
    on?: number;
    standCm?: number;
    others?: readonly Series[];
  } = {},
): readonly Doubt[] => {
  const measured = typeof next === 'number' ? read(next) : next;
  return doubtsAbout({ day: day(on), measured }, logOf(numbers, standCm), others);
};
const kinds = (doubts: readonly Doubt[]) => doubts.map((each) => each.kind);
const inches = (value: number) => read(value, 'in', '1 in');
const halves = (value: number) => read(value, 'in', '1/2 in');

describe('nothing is asked', () => {
  it.each([
    ['at ordinary growth', [3, 4, 6], 7],
    ['at no change', [11, 12, 12], 12],
    ['at a shrink of one centimetre', [11, 12, 12], 11],
    ['after a weekend of fast growth', [6, 8, 10, null, null], 16],
    ['at the first number', [], 31],
    ['at the second number', [4], 31],
  ])('%s', (_name, numbers, next) => {
    expect(askedAbout(numbers, next)).toEqual([]);
  });

  it('at whole inches standing still, however long', () => {
    expect(
      askedAbout([inches(2), inches(3), inches(4), ...Array(9).fill(inches(5))], inches(5)),
    ).toEqual([]);
  });

  it('at a shrink of one inch read in whole inches', () => {
    expect(askedAbout([inches(3), inches(4), inches(4)], inches(3))).toEqual([]);
  });

  it('about a count, or a length of no one knows what', () => {
    const series = logOf([4, 5, 6]);
    const asLength = { ...series, investigation: { quantity: 'length' } } as Series;
    const candidate = { day: day(4), measured: read(60) };
    expect(doubtsAbout({ ...candidate, measured: read(60, 'count', '1') }, series, [])).toEqual([]);
    expect(doubtsAbout(candidate, asLength, [])).toEqual([]);
    expect(kinds(doubtsAbout(candidate, series, []))).not.toEqual([]);
  });

  it('about a number because of those after it', () => {
    expect(
      doubtsAbout({ day: day(3), measured: read(4) }, logOf([3, 4, null, 25, 26]), []),
    ).toEqual([]);
  });
});

describe('every slip that fits is told, in order', () => {
  it.each([
    ['a 0 for a missed day', [11, 12, 13], 0, ['zero-or-missed']],
    ['the inch side', [11, 12, 13], 5, ['other-side', 'shrank']],
    [
      'the centimetre side, in inches',
      [inches(4), inches(4), inches(5)],
      inches(13),
      ['other-side'],
    ],
    ['millimetres', [11, 12, 12], 124, ['ten-times-too-long']],
    ['a lost point', [11, 12, 13], read(1.3, 'cm', '1 mm'), ['ten-times-too-short', 'shrank']],
    ['swapped digits', [11, 12, 12], 31, ['digits-swapped']],
    ['swapped digits, downwards', [20, 21, 21], 12, ['digits-swapped', 'shrank']],
    ['an upside-down ruler', [5, 6, 6], 23, ['ruler-upside-down']],
    ['nothing known, less', [20, 21, 21], 17, ['shrank']],
    ['nothing known, more', [5, 6, 6], 16, ['big-jump']],
  ] as const)('%s', (_name, numbers, next, expected) => {
    expect(kinds(askedAbout(numbers, next))).toEqual(expected);
  });

  it('with what the number would have been', () => {
    expect(askedAbout([11, 12, 13], 5)[0]).toEqual({
      ...{ kind: 'other-side', chosen: 'cm', perhapsUnit: 'in' },
      perhapsExact: 5 * exactPerUnit('in'),
    });
    expect(askedAbout([inches(4), inches(4), inches(5)], inches(13))[0]).toEqual({
      ...{ kind: 'other-side', chosen: 'in', perhapsUnit: 'cm', perhapsExact: 13 * centimetre },
    });
    expect(askedAbout([11, 12, 12], 124)[0]).toEqual({
      ...{ kind: 'ten-times-too-long', perhapsUnit: 'mm', perhapsExact: 12.4 * centimetre },
    });
    expect(askedAbout([11, 12, 12], 31)[0]).toEqual({
      ...{ kind: 'digits-swapped', perhapsText: '13', perhapsExact: 13 * centimetre },
    });
    expect(askedAbout([5, 6, 6], 23)[0]).toEqual({
      ...{ kind: 'ruler-upside-down', rulerExact: 30 * centimetre, perhapsExact: 7 * centimetre },
    });
  });

  it('how much less or more, since which number', () => {
    expect(askedAbout([20, 21, null, 21], 17)).toMatchObject([
      { kind: 'shrank', last: { day: day(4) }, lessExact: 4 * centimetre },
    ]);
    expect(askedAbout([5, 6, 6, null], 17)).toMatchObject([
      { kind: 'big-jump', last: { day: day(3) }, moreExact: 11 * centimetre, gapDays: 2 },
    ]);
  });

  it('the pot, where its height is known', () => {
    expect(kinds(askedAbout([5, 6, 6], 17, { standCm: 10 }))).toEqual(['stand-counted']);
    expect(kinds(askedAbout([5, 6, 6], 17))).toEqual(['big-jump']);
  });

  it('the pot, also where the plant might have grown so much over the weekend', () => {
    const numbers = [8, 10, 12, null, null];
    expect(
      plausibleWindow(logOf(numbers).points, { day: day(6), measured: read(25) }),
    ).toMatchObject({
      highExact: 24.5 * centimetre,
    });
    expect(kinds(askedAbout(numbers, 24, { standCm: 8 }))).toEqual(['stand-counted']);
    expect(askedAbout(numbers, 24)).toEqual([]);
    expect(askedAbout(numbers, 20, { standCm: 8 })).toEqual([]);
  });

  it('the other plant, whose height it could be; never the plant itself', () => {
    const tall = {
      ...logOf([20, 21, 22]),
      specimen: { id: 'tall' as SpecimenId, name: 'Bean B' } as Series['specimen'],
    };
    const doubts = askedAbout([5, 6, 6], 22, { others: [logOf([5, 6, 6]), tall] });
    expect(doubts.at(-1)).toMatchObject({ kind: 'other-plant', name: 'Bean B', specimen: 'tall' });
    expect(kinds(doubts).filter((kind) => kind === 'other-plant')).toHaveLength(1);
  });

  it('halves and quarters have no point that slips', () => {
    const quarter = (value: number) => read(value, 'in', '1/4 in');
    const doubts = askedAbout([quarter(3.5), quarter(3.75), quarter(4)], quarter(42));
    expect(kinds(doubts)).not.toContain('ten-times-too-long');
  });

  it('swapped digits keep their fraction', () => {
    expect(askedAbout([halves(11), halves(12), halves(12)], halves(21.5))).toContainEqual({
      ...{ kind: 'digits-swapped', perhapsText: '12 1/2', perhapsExact: 12.5 * exactPerUnit('in') },
    });
  });
});

describe('a number that stays', () => {
  it('is asked about on the fourth day when the plant grew fast before, and not on the fifth', () => {
    expect(askedAbout([4, 6, 8, 8, 8], 8)).toEqual([
      {
        ...{ kind: 'same-number-again', days: 4, since: day(3) },
        growthPerDayBeforeExact: 2 * centimetre,
      },
    ]);
    expect(askedAbout([4, 6, 8, 8], 8)).toEqual([]);
    expect(askedAbout([4, 6, 8, 8, 8, 8], 8)).toEqual([]);
  });

  it('is not asked about when the plant grew slowly before', () => {
    expect(askedAbout([18, 19, 20, 20, 20], 20)).toEqual([]);
  });
});

describe('units', () => {
  it('that are mixed in one log are held together by their exact lengths', () => {
    expect(askedAbout([inches(4), inches(5), inches(5)], 13)).toEqual([]);
    expect(kinds(askedAbout([10, 12, inches(5)], 5))).toContain('other-side');
    expect(askedAbout([10, 12, 13], inches(5))).toEqual([]);
  });

  it('a coarse mark in the log makes the window wider', () => {
    const candidate = { day: day(4), measured: read(8) };
    const [fine, coarse] = [logOf([5, 5, 5]), logOf([inches(2), inches(2), inches(2)])];
    const slackOf = (series: Series) => {
      const window = plausibleWindow(series.points, candidate)!;
      return window.highExact - window.last.exact;
    };
    // 2 cm a day and 2 cm; 0.8 in a day and 1.2 in.
    expect(slackOf(fine)).toBe(4 * centimetre);
    expect(slackOf(coarse)).toBeCloseTo(2 * exactPerUnit('in'), 3);
  });
});

describe('a number out of place that was left standing', () => {
  it('is not held against the next number', () => {
    expect(kinds(askedAbout([11, 12, 12], 5))).toContain('other-side');
    expect(askedAbout([11, 12, 12, 5], 13)).toEqual([]);
    expect(askedAbout([11, 12, 12, 124], 13)).toEqual([]);
  });

  it('nor is a true change asked about twice: the tip broke, and the plant goes on from there', () => {
    expect(kinds(askedAbout([20, 21, 21], 16))).toEqual(['shrank']);
    expect(askedAbout([20, 21, 21, 16], 16)).toEqual([]);
  });
});

// Source of the caps: common practice, no source.
it.each([
  [101, 2, ['past-the-cap']],
  [100, 2, []],
  [inches(41), 2, ['past-the-cap']],
  [inches(40), 2, []],
  [101, 60, []],
])('of the first two numbers, %j on day %i asks %j', (next, on, expected) => {
  expect(kinds(askedAbout([90], next, { on }))).toEqual(expected);
});

it('a reading in the log already is not held against itself', () => {
  const series = logOf([11, 12, 12, 5]);
  const doubts = doubtsAbout(
    { reading: series.points[3]!.reading, day: day(4), measured: read(5) },
    series,
    [],
  );
  expect(kinds(doubts)).toEqual(['other-side', 'shrank']);
});
