import { describe, expect, it } from 'vitest';
import { clockGraphOf } from '#core/graphs';
import type { DayMark } from '#core/journal';
import { shadowSeries } from './small-series';

const options = { unit: 'cm', mostTimeLabels: 12, valueSteps: 6 } as const;
const graphOf = (readings: Parameters<typeof shadowSeries>[1], mostTimeLabels = 12) => {
  const series = shadowSeries('2026-06-01', readings);
  return clockGraphOf(series, series.points, { ...options, mostTimeLabels });
};

describe('a graph by the clock', () => {
  it('puts each reading at its minute of the day, in order of time', () => {
    const graph = graphOf([
      ['12:30', 40],
      ['09:15', 95],
      ['15:00', 80],
    ])!;
    expect(graph.lines[0]!.points.map(({ x, y }) => [x, y])).toEqual([
      [555, 95],
      [750, 40],
      [900, 80],
    ]);
  });

  it('begins and ends on whole hours, and its side at 0', () => {
    const graph = graphOf([
      ['09:15', 95],
      ['13:10', 41],
    ])!;
    expect([graph.along.from, graph.along.to]).toEqual([540, 840]);
    expect(graph.along.ticks.map((tick) => tick.label[0])).toEqual([
      ...['09:00', '10:00', '11:00', '12:00', '13:00', '14:00'],
    ]);
    expect(graph.up.from).toBe(0);
  });

  it('names fewer hours where there is less room, and keeps their lines', () => {
    const graph = graphOf(
      [
        ['07:00', 95],
        ['19:00', 41],
      ],
      5,
    )!;
    const named = graph.along.ticks.filter((tick) => tick.label.length > 0);
    expect(named.map((tick) => tick.label[0])).toEqual(['09:00', '12:00', '15:00', '18:00']);
    expect(graph.along.ticks).toHaveLength(13);
  });

  it('does not join across an hour that was left out', () => {
    const graph = graphOf([
      ['09:00', 90],
      ['10:00', 70],
      ['11:00', 55],
      ['14:00', 60],
      ['15:00', 75],
    ])!;
    expect(graph.lines[0]!.joins).toEqual(['measured', 'measured', 'across-a-gap', 'measured']);
  });

  it('takes an hour that was left out for one twice as long as the others', () => {
    const times = ['09:00', '10:00', '11:00', '13:00'] as const;
    const joins = graphOf(times.map((time) => [time, 50]))!.lines[0]!.joins;
    expect(joins).toEqual(['measured', 'measured', 'across-a-gap']);
    // Of three readings alone nobody can say which gap is the usual one.
    expect(graphOf(times.slice(1).map((time) => [time, 50]))!.lines[0]!.joins).toEqual([
      ...['measured', 'measured'],
    ]);
  });

  it('marks a time without sun on the base line, and does not join across it', () => {
    const series = shadowSeries('2026-06-01', [
      ['09:00', 90],
      ['11:00', 55],
    ]);
    const cloudy = { time: '10:00', state: 'no-sun' } as unknown as DayMark;
    const days = series.days.map((day) => ({ ...day, marks: [cloudy] }));
    const [line] = clockGraphOf({ ...series, days }, series.points, options)!.lines;
    expect(line!.marks).toEqual([{ x: 600, day: '2026-06-01', state: 'no-sun' }]);
    expect(line!.joins).toEqual(['across-a-gap']);
    expect(line!.points).toHaveLength(2);
  });

  it('leaves out a reading without a time, and is none without any', () => {
    expect(
      graphOf([
        [undefined, 50],
        ['12:00', 40],
      ])!.lines[0]!.points,
    ).toHaveLength(1);
    expect(graphOf([[undefined, 50]])).toBeNull();
  });
});
