import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import {
  changesBetween,
  fairShare,
  growthBetween,
  growthPerDay,
  middleOfDay,
  minimumGapDays,
  onePointPerDay,
  perDayIn,
} from '#core/growth';
import { markById, type MarkId } from '#core/measure';
import { point, pointsOn, realLogs, smallLog, smallLogs } from './log-points';
import { near, valueOf } from './near';
import { someLog } from './some-log';

describe('several readings of one day', () => {
  it('count as the middle one', () => {
    const [low, middle, high] = [3, 4, 9].map((cm) => point('2026-03-02', cm, 'cm', '1 cm'));
    expect(middleOfDay([high!, low!, middle!])).toBe(middle);
  });

  it('count as the lower of the two in the middle when their number is even', () => {
    const points = [5, 3, 9, 4].map((cm) => point('2026-03-02', cm, 'cm', '1 cm'));
    expect(onePointPerDay(points)).toEqual([point('2026-03-02', 4, 'cm', '1 cm')]);
  });

  it('count the same in whatever order and unit they were written', () => {
    const inInches = point('2026-03-02', 1, 'in', '1/2 in');
    const inCentimetres = point('2026-03-02', 2.54, 'cm', '0.1 mm');
    expect(middleOfDay([inInches, inCentimetres])).toEqual(middleOfDay([inCentimetres, inInches]));
  });

  it('leave a log of lengths and counts to be mended, not guessed at', () => {
    const mixed = [point('2026-03-02', 4, 'cm', '1 cm'), point('2026-03-03', 4, 'count', '1')];
    expect(() => onePointPerDay(mixed)).toThrow('both counts and lengths');
  });
});

describe('changes from reading to reading', () => {
  const withOneReadingADay = smallLogs.filter(({ name }) => name !== 'same-day repeat');

  it.each(withOneReadingADay)('carry gap and rate in the log "$name"', ({ points, ...log }) => {
    const changes = changesBetween(points);
    const wanted = log.expected.gap_days_and_rate_per_day as readonly [string, string][];
    expect(changes.map((change) => change.gapDays)).toEqual(wanted.map(([gap]) => Number(gap)));
    changes.forEach((change, index) => {
      near(perDayIn(change.perDay, log.unit), wanted[index]?.[1], 1e-11);
    });
  });

  it('do not divide by the nothing between two readings of one day', () => {
    // logs.json: 3.0 and 3.2 cm on one day, 4.1 cm two days later, 0.55 cm a day from 3.0.
    const { points, expected } = smallLog('same-day repeat');
    const [only, ...more] = changesBetween(points);
    expect(more).toEqual([]);
    expect(only?.gapDays).toBe(2);
    near(perDayIn(only!.perDay, 'cm'), expected.average_per_day, 1e-12);
  });

  it.each(realLogs)('have the rates of $label', ({ points, unit, expected }) => {
    const rates = changesBetween(points).map((change) => perDayIn(change.perDay, unit));
    // The reference rates have 12 digits.
    rates.forEach((rate, index) => near(rate, expected.step_rates[index], 1e-11));
    expect(rates).toHaveLength(expected.n - 1);
  });

  it('say when the two readings are in different units, and stay exact', () => {
    const changes = changesBetween(smallLog('mixed units on one exact line').points);
    expect(changes.map((change) => change.unitsMixed)).toEqual([true, true, true]);
    // 0.635 cm a day, so 1.27 cm in each two days: 12 700 000 nm.
    expect(changes.map((change) => change.exact)).toEqual([12_700_000, 12_700_000, 12_700_000]);
    const plain = changesBetween(smallLog('across a clock change').points);
    expect(plain.some((change) => change.unitsMixed)).toBe(false);
  });

  it('need two days with a reading', () => {
    expect(changesBetween([])).toEqual([]);
    expect(changesBetween(smallLog('one reading').points)).toEqual([]);
  });
});

describe('a gap that is long enough', () => {
  it.each<[MarkId, number]>([
    // Simulated error of growth per day by gap and mark, made for this project: at these gaps it
    // is 0.2 to 0.3 cm a day.
    ['1 cm', 3],
    ['1 mm', 3],
    ['0.1 mm', 3],
    ['1/2 in', 3],
    ['1/4 in', 3],
    ['1 in', 5],
    // In proportion to the whole inch: ours.
    ['1 ft', 60],
    ['1 m', 197],
    ['1', 1],
  ])('is, for the mark %s, %i days', (mark, days) => {
    expect(minimumGapDays(mark)).toBe(days);
  });

  it('follows the coarser of the two marks', () => {
    const first = point('2026-03-02', 1, 'in', '1 in');
    const after = (days: number, mark: MarkId) =>
      changesBetween([first, point(addDays(first.day, days), 3, 'in', mark)])[0]?.longEnough;
    expect([3, 4, 5].map((days) => after(days, '1/2 in'))).toEqual([false, false, true]);
    const fine = point('2026-03-02', 1, 'in', '1/4 in');
    const fineAfter = (days: number) =>
      changesBetween([fine, point(addDays(fine.day, days), 3, 'in', '1/2 in')])[0]?.longEnough;
    expect([2, 3].map(fineAfter)).toEqual([false, true]);
  });
});

