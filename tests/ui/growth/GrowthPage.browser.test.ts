import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { civilDay } from '#core/calendar';
import type { Series } from '#core/series';
import { seriesWith, shadowSeries, type Written } from '../../core/graphs/small-series';
import growth from '../../reference/growth.json';
import { aNotebook } from '../records/a-notebook';
import GrowthOf from './GrowthOf.svelte';

const show = async (series: Series, siblings: readonly Series[] = [], today = '2026-03-13') => {
  const notebook = await aNotebook();
  const { container } = await render(GrowthOf, {
    ...{ notebook, series, siblings, today: civilDay(today) },
  });
  return container;
};
const textOf = (element: Element) => element.textContent!.replace(/\s+/g, ' ').trim();
/** The rows of the first table, cell by cell. */
const rowsOf = (container: Element) =>
  [...container.querySelector('table')!.querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map(textOf).join(' | '),
  );

beforeEach(async () => {
  await page.viewport(1000, 900);
});

describe('the sunflowers of 1919', () => {
  // Reed & Holland 1919, PNAS 5: mean height of 58 plants; figures in tests/reference/growth.json.
  const published = growth.series[0]!;
  const written = Array<Written>(85).fill(null);
  published.x.forEach((day, index) => (written[Number(day)] = Number(published.y[index])));
  const sunflowers = seriesWith(written, { name: 'Sunflowers', mark: '0.1 mm', weekdays: [1] });

  test('show both slopes, and the fastest week', async () => {
    const container = await show(sunflowers);
    const slopes = [...container.querySelectorAll('.slopes > div')].map(textOf);
    expect(slopes[0]).toMatch(/^Middle slope 3\.69 cm a day The middle one of the slopes/);
    expect(slopes[1]).toMatch(/^Closest line 3\.45 cm a day The slope of the line that comes/);
    expect(textOf(container)).toContain('(day 35 to day 42): 38.5 cm in 7 days, 5.50 cm a day');
    expect(textOf(container)).toContain('Slow, fast, slow: look at the shape');
  });

  test('have more figures for who asks', async () => {
    const container = await show(sunflowers);
    await page.getByText('More figures').click();
    expect(rowsOf(container.querySelector('details:has(.number)')!)).toEqual([
      expect.stringMatching(/^Middle slope \| 3\.6934 cm/),
      // Height on the first day of the log, day 7: 6.28727272727273 + 7 x 3.45220279720280.
      'Closest line | 3.4522 cm | 30.453 cm',
    ]);
  });

  test('can be shown in inches, which is about', async () => {
    const container = await show(sunflowers);
    await page.getByRole('radio', { name: 'inches (about)' }).click();
    expect(textOf(container)).toMatch(/Middle slope about 1\.45 inches a day/);
    expect(rowsOf(container)[4]).toMatch(/38\.5 cm about 15\.16 in \| about 2\.17/);
    await expect
      .element(page.getByRole('img', { name: /Height in inches \(about\)/ }))
      .toBeVisible();
  });
});

