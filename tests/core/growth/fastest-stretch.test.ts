import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween } from '#core/calendar';
import { fastestStretch, fastestWindow, perDayIn } from '#core/growth';
import { pointsOn, realLogs, smallLog, sunflower } from './log-points';
import { near, valueOf } from './near';
import { someLog } from './some-log';

const logOf = (label: string) => realLogs.find((log) => log.label.startsWith(label))!;
const daysOf = (label: string, fastest = valueOf(fastestStretch(logOf(label).points))) => {
  const { points, xs } = logOf(label);
  const start = points[0]!.day;
  return fastest.leaders.map(({ from, to }) =>
    [from, to].map((each) => daysBetween(start, each.day) + xs[0]!),
  );
};

describe('the fastest stretch', () => {
  it('of the sunflowers of Reed & Holland 1919 is day 35 to 42, at 5.5 cm a day', () => {
    const fastest = valueOf(fastestStretch(sunflower.points));
    expect(fastest.kind).toBe('one-fastest');
    expect(fastest.leftOut).toEqual([]);
    expect(daysOf('Sunflower')).toEqual([[35, 42]]);
    expect(perDayIn(fastest.leaders[0]!.perDay, 'cm')).toBe(5.5);
  });

  it.each([
    'Sunflower',
    'Loblolly pine seed source 301',
    'Loblolly pine seed source 303',
    'Loblolly pine seed source 305',
    'Loblolly pine seed source 307',
    'ChickWeight chick 1 ',
    'ChickWeight chick 6',
    'ChickWeight chick 21',
    'ChickWeight chick 35',
    'Orthodont child M01',
    'BodyWeight rat 1',
  ])('of %s is where its rate is greatest', (label) => {
    const { expected, points, unit } = logOf(label);
    const fastest = valueOf(fastestStretch(points));
    expect(fastest.kind).toBe('one-fastest');
    expect(daysOf(label)).toEqual([expected.max_step_between.map(Number)]);
    near(perDayIn(fastest.leaders[0]!.perDay, unit), expected.max_step_rate, 1e-11);
  });

  it('leaves out a stretch of another length and says so', () => {
    // Chicks were weighed every 2 days, and once more after 1 (Crowder & Hand 1990).
    const fastest = valueOf(fastestStretch(logOf('ChickWeight chick 1 ').points));
    expect(fastest.gapDays).toBe(2);
    expect(fastest.compared).toHaveLength(10);
    expect(fastest.leftOut.map((change) => change.gapDays)).toEqual([1]);
  });

  it('never lets the weekend win over a day', () => {
    // Monday to Friday 1 cm a day, then 4 cm to Monday and 1 cm to Tuesday.
    const fastest = valueOf(
      fastestStretch(pointsOn([0, 1, 2, 3, 4, 7, 8], [1, 2, 3, 4, 5, 9, 10])),
    );
    expect(fastest.gapDays).toBe(1);
    expect(fastest.kind).toBe('about-the-same');
    expect(fastest.leftOut.map((change) => change.gapDays)).toEqual([3]);
  });

  it('asks of a one-day stretch a lead of two marks', () => {
    const byOne = valueOf(fastestStretch(pointsOn([0, 1, 2, 3], [0, 2, 5, 6])));
    expect(byOne.kind).toBe('about-the-same');
    expect(byOne.leaders.map((change) => change.exact / 10_000_000)).toEqual([2, 3]);
    const byTwo = valueOf(fastestStretch(pointsOn([0, 1, 2, 3], [0, 2, 6, 7])));
    expect(byTwo.kind).toBe('one-fastest');
    expect(byTwo.neededMarks).toBe(2);
  });

  it('asks of a longer stretch a lead of one mark, so a tie has no winner', () => {
    const ahead = valueOf(fastestStretch(pointsOn([0, 3, 6], [0, 2, 5])));
    expect([ahead.kind, ahead.neededMarks]).toEqual(['one-fastest', 1]);
    const tie = valueOf(fastestStretch(pointsOn([0, 3, 6], [0, 3, 6])));
    expect(tie.kind).toBe('about-the-same');
    // Orthodont F01 (Potthoff & Roy 1964): -1, 1.5 and 1.5 mm in two years each.
    expect(daysOf('Orthodont child F01')).toEqual([
      [10, 12],
      [12, 14],
    ]);
  });

  it('asks for a lead in the coarsest mark among the readings', () => {
    const fine = pointsOn([0, 3, 6], [0, 2.5, 5.5], 'cm', '1 mm');
    expect(valueOf(fastestStretch(fine)).kind).toBe('one-fastest');
    const [first, ...rest] = fine;
    const coarse = valueOf(fastestStretch([{ ...first!, mark: '1 cm' }, ...rest]));
    expect([coarse.kind, coarse.coarsestMark]).toEqual(['about-the-same', '1 cm']);
  });

  it('compares the longer of two equally common gaps', () => {
    const fastest = valueOf(fastestStretch(pointsOn([0, 1, 2, 5, 8], [0, 5, 6, 8, 12])));
    expect(fastest.gapDays).toBe(3);
    expect(fastest.leaders.map((change) => change.exact)).toEqual([40_000_000]);
  });

  it('has no winner where nothing became more', () => {
    const { points } = smallLog('flat');
    expect(valueOf(fastestStretch(points))).toMatchObject({ kind: 'no-growth', leaders: [] });
    const shrinking = pointsOn([0, 1, 2], [9, 5, 4]);
    expect(valueOf(fastestStretch(shrinking)).kind).toBe('no-growth');
  });

  it('cannot be named where no two gaps are equal', () => {
    // Draper & Smith's orange trees were measured after gaps that all differ.
    expect(fastestStretch(logOf('Orange tree 1').points)).toEqual({
      ok: false,
      error: { kind: 'unequal-gaps', gaps: [366, 180, 340, 227, 141, 210] },
    });
  });

  it('needs two stretches', () => {
    const { points } = logOf('ChickWeight chick 18');
    expect(fastestStretch(points)).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 1, need: 2 },
    });
  });
});

