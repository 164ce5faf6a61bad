import '#ui/look';
import { StripRow, type StripDay } from '#ui/strips';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';

const inch = 25_400_000;

const days = (count: number): StripDay[] =>
  Array.from({ length: count }, (_, index) => ({
    day: `Day ${index + 1}`,
    state: 'number',
    exact: (index + 1) * (inch / 2),
    text: `${(index + 1) / 2} in`,
    isNewest: index === count - 1,
  }));

const mixed: StripDay[] = [
  ...(['not-up-yet', 'missed', 'blank', 'trace', 'no-sun', 'lost'] as const).map(
    (state, index) => ({
      day: `Day ${index + 1}`,
      state,
      exact: null,
      text: '',
      isNewest: false,
    }),
  ),
  { day: 'Day 7', state: 'number', exact: 2 * inch, text: '2 in', isNewest: true },
];

const row = { label: 'My bean', unit: 'in', mark: '1/2 in' } as const;
const stripsIn = (container: Element) => [...container.querySelectorAll<SVGRectElement>('.strip')];
const box = (element: Element) => element.getBoundingClientRect();

beforeEach(async () => {
  await page.viewport(820, 800);
});

describe('a standing row', () => {
  test('stands every strip on one base line, as tall as its reading', async () => {
    const { container } = await render(StripRow, { ...row, days: days(4) });
    const strips = stripsIn(container).map(box);
    expect(new Set(strips.map((strip) => Math.round(strip.bottom))).size).toBe(1);
    const heights = stripsIn(container).map((strip) => Number(strip.getAttribute('height')));
    expect(heights.map((height) => height / heights[0]!)).toEqual([1, 2, 3, 4]);
  });

  test('its ruler measures it: the top of a 2 inch strip is at the number 2', async () => {
    const { container } = await render(StripRow, { ...row, days: days(4) });
    const two = [...container.querySelectorAll('.ruler text')].find((t) => t.textContent === '2')!;
    const middle = (box(two).top + box(two).bottom) / 2;
    const strip = stripsIn(container)[3]!;
    const top = box(strip.ownerSVGElement!).top + Number(strip.getAttribute('y'));
    expect(Math.abs(top - middle)).toBeLessThan(1.5);
  });

  test('only the newest strip is in the action colour', async () => {
    const { container } = await render(StripRow, { ...row, days: days(3) });
    const fills = stripsIn(container).map((strip) => getComputedStyle(strip).fill);
    const probe = document.createElement('i');
    probe.style.color = 'var(--action)';
    document.body.append(probe);
    expect(fills[2]).toBe(getComputedStyle(probe).color);
    expect(fills[0]).toMatch(/url\(/);
    expect(fills[0]).toBe(fills[1]);
    probe.remove();
  });

  test('draws no strip for a day without a number, and names each state under the row', async () => {
    const screen = await render(StripRow, { ...row, days: mixed });
    expect(stripsIn(screen.container)).toHaveLength(1);
    expect(screen.container.querySelectorAll('.state')).toHaveLength(5);
    for (const words of ['not up yet', 'we missed it', 'lost']) {
      const shown = [...screen.container.querySelectorAll('.key li')].map((li) => li.textContent);
      expect(shown.some((text) => text.trim() === words)).toBe(true);
    }
  });

  test('is told in a sentence and a table to someone who does not see it', async () => {
    const screen = await render(StripRow, { ...row, days: mixed });
    await expect
      .element(screen.getByRole('figure'))
      .toHaveTextContent(/My bean: 1 of 7 days measured, 2 in on Day 7\./);
    const table = screen.getByRole('table', { name: 'My bean' });
    expect(table.getByRole('row').elements()).toHaveLength(8);
    await expect
      .element(table.getByRole('row', { name: 'Day 3 nothing written' }))
      .toBeInTheDocument();
    expect(
      [...screen.container.querySelectorAll('svg')].every(
        (svg) => svg.getAttribute('aria-hidden') === 'true',
      ),
    ).toBe(true);
  });
});

describe('a long row on a small screen', () => {
  const viewOf = (container: Element) => container.querySelector<HTMLElement>('.view')!;

  test('opens at the newest strip, and the page itself does not grow', async () => {
    await page.viewport(360, 800);
    const { container } = await render(StripRow, { ...row, days: days(30) });
    await expect.poll(() => viewOf(container).scrollLeft).toBeGreaterThan(0);
    const newest = box(container.querySelector('.strip.newest')!);
    expect(newest.right).toBeLessThanOrEqual(box(viewOf(container)).right + 1);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
  });

  test('is looked along by keyboard or with buttons', async () => {
    await page.viewport(360, 800);
    const screen = await render(StripRow, { ...row, days: days(30) });
    const view = screen.getByRole('group', { name: 'The strips of My bean' });
    await expect.poll(() => view.element().scrollLeft).toBeGreaterThan(0);
    const atEnd = view.element().scrollLeft;
    await screen.getByRole('button', { name: 'earlier days' }).click();
    await expect.poll(() => view.element().scrollLeft).toBeLessThan(atEnd - 100);
    const before = view.element().scrollLeft;
    (view.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowLeft}');
    await expect.poll(() => view.element().scrollLeft).toBeLessThan(before);
  });

  test('that fits has nothing to scroll and no stop for the Tab key', async () => {
    const screen = await render(StripRow, { ...row, days: days(5) });
    expect(screen.getByRole('group').query()).toBeNull();
    expect(screen.getByRole('button').query()).toBeNull();
  });
});

describe('a small row', () => {
  test('keeps the newest strips when not all of them fit', async () => {
    await page.viewport(360, 800);
    const { container } = await render(StripRow, { ...row, days: days(40), size: 'small' });
    const view = box(container.querySelector('.view')!);
    const strips = stripsIn(container).map(box);
    expect(strips[39]!.right).toBeLessThanOrEqual(view.right + 1);
    expect(strips[39]!.left).toBeGreaterThan(view.left);
    expect(strips[0]!.right).toBeLessThan(view.left);
  });

  test('stands next to its ruler when they all fit', async () => {
    const { container } = await render(StripRow, { ...row, days: days(3), size: 'small' });
    const first = box(stripsIn(container)[0]!);
    expect(first.left - box(container.querySelector('.view')!).left).toBeLessThan(4);
  });

  test('has no numbers, no buttons and no table, only its sentence', async () => {
    const screen = await render(StripRow, { ...row, days: days(40), size: 'small' });
    expect(screen.getByRole('table').query()).toBeNull();
    expect(screen.getByRole('button').query()).toBeNull();
    await expect.element(screen.getByRole('figure')).toHaveTextContent(/40 of 40 days measured/);
  });
});

test('rain stands in a gauge for every day that was looked at', async () => {
  const { container } = await render(StripRow, { ...row, variant: 'gauge', days: mixed });
  expect(container.querySelectorAll('.gauge')).toHaveLength(6);
});

test('shadows lie on the ground, all from the foot of the stick', async () => {
  const { container } = await render(StripRow, { ...row, variant: 'ground', days: days(4) });
  const strips = stripsIn(container);
  expect(new Set(strips.map((strip) => strip.getAttribute('x'))).size).toBe(1);
  const widths = strips.map((strip) => Number(strip.getAttribute('width')));
  expect(widths.map((width) => width / widths[0]!)).toEqual([1, 2, 3, 4]);
  const tops = strips.map((strip) => box(strip).top);
  expect([...tops].sort((a, b) => a - b)).toEqual(tops);
});