describe('a bean of one school week and a day', () => {
  const bean = seriesWith([1, 2, 3, 'missed', 5, null, null, 8], { weekdays: [1, 2, 3, 4, 5] });

  test('has its sentence to read together', async () => {
    const container = await show(bean, [], '2026-03-09');
    expect(textOf(container.querySelector('.child-page')!)).toContain(
      'It grew 3 cm from Friday to Monday.',
    );
    await expect
      .element(page.getByRole('button', { name: /Read to me: It grew 3 centimetres/ }))
      .toBeVisible();
  });

  test('shows every change, and says which gaps are too short to trust and why', async () => {
    const container = await show(bean);
    const rows = rowsOf(container);
    expect(rows).toHaveLength(4);
    expect(rows[0]).toMatch(
      /^Mon 2 Mar to Tue 3 Mar \| 1 day \| 1 cm \| 1\.00 \| 1 cm a day\s?too short a gap/,
    );
    expect(rows[3]).toBe('Fri 6 Mar to Mon 9 Mar | 3 days | 3 cm | 1.00 | 1 cm a day');
    expect(textOf(container)).toContain('whole centimetre, two readings need 3 days between them');
  });

  test('can show only the steps that are long enough', async () => {
    const container = await show(bean);
    await page.getByRole('radio', { name: 'one far enough away to trust' }).click();
    expect(rowsOf(container).map((row) => row.split(' | ')[0])).toEqual([
      ...['Mon 2 Mar to Fri 6 Mar', 'Fri 6 Mar to Mon 9 Mar'],
    ]);
  });

  test('says that the graph is the grown-up’s', async () => {
    await show(bean);
    await expect.element(page.getByText('The child draws their own first.')).toBeVisible();
  });

  test('has trend lines only when they are asked for, by the keyboard too', async () => {
    await show(bean);
    const key = page.getByRole('list', { name: 'Key' });
    await expect.element(key.getByText('Middle slope')).not.toBeInTheDocument();
    page.getByRole('checkbox', { name: 'Middle slope' }).element().focus();
    await userEvent.keyboard(' ');
    await expect.element(key.getByText('Middle slope')).toBeVisible();
  });

  test('is drawn alone until a grown-up asks for its sister', async () => {
    const sister = seriesWith([2, 3, 4], { name: 'Bean B' });
    await show(bean, [sister]);
    const graph = page.getByRole('img', { name: /Line graph/ });
    await expect.element(graph).not.toHaveAccessibleName(/Bean B/);
    await page.getByRole('checkbox', { name: 'Bean B' }).click();
    await expect.element(graph).toHaveAccessibleName(/Bean B: 3 readings/);
  });
});

describe('a log with little in it', () => {
  test('has nothing but a kind word when it is empty', async () => {
    const container = await show(seriesWith(['not-up-yet', 'not-up-yet']));
    expect(textOf(container)).toContain('We have no measure yet.');
    expect(container.querySelector('canvas, table')).toBeNull();
  });

  test('says what is missing when there are too few days', async () => {
    const container = await show(seriesWith([1, null, null, 2]));
    expect(textOf(container)).toContain(
      'Too few days to say. There are readings on 2 days; 5 are needed',
    );
    expect(container.querySelector('.slopes')).toBeNull();
  });
});

describe('other quantities', () => {
  test('rain is added up and has no growth', async () => {
    const rain = seriesWith([3, 0, 0, 0, 4, null, null, 9], {
      ...{ unit: 'mm', mark: '1 mm', quantity: 'rain', name: 'Gauge' },
      spanDays: { 7: 3 },
    });
    const container = await show(rain);
    expect(rowsOf(container)[0]).toBe('Mon 2 Mar to Sun 8 Mar 2026 | 7 mm | 5 | ');
    expect(rowsOf(container)[1]).toMatch(
      /9 mm \| 1 \| The reading of Mon 9 Mar holds 3 days, and began/,
    );
    expect(textOf(container)).not.toMatch(/Trend|slope|a day\b/);
    await page.getByRole('radio', { name: 'month' }).click();
    expect(rowsOf(container)[0]).toMatch(/^March 2026 \| 16 mm \| 6/);
  });

  test('a shadow has its day by the clock, with the shortest reading named', async () => {
    const shadow = shadowSeries('2026-03-12', [
      ['09:00', 95],
      ['12:30', 40],
      ['15:00', 80],
    ]);
    const container = await show(shadow);
    expect(textOf(container)).toContain('The shadow was shortest at 12:30.');
    expect(rowsOf(container)[1]).toBe('12:30 | 40 cm | shortest');
    expect(textOf(container)).not.toMatch(/slope/);
    await expect.element(page.getByRole('img', { name: /Length of the shadow/ })).toBeVisible();
  });

  test('a count has no unit to choose', async () => {
    const leaves = seriesWith([2, null, null, 4], { unit: 'count', mark: '1', quantity: 'length' });
    const container = await show(leaves, [], '2026-03-06');
    expect(textOf(container)).toContain('We counted 2 more from Monday to Thursday.');
    expect(container.querySelector('[name="page-unit"]')).toBeNull();
    expect(rowsOf(container)[0]).toBe(
      'Mon 2 Mar to Thu 5 Mar | 3 days | 2 | 0.67 | less than 1 a day',
    );
  });
});
