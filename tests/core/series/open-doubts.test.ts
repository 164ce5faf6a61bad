import { describe, expect, it } from 'vitest';
import { addDays, civilDay } from '#core/calendar';
import { trendOf } from '#core/growth';
import {
  foldEntries,
  type DoubtAnswer,
  type EntryId,
  type JournalEntry,
  type Reading,
} from '#core/journal';
import {
  answersSinceChange,
  doubtedReadings,
  openDoubts,
  seriesOf,
  withoutReadings,
  type Series,
} from '#core/series';
import { anId, bean, begun, read, takenBack, took, written } from '../journal/entries';
import { corrected, marked } from './bean-log';

const today = civilDay('2026-03-20');
const notebookOf = (...entries: readonly JournalEntry[]) => {
  const notebook = foldEntries([...begun, ...entries]);
  return { notebook, series: seriesOf(notebook, bean, today)! };
};
const openIn = (...entries: readonly JournalEntry[]) => {
  const { notebook, series } = notebookOf(...entries);
  return openDoubts(notebook, series, [series]);
};
const answered = (number: number, reading: number, answer: DoubtAnswer = 'read-so') =>
  written(number, {
    ...{ kind: 'doubt-answered', reading: anId<EntryId>(reading), doubt: 'other-side', answer },
  });

const slipOnThursday = [
  took(10, '2026-03-02', 11),
  took(11, '2026-03-03', 12),
  took(12, '2026-03-04', 12),
  took(13, '2026-03-05', 5),
  took(14, '2026-03-06', 13),
];

describe('the list for the grown-up', () => {
  it('holds the reading with its doubts, and not the honest one after it', () => {
    const open = openIn(...slipOnThursday);
    expect(open.map(({ reading }) => reading.id)).toEqual([anId(13)]);
    expect(open[0]!.doubts.map(({ kind }) => kind)).toEqual(['other-side', 'shrank']);
  });

  it('leaves out what was answered "I read that"', () => {
    expect(openIn(...slipOnThursday, answered(20, 13, 'read-so'))).toEqual([]);
  });

  it.each(['look-again', 'other-unit'] as const)(
    'keeps what was answered %s until the number changes',
    (answer) => {
      expect(openIn(...slipOnThursday, answered(20, 13, answer))).toEqual(
        openIn(...slipOnThursday),
      );
    },
  );

  it('has it again when the answer is taken back', () => {
    expect(openIn(...slipOnThursday, answered(20, 13), takenBack(21, 20))).toHaveLength(1);
  });

  it('has it no more when it was corrected to a number that fits, or taken back', () => {
    const to = { day: civilDay('2026-03-05'), measured: read(13) };
    expect(openIn(...slipOnThursday, corrected(20, 13, to))).toEqual([]);
    expect(openIn(...slipOnThursday, takenBack(20, 13))).toEqual([]);
  });

  it('asks anew about a number that was changed after the answer, but not about a new day', () => {
    const changed = corrected(21, 13, { day: civilDay('2026-03-05'), measured: read(4) });
    expect(openIn(...slipOnThursday, answered(20, 13), changed)).toHaveLength(1);
    const moved = corrected(21, 13, { day: civilDay('2026-03-07'), measured: read(5) });
    expect(openIn(...slipOnThursday, answered(20, 13), moved)).toEqual([]);
    const { notebook, series } = notebookOf(
      ...slipOnThursday,
      answered(20, 13),
      moved,
      answered(22, 13),
    );
    const reading = series.days.flatMap((day) => day.readings).find(({ id }) => id === anId(13))!;
    expect(answersSinceChange(notebook, reading)).toHaveLength(2);
  });

  it('every doubted reading is known too, answered or not', () => {
    const { series } = notebookOf(...slipOnThursday, answered(20, 13));
    expect(doubtedReadings(series, []).map(({ reading }) => reading.id)).toEqual([anId(13)]);
  });
});

describe('a series without some readings', () => {
  it('has a trend of its own', () => {
    const heights = [3, 4, 5, 6, 7, 8, 9, 10, 1, 12];
    const { series } = notebookOf(
      ...heights.map((height, index) =>
        took(10 + index, addDays(civilDay('2026-03-02'), index), height),
      ),
    );
    const ids = new Set(doubtedReadings(series, []).map(({ reading }) => reading.id));
    expect([...ids]).toEqual([anId(18)]);
    const slopeOf = ({ points }: Series) => {
      const trend = trendOf(points);
      return trend.ok ? trend.value.leastSquares.growthPerDay : NaN;
    };
    // Nine points on the line of 1 cm a day; the tenth, 10 cm below it at 4.5 - 1 days from the
    // middle, turns it by -10 * 3.5 / 82.5 (the sum of the squared days), worked by hand.
    expect(slopeOf(withoutReadings(series, ids))).toBeCloseTo(1, 12);
    expect(slopeOf(series)).toBeCloseTo(1 - 35 / 82.5, 12);
  });

  it('keeps the day, as what else was written makes it, and gaps reach over it', () => {
    const { series } = notebookOf(...slipOnThursday, marked(20, '2026-03-05', 'missed'));
    const before = JSON.stringify(series);
    const without = withoutReadings(series, new Set([anId<EntryId>(13)]));
    expect(without.days.find(({ day }) => day === '2026-03-05')).toMatchObject({ state: 'missed' });
    expect(without.days.find(({ day }) => day === '2026-03-06')).toMatchObject({ gapDays: 2 });
    expect(without.points).toHaveLength(4);
    expect(JSON.stringify(series)).toBe(before);
    expect(withoutReadings(series, new Set())).toBe(series);
  });
});

/** A log of so many days whose numbers wander, with a slip now and then: made without the fold. */
function importedLog(count: number, name: string): Series {
  const first = civilDay('1990-01-01');
  const readings = Array.from({ length: count }, (_, index): Reading => {
    const height = 20 + (index % 2) + (index % 50 === 49 ? 40 : 0);
    const measured = read(height);
    return {
      ...{ id: `${name}${index}` as EntryId, day: addDays(first, index), counted: measured },
      ...{ spanDays: 1, crossedOut: [] },
    } as unknown as Reading;
  });
  return {
    specimen: { id: name, name, startedOn: first },
    investigation: { quantity: 'plant-height' },
    days: readings.map((reading) => ({ day: reading.day, readings: [reading] })),
    points: readings.map(({ id, day, counted: { exact, unit, mark } }) => ({
      ...{ reading: id, day, exact, unit, mark, spanDays: 1 },
    })),
  } as unknown as Series;
}

it('ten thousand imported readings take about ten times as long as a thousand', () => {
  const notebook = foldEntries([]);
  const fastestMs = (count: number): number => {
    const [log, other] = [importedLog(count, 'a'), importedLog(count, 'b')];
    const once = () => {
      const before = performance.now();
      expect(openDoubts(notebook, log, [log, other]).length).toBeGreaterThanOrEqual(count / 50);
      return performance.now() - before;
    };
    return Math.min(once(), once(), once());
  };
  fastestMs(1_000);
  const [small, large] = [fastestMs(1_000), fastestMs(10_000)];
  console.info(`doubts of 1 000 readings ${small.toFixed(1)} ms, of 10 000 ${large.toFixed(1)} ms`);
  // Quadratic time would be a hundred times as long.
  expect(large).toBeLessThan(40 * Math.max(small, 1));
}, 20_000);
