import '#ui/look';
import { Ruler } from '#ui/ruler';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';

const inch = 25_400_000;
const foot = { unit: 'in', mark: '1/2 in', maxExact: 12 * inch } as const;

/** Taps where a value stands on the ruler as drawn, `offPx` further along. */
const tapAt = async (slider: HTMLElement, inches: number, tailPx: number, offPx = 0) => {
  const { width } = slider.getBoundingClientRect();
  const x = ((width - tailPx) * inches) / 12 + offPx;
  await userEvent.click(slider, { position: { x, y: 30 } });
};

beforeEach(async () => {
  await page.viewport(800, 900);
});

describe('a lying ruler', () => {
  test('says its value in words and its range in numbers', async () => {
    const screen = await render(Ruler, { ...foot, valueExact: 4.5 * inch, onpick: vi.fn() });
    const slider = screen.getByRole('slider', { name: 'Ruler' });
    await expect.element(slider).toHaveAttribute('aria-valuetext', 'four and a half inches');
    await expect.element(slider).toHaveAttribute('aria-valuenow', '4.5');
    await expect.element(slider).toHaveAttribute('aria-valuemin', '0');
    await expect.element(slider).toHaveAttribute('aria-valuemax', '12');
    await expect.element(screen.getByText('4 1/2 in')).toBeVisible();
  });

  test('asks to be tapped before anything is picked, and shows no strip', async () => {
    const screen = await render(Ruler, { ...foot, valueExact: null, onpick: vi.fn() });
    await expect.element(screen.getByText('Tap the ruler.')).toBeVisible();
    await expect
      .element(screen.getByRole('slider'))
      .toHaveAttribute('aria-valuetext', 'nothing yet');
    expect(screen.container.querySelector('.strip')).toBeNull();
  });

  test('a tap picks the nearest mark in use', async () => {
    const onpick = vi.fn();
    const screen = await render(Ruler, { ...foot, valueExact: null, onpick });
    const slider = screen.getByRole('slider').element() as HTMLElement;
    await tapAt(slider, 3, 16, 2);
    await tapAt(slider, 7.6, 16);
    await tapAt(slider, 0, 16, 1);
    expect(onpick.mock.calls.map(([exact]) => exact / inch)).toEqual([3, 7.5, 0]);
  });

  test('the strip ends exactly at the line of its value, and zero is the very edge', async () => {
    const screen = await render(Ruler, { ...foot, valueExact: 4 * inch, onpick: vi.fn() });
    const strip = screen.container.querySelector('.strip')!.getBoundingClientRect();
    const slider = screen.getByRole('slider').element().getBoundingClientRect();
    expect(strip.left).toBeCloseTo(slider.left, 1);
    const four = [...screen.container.querySelectorAll('text')].find((t) => t.textContent === '4')!;
    const middle = four.getBoundingClientRect().left + four.getBoundingClientRect().width / 2;
    expect(Math.abs(strip.right - middle)).toBeLessThan(1);
  });

  test('keys step by one mark, one inch, or to an end', async () => {
    const onpick = vi.fn();
    const screen = await render(Ruler, { ...foot, valueExact: 4 * inch, onpick });
    (screen.getByRole('slider').element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}{ArrowDown}{PageUp}{PageDown}{Home}{End}');
    expect(onpick.mock.calls.map(([exact]) => exact / inch)).toEqual([4.5, 3.5, 5, 3, 0, 12]);
  });

  test('less and more step by one mark, and are large enough for small hands', async () => {
    const onpick = vi.fn();
    const screen = await render(Ruler, { ...foot, valueExact: 4 * inch, onpick });
    for (const name of ['less', 'more']) {
      const button = screen.getByRole('button', { name });
      await button.click();
      const box = button.element().getBoundingClientRect();
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(48);
    }
    expect(onpick.mock.calls.map(([exact]) => exact / inch)).toEqual([3.5, 4.5]);
  });

  test('for a left hand the lines and the strip are on the other edge', async () => {
    const screen = await render(Ruler, {
      ...foot,
      valueExact: inch,
      onpick: vi.fn(),
      hand: 'left',
    });
    const { container } = screen;
    const strip = container.querySelector('.strip')!.getBoundingClientRect();
    const number = container.querySelector('text')!.getBoundingClientRect();
    expect(strip.top).toBeGreaterThan(number.bottom);
    await screen.rerender({ hand: 'right' });
    const other = container.querySelector('.strip')!.getBoundingClientRect();
    expect(other.bottom).toBeLessThan(container.querySelector('text')!.getBoundingClientRect().top);
  });
});

describe('a ruler longer than the screen', () => {
  const long = { unit: 'cm', mark: '1 mm', maxExact: 300_000_000 } as const;
  const viewOf = (container: Element) => container.querySelector<HTMLElement>('.view')!;
  const pointerIsSeen = (container: Element) => {
    const view = viewOf(container).getBoundingClientRect();
    const pointer = container.querySelector('.pointer')!.getBoundingClientRect();
    return pointer.left >= view.left && pointer.right <= view.right;
  };

  test('keeps its pointer in sight, wherever the value goes', async () => {
    await page.viewport(360, 800);
    const screen = await render(Ruler, { ...long, valueExact: 0, onpick: vi.fn() });
    for (const centimetres of [0, 29, 3, 15]) {
      await screen.rerender({ valueExact: centimetres * 10_000_000 });
      await expect.poll(() => pointerIsSeen(screen.container)).toBe(true);
    }
  });

  test('is looked along with buttons, without changing the value', async () => {
    await page.viewport(360, 800);
    const onpick = vi.fn();
    const screen = await render(Ruler, { ...long, valueExact: 0, onpick });
    await screen.getByRole('button', { name: 'larger numbers' }).click();
    await expect.poll(() => viewOf(screen.container).scrollLeft).toBeGreaterThan(100);
    await screen.getByRole('button', { name: 'smaller numbers' }).click();
    await expect.poll(() => viewOf(screen.container).scrollLeft).toBe(0);
    expect(onpick).not.toHaveBeenCalled();
  });

  test('never makes the page itself wider than a small telephone', async () => {
    await page.viewport(360, 800);
    await render(Ruler, { ...long, valueExact: 0, onpick: vi.fn() });
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
  });
});

describe('a standing ruler', () => {
  test('has zero at its foot and grows upwards', async () => {
    const onpick = vi.fn();
    const screen = await render(Ruler, {
      ...foot,
      valueExact: 3 * inch,
      onpick,
      orientation: 'standing',
    });
    const slider = screen.getByRole('slider');
    await expect.element(slider).toHaveAttribute('aria-orientation', 'vertical');
    const box = slider.element().getBoundingClientRect();
    const strip = screen.container.querySelector('.strip')!.getBoundingClientRect();
    expect(strip.bottom).toBeCloseTo(box.bottom, 0);

    const perInch = (box.height - 16) / 12;
    await userEvent.click(slider, { position: { x: 20, y: box.height - perInch * 5 } });
    expect(onpick).toHaveBeenLastCalledWith(5 * inch);
  });
});
