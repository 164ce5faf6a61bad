import '#ui/look';
import { Chart } from 'chart.js';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { timeGraphOf, type LineGraph } from '#core/graphs';
import type { Series } from '#core/series';
import { LineGraphFigure } from '#ui/chart';
import { seriesWith } from '../../core/graphs/small-series';

const graphOf = (...all: Series[]): LineGraph =>
  timeGraphOf(
    all.map((series) => ({ series, points: series.points })),
    { unit: 'cm', mostDayLabels: 12, valueSteps: 6 },
  )!;

const draw = async (graph: LineGraph) => {
  const { container } = await render(LineGraphFigure, {
    ...{ graph, side: 'Height in cm', sentences: ['Bean A: some readings.'] },
  });
  const canvas = container.querySelector('canvas')!;
  const chart = await vi.waitFor(() => {
    const drawn = Chart.getChart(canvas);
    expect(drawn?.chartArea).toBeDefined();
    return drawn!;
  });
  return { container, canvas, chart };
};

/** The colour at a place of the graph, in days and centimetres. */
const colourAt = (canvas: HTMLCanvasElement, day: number, cm: number): readonly number[] => {
  const { scales, currentDevicePixelRatio } = Chart.getChart(canvas)!;
  const [x, y] = [scales.x!.getPixelForValue(day), scales.y!.getPixelForValue(cm)];
  const ratio = currentDevicePixelRatio;
  return [...canvas.getContext('2d')!.getImageData(x * ratio, y * ratio, 1, 1).data];
};

/** How much of the straight way between two places is painted in the blue of the data. */
const shareInBlue = (
  canvas: HTMLCanvasElement,
  from: readonly [number, number],
  to: readonly [number, number],
): number => {
  const steps = Array.from({ length: 41 }, (_, step) => 0.3 + (step / 40) * 0.4);
  const isBlue = ([red, green, blue, alpha]: readonly number[]): boolean =>
    alpha! > 128 && blue! > red! + 60 && blue! > green!;
  const found = steps.filter((share) =>
    isBlue(
      colourAt(canvas, from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share),
    ),
  );
  return found.length / steps.length;
};

beforeEach(async () => {
  await page.viewport(900, 800);
});

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

describe('the drawn line graph', () => {
  test('spaces its points by the calendar and stands its side on 0', async () => {
    const { chart } = await draw(graphOf(seriesWith([2, 4, null, null, null, 6])));
    const xs = chart.getDatasetMeta(0).data.map(({ x }) => x);
    expect((xs[2]! - xs[1]!) / (xs[1]! - xs[0]!)).toBeCloseTo(4, 3);
    expect(chart.scales.y!.min).toBe(0);
    expect(chart.scales.y!.getPixelForValue(0)).toBe(chart.chartArea.bottom);
  });

  test('joins neighbouring days in full, and a missed day only by thin dots', async () => {
    const { canvas } = await draw(graphOf(seriesWith([2, 4, 'missed', 8, 9])));
    expect(shareInBlue(canvas, [0, 2], [1, 4])).toBe(1);
    const dotted = shareInBlue(canvas, [1, 4], [3, 8]);
    expect(dotted).toBeGreaterThan(0.1);
    expect(dotted).toBeLessThan(0.7);
  });

  test('paints nothing after the last reading and nothing down to the base line', async () => {
    const { canvas, chart } = await draw(graphOf(seriesWith([4, 4, 'missed', 4, 'missed'])));
    expect(shareInBlue(canvas, [3, 4], [4, 4])).toBe(0);
    expect(shareInBlue(canvas, [1, 4], [2, 0])).toBe(0);
    expect(chart.data.datasets.flatMap(({ data }) => data)).toHaveLength(3);
  });

  test('marks a missed day on the base line', async () => {
    const { canvas } = await draw(graphOf(seriesWith([4, 4, 'missed', 4])));
    // The mark is hollow: the sheet shows where the line of the axis would be.
    const [red, green, blue] = colourAt(canvas, 2, 0);
    expect(Math.min(red!, green!, blue!)).toBeGreaterThan(240);
    expect(Math.max(...colourAt(canvas, 2.5, 0).slice(0, 3))).toBeLessThan(120);
  });

  test('moves nothing', async () => {
    const { chart } = await draw(graphOf(seriesWith([2, 4])));
    expect(chart.options.animation).toBe(false);
  });

  test('gives every one of seven thousand readings its point', async () => {
    const heights = Array.from({ length: 7000 }, (_, day) => Math.round(day / 10));
    const { chart } = await draw(graphOf(seriesWith(heights, { first: '2005-01-01' })));
    expect(chart.getDatasetMeta(0).data).toHaveLength(7000);
  });
});

describe('the look of the drawn graph', () => {
  test('follows the theme', async () => {
    const { canvas } = await draw(graphOf(seriesWith([2, 4, 6])));
    const axis = () => Math.max(...colourAt(canvas, 3.2, 0).slice(0, 3));
    expect(axis()).toBeLessThan(120);
    document.documentElement.dataset.theme = 'dark';
    await vi.waitFor(() => expect(axis()).toBeGreaterThan(180));
  });

  test('is ink on paper while it is printed, also from the dark page, and then comes back', async () => {
    document.documentElement.dataset.theme = 'dark';
    const { canvas } = await draw(graphOf(seriesWith([2, 4, 6])));
    const axis = () => Math.max(...colourAt(canvas, 3.2, 0).slice(0, 3));
    const onScreen = canvas.width;
    window.dispatchEvent(new Event('beforeprint'));
    expect(axis()).toBeLessThan(60);
    // 640 px of paper in three times the fineness of the screen.
    expect(canvas.width).toBe(1920);
    window.dispatchEvent(new Event('afterprint'));
    expect(axis()).toBeGreaterThan(180);
    await vi.waitFor(() => expect(canvas.width).toBe(onScreen));
  });

  test('tells two logs apart by dash and shape, with a key that names them', async () => {
    const second = seriesWith([3, 5, 7], { name: 'Bean B' });
    const { container, chart } = await draw(graphOf(seriesWith([2, 4, 6]), second));
    const [first, other] = chart.data.datasets as unknown as {
      borderDash: number[];
      pointStyle: string;
    }[];
    expect(first!.borderDash).not.toEqual(other!.borderDash);
    expect(first!.pointStyle).not.toBe(other!.pointStyle);
    const key = container.querySelector('[aria-label="Key"]')!;
    expect(key.textContent).toContain('Bean A');
    expect(key.textContent).toContain('Bean B');
  });
});

describe('a graph for somebody who does not see it', () => {
  test('is named by its sentences', async () => {
    await draw(graphOf(seriesWith([2, 4])));
    await expect
      .element(page.getByRole('img', { name: /Line graph, Height in cm\. Bean A: some/ }))
      .toBeVisible();
  });

  test('has its readings in a table, with states left out as they are no readings', async () => {
    const { container } = await draw(graphOf(seriesWith([2, 'missed', 4])));
    await page.getByText('The readings as a table').click();
    await expect.element(page.getByRole('table')).toBeVisible();
    const rows = [...container.querySelectorAll('tbody tr')].map((row) =>
      [...row.children].map((cell) => cell.textContent!.trim()),
    );
    expect(rows).toEqual([
      ['Mon 2 Mar 2026', '2 cm'],
      ['Wed 4 Mar 2026', '4 cm'],
    ]);
  });
});
