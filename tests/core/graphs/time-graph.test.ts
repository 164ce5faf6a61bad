import { describe, expect, it } from 'vitest';
import { trendOf } from '#core/growth';
import { timeGraphOf, type TimeGraphOptions } from '#core/graphs';
import type { Series } from '#core/series';
import { seriesWith, type Written } from './small-series';

const options: TimeGraphOptions = { unit: 'cm', mostDayLabels: 12, valueSteps: 6 };
const graphOf = (series: Series | readonly Series[], more: Partial<TimeGraphOptions> = {}) => {
  const all = 'specimen' in series ? [series] : series;
  const lines = all.map((each) => ({ series: each, points: each.points }));
  const graph = timeGraphOf(lines, { ...options, ...more });
  if (!graph) throw new Error('There is no graph');
  return graph;
};
const joinsOf = (written: readonly Written[], weekdays?: readonly number[]) =>
  graphOf(seriesWith(written, weekdays ? { weekdays } : {})).lines[0]!.joins;
const schoolDays = [1, 2, 3, 4, 5];

describe('the points of a time graph', () => {
  it('keep the weekend its place: Friday to Monday is 3 days along', () => {
    const graph = graphOf(seriesWith([1, 2, 3, 4, 5, null, null, 8], { weekdays: schoolDays }));
    expect(graph.lines[0]!.points.map(({ x }) => x)).toEqual([0, 1, 2, 3, 4, 7]);
    expect(graph.weekends).toEqual([{ from: 4.5, to: 6.5 }]);
  });

  it('are only numbers: a day not up, missed or blank is never a point at 0', () => {
    const graph = graphOf(seriesWith(['not-up-yet', 'not-up-yet', 1, 'missed', null, 3, 'lost']));
    expect(graph.lines[0]!.points.map(({ x, y }) => [x, y])).toEqual([
      [2, 1],
      [5, 3],
    ]);
    expect(graph.lines[0]!.marks.map(({ x, state }) => [x, state])).toEqual([
      ...[
        [0, 'not-up-yet'],
        [1, 'not-up-yet'],
        [3, 'missed'],
        [6, 'lost'],
      ],
    ]);
  });

  it('keep a 0 that was read as a point at 0', () => {
    expect(graphOf(seriesWith([0, 1])).lines[0]!.points[0]!.y).toBe(0);
  });

  it('join the middle one of a day and show the others beside it', () => {
    const line = graphOf(seriesWith([[5, 7, 6], 8])).lines[0]!;
    expect(line.points.map(({ y }) => y)).toEqual([6, 8]);
    expect(line.extra.map(({ y }) => y)).toEqual([5, 7]);
  });

  it('stand in the unit of the page, whichever they were read in', () => {
    const graph = graphOf(seriesWith([2, 4], { unit: 'in', mark: '1/2 in' }));
    expect(graph.lines[0]!.points.map(({ y }) => y)).toEqual([5.08, 10.16]);
    expect(graph.up).toMatchObject({ from: 0, to: 12, unit: 'cm' });
  });

  it('make no graph when there are none', () => {
    const empty = seriesWith(['missed', null]);
    expect(timeGraphOf([{ series: empty, points: [] }], options)).toBeNull();
  });
});

describe('the joins of a time graph', () => {
  it('are measured between neighbouring days', () => {
    expect(joinsOf([1, 2, 3])).toEqual(['measured', 'measured']);
  });

  it('are measured over a weekend that was never planned', () => {
    expect(joinsOf([1, 2, 3, 4, 5, null, null, 8], schoolDays)).toEqual(Array(5).fill('measured'));
  });

  it('cross a gap over a planned day that is blank or missed', () => {
    expect(joinsOf([1, null, 3, 4], schoolDays)).toEqual(['across-a-gap', 'measured']);
    expect(joinsOf([1, 'missed', 3, 4], schoolDays)).toEqual(['across-a-gap', 'measured']);
  });

  it('cross a gap over a day off that something else was written for', () => {
    expect(joinsOf([1, 2, 3, 4, 5, 'missed', null, 8], schoolDays).at(-1)).toBe('across-a-gap');
  });

  it('cross a gap over any day where the log has no plan', () => {
    expect(joinsOf([1, null, 3], [])).toEqual(['across-a-gap']);
  });
});

describe('the paper of a time graph', () => {
  it('starts at 0 and ends at or above the tallest', () => {
    expect(graphOf(seriesWith([3.7, 9.3])).up).toMatchObject({ from: 0, to: 10 });
  });

  it('is at least a week wide', () => {
    expect(graphOf(seriesWith([1])).along).toMatchObject({ from: -0.5, to: 6.5 });
  });

  it('ends with the last thing written, not with the blank days after it', () => {
    const graph = graphOf(seriesWith([1, 2, 3, 4, 5, 6, 7, 8, 'missed', null, null, null]));
    expect(graph.along.to).toBe(8.5);
  });

  it('has a Saturday and a Sunday tinted that begin or end it', () => {
    const fromSunday = graphOf(seriesWith([1, 2, 3, 4, 5, 6, 7], { first: '2026-03-08' }));
    expect(fromSunday.weekends).toEqual([
      { from: -0.5, to: 0.5 },
      { from: 5.5, to: 6.5 },
    ]);
  });

  it('takes several logs on one calendar, each with its own joins', () => {
    const second = seriesWith([4, null, 6], { first: '2026-03-04', name: 'Bean B' });
    const graph = graphOf([seriesWith([1, 2, 3]), second]);
    expect(graph.lines.map(({ name }) => name)).toEqual(['Bean A', 'Bean B']);
    expect(graph.lines[1]!.points.map(({ x }) => x)).toEqual([2, 4]);
    expect(graph.lines[1]!.joins).toEqual(['across-a-gap']);
    expect(graph.up.to).toBe(6);
  });
});

describe('a trend line on a time graph', () => {
  const series = seriesWith(['not-up-yet', 1, 2, 3, 4, null, 6, 7, 8, 9]);
  const trend = trendOf(series.points);
  if (!trend.ok) throw new Error('There is no trend');

  it('reaches from the first reading to the last, and no further', () => {
    const kinds = ['least-squares', 'median-of-slopes'] as const;
    const { trends } = graphOf(series, { trend: trend.value, trendKinds: kinds });
    expect(trends.map(({ kind }) => kind)).toEqual(kinds);
    for (const { from, to } of trends) {
      expect([from.x, to.x]).toEqual([1, 9]);
      expect(from.y).toBeCloseTo(1, 9);
      expect(to.y).toBeCloseTo(9, 9);
    }
  });

  it('is not there until it is asked for', () => {
    expect(graphOf(series, { trend: trend.value }).trends).toEqual([]);
  });
});

describe('a long time graph', () => {
  it('takes seven thousand readings, every one a point', () => {
    const heights = Array.from({ length: 7000 }, (_, day) => Math.round(day / 10));
    const graph = graphOf(seriesWith(heights, { first: '2005-01-01' }));
    expect(graph.lines[0]!.points).toHaveLength(7000);
    expect(graph.along.ticks.length).toBeLessThanOrEqual(13);
    expect(graph.weekends).toEqual([]);
  });
});