describe('the fastest window', () => {
  // Twelve days: slow, fast, slow.
  const daily = pointsOn(
    [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11],
    [0, 0, 1, 2, 2, 4, 7, 10, 12, 14, 14, 14],
  );

  it('of a daily log is the steepest between two readings so many days apart', () => {
    const fastest = valueOf(fastestWindow(daily, 3));
    expect(fastest.kind).toBe('about-the-same');
    expect(fastest.leaders.map(({ from, exact }) => [from.day, exact])).toEqual([
      ['2026-03-06', 80_000_000],
      ['2026-03-07', 80_000_000],
    ]);
    const week = valueOf(fastestWindow(daily, 7));
    // Day 2 to 9 and no other: 1 cm to 14 cm.
    expect(week.kind).toBe('one-fastest');
    expect(week.leaders.map(({ from, exact }) => [from.day, exact])).toEqual([
      ['2026-03-04', 130_000_000],
    ]);
  });

  it('begins and ends on a reading, never on a day between', () => {
    const holed = daily.filter((_, day) => day !== 9);
    const compared = valueOf(fastestWindow(holed, 7)).compared;
    expect(compared.map(({ from }) => from.day)).toEqual([
      '2026-03-02',
      '2026-03-03',
      '2026-03-05',
      '2026-03-06',
    ]);
  });

  it('agrees with the stretches of a log kept weekly', () => {
    const stretch = valueOf(fastestStretch(sunflower.points));
    expect(valueOf(fastestWindow(sunflower.points, 7))).toEqual(stretch);
  });

  it('needs two windows, of a whole number of days', () => {
    expect(fastestWindow(daily, 11)).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 1, need: 2 },
    });
    expect(() => fastestWindow(daily, 0)).toThrow(RangeError);
    expect(() => fastestWindow(daily, 1.5)).toThrow(RangeError);
  });
});

it('The fastest stretch leads every other of its length, and takes readings in any order', () => {
  fc.assert(
    fc.property(someLog, (points) => {
      const found = fastestStretch(points);
      expect(fastestStretch([...points].reverse())).toEqual(found);
      if (!found.ok || found.value.kind === 'no-growth') return;
      const { compared, leaders, gapDays } = found.value;
      const greatest = Math.max(...compared.map((change) => change.exact));
      expect(leaders.some((change) => change.exact === greatest)).toBe(true);
      expect(compared.every((change) => change.gapDays === gapDays)).toBe(true);
    }),
    { seed: 19190419, numRuns: 200 },
  );
});