describe('growth between two days', () => {
  const { points } = smallLog('leap day');

  it('is the difference of their readings, over the days between', () => {
    const change = valueOf(growthBetween(points, civilDay('2024-02-27'), civilDay('2024-03-02')));
    expect(change.perDay).toEqual({ exact: 8_000_000, days: 4 });
    expect(perDayIn(change.perDay, 'mm')).toBe(2);
  });

  it('is never guessed for a day without a reading', () => {
    expect(growthBetween(points, civilDay('2024-02-28'), civilDay('2024-03-01'))).toEqual({
      ok: false,
      error: { kind: 'no-reading', days: ['2024-02-28', '2024-03-01'] },
    });
  });

  it('runs forward in time only', () => {
    const day = civilDay('2024-02-29');
    expect(growthBetween(points, day, day)).toEqual({
      ok: false,
      error: { kind: 'not-after', fromDay: day, toDay: day },
    });
    expect(growthBetween(points, day, civilDay('2024-02-27')).ok).toBe(false);
  });
});

describe('growth per day of a whole log', () => {
  it.each(smallLogs.filter(({ xs }) => xs.length > 1))(
    'is that of the log "$name"',
    ({ points, unit, expected }) => {
      const { perDay } = valueOf(growthPerDay(points));
      near(perDayIn(perDay, unit), expected.average_per_day, 1e-12);
    },
  );

  it.each(realLogs)('is that of $label', ({ points, unit, expected }) => {
    const { perDay } = valueOf(growthPerDay(points));
    near(perDayIn(perDay, unit), expected.average_rate_first_to_last, 1e-12);
  });

  it('needs readings on two days', () => {
    const twoReadings = [3, 4].map((cm) => point('2026-03-02', cm, 'cm', '1 cm'));
    expect(growthPerDay(twoReadings)).toEqual({
      ok: false,
      error: { kind: 'too-few', have: 1, need: 2 },
    });
  });
});

describe('fair shares', () => {
  const shareOf = (days: number, before: number, after: number, mark: MarkId = '1 cm') => {
    const { unit } = markById(mark);
    const [change] = changesBetween(pointsOn([0, days], [before, after], unit, mark));
    return valueOf(fairShare(change!));
  };

  it('lay out whole cubes and say what is left over', () => {
    // 4 cm in 3 days: about 1 each day, and 1 left.
    expect(shareOf(3, 2, 6)).toEqual({
      direction: 'more',
      mark: '1 cm',
      wholeMarks: 1,
      leftOverMarks: 1,
      days: 3,
    });
    expect(shareOf(3, 2, 8)).toMatchObject({ wholeMarks: 2, leftOverMarks: 0 });
    expect(shareOf(3, 2, 4)).toMatchObject({ wholeMarks: 0, leftOverMarks: 2 });
    expect(shareOf(4, 1, 4.5, '1/2 in')).toMatchObject({ wholeMarks: 1, leftOverMarks: 3 });
  });

  it('divide a weekend by its three days, not by its two readings', () => {
    const friday = point('2026-03-06', 10, 'cm', '1 cm');
    const monday = point('2026-03-09', 13, 'cm', '1 cm');
    const [change] = changesBetween([friday, monday]);
    expect(valueOf(fairShare(change!))).toMatchObject({ wholeMarks: 1, leftOverMarks: 0, days: 3 });
  });

  it('say which way it went', () => {
    expect(shareOf(3, 6, 2)).toMatchObject({ direction: 'less', wholeMarks: 1, leftOverMarks: 1 });
    expect(shareOf(3, 6, 6)).toMatchObject({ direction: 'same', wholeMarks: 0, leftOverMarks: 0 });
  });

  it('use the coarser mark where the change lies on it, else the finer', () => {
    const from = point('2026-03-02', 2, 'cm', '1 cm');
    const to = (cm: number) => point('2026-03-05', cm, 'cm', '1 mm');
    const share = (cm: number) => valueOf(fairShare(changesBetween([from, to(cm)])[0]!));
    expect(share(6)).toMatchObject({ mark: '1 cm', wholeMarks: 1, leftOverMarks: 1 });
    expect(share(6.1)).toMatchObject({ mark: '1 mm', wholeMarks: 13, leftOverMarks: 2 });
  });

  it('refuse what cannot be laid in cubes', () => {
    const [mixed] = changesBetween(smallLog('mixed units on one exact line').points);
    expect(fairShare(mixed!)).toEqual({ ok: false, error: { kind: 'units-mixed' } });
    const [halves] = changesBetween(pointsOn([0, 3], [1, 2.5], 'in', '1/2 in'));
    expect(fairShare(halves!, '1 in')).toEqual({
      ok: false,
      error: { kind: 'between-marks', tried: ['1 in'] },
    });
  });
});

describe('laws of changes', () => {
  const run = { seed: 19190419, numRuns: 200 };

  it('together make the whole change, whatever order the readings come in', () => {
    fc.assert(
      fc.property(someLog, (points) => {
        const changes = changesBetween(points);
        const whole = growthPerDay(points);
        const sum = (of: 'exact' | 'gapDays') => changes.reduce((all, each) => all + each[of], 0);
        expect(whole.ok ? whole.value.perDay : { exact: 0, days: 0 }).toEqual({
          exact: sum('exact'),
          days: sum('gapDays'),
        });
        expect(changesBetween([...points].reverse())).toEqual(changes);
      }),
      run,
    );
  });

  it('are shared without loss', () => {
    fc.assert(
      fc.property(someLog, (points) => {
        for (const change of changesBetween(points)) {
          const { direction, mark, wholeMarks, leftOverMarks, days } = valueOf(fairShare(change));
          const sign = { more: 1, less: -1, same: 0 }[direction];
          const marks = wholeMarks * days + leftOverMarks;
          expect(sign * marks * markById(mark).exact + 0).toBe(change.exact);
          expect(leftOverMarks).toBeLessThan(days);
        }
      }),
      run,
    );
  });
});
