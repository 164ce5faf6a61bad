import { begunDrawing, drawRight, emptyDrawing } from '#core/graphs';
import { describe, expect, test } from 'vitest';
import { linesMm, pictureLines } from '../../../src/lib/ui/paper/picture-lines';
import { seriesCount } from '../../../src/lib/ui/paper/picture-series';
import { goldenRight } from '../../core/graphs/golden-logs';

const right = (name: string) => drawRight(goldenRight(name));
const weather = right('three kinds of weather');
const heights = right('heights of a week in centimetres');
const plot = right('ten seedlings in whole inches');
const bean = right('a bean over nine days with a missed one');
const beans = right('two beans in whole inches');

describe('the lines around a picture', () => {
  test('say what the numbers are of: over the squares, or under numbers along the bottom', () => {
    expect(pictureLines(heights, false).numbers).toEqual({
      ...{ text: heights.side.label, place: 'over' },
    });
    expect(pictureLines(plot, false).numbers).toEqual({
      ...{ text: plot.bottom.label, place: 'under' },
    });
    expect(pictureLines({ ...heights, upright: false }, false).numbers?.place).toBe('under');
    expect(pictureLines(weather, false).numbers).toBeNull();
  });

  test('ask what is along the bottom only of days that have no names yet', () => {
    expect(pictureLines(bean, false).bottom).toBeNull();
    expect(pictureLines({ ...bean, places: [] }, true).bottom).toBe(bean.bottom.label);
    expect(pictureLines({ ...heights, places: [] }, true).bottom).toBeNull();
  });

  test('have a key where there is one, and room for one where a reader would ask for it', () => {
    expect(pictureLines(weather, false).hasKey).toBe(true);
    expect(pictureLines(heights, false).hasKey).toBe(false);
    expect(pictureLines(beans, false).hasKey).toBe(true);
    const empty = emptyDrawing('picture-graph', { columns: 5, rows: 5 });
    expect(pictureLines(empty, true).hasKey).toBe(true);
    expect(pictureLines(empty, false).hasKey).toBe(false);
    expect(pictureLines(begunDrawing(heights, 'empty-paper'), true).hasKey).toBe(false);
  });

  test('take no room where nothing stands and nothing is to be written', () => {
    const empty = emptyDrawing('bar-graph', { columns: 5, rows: 5 });
    expect(linesMm(empty, false)).toBe(0);
    expect(linesMm(empty, true)).toBeGreaterThan(0);
  });

  test('take more room the longer they are', () => {
    const titled = (title: string) => linesMm({ ...heights, title }, false);
    expect(titled('Our bean')).toBeLessThan(
      titled('Our bean, as tall as it was each day in March'),
    );
    const keyed = (text: string) =>
      linesMm({ ...heights, seriesKey: [0, 1, 2].map((series) => ({ series, text })) }, false);
    expect(keyed('bean')).toBeLessThan(keyed('the bean that stands on the window sill'));
  });
});

test('owners of marks are counted as they are drawn, or as the key names them', () => {
  expect(seriesCount(heights)).toBe(0);
  expect(seriesCount(plot)).toBe(1);
  expect(seriesCount(beans)).toBe(2);
  expect(seriesCount({ ...beans, seriesKey: [] })).toBe(2);
  expect(seriesCount({ ...beans, points: [] })).toBe(2);
});
