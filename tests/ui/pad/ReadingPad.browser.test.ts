import '#ui/look';
import type { ComponentProps } from 'svelte';
import { ReadingPad } from '#ui/pad';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';

type Props = ComponentProps<typeof ReadingPad>;

const show = async (props: Partial<Props> = {}) => {
  const ontext = vi.fn();
  const onunit = vi.fn();
  const onsubmit = vi.fn();
  const screen = await render(ReadingPad, {
    text: '',
    unit: 'in',
    mark: '1/4 in',
    units: ['in', 'cm'],
    ontext,
    onunit,
    onsubmit,
    ...props,
  });
  return { screen, ontext, onunit, onsubmit };
};

beforeEach(async () => {
  await page.viewport(360, 800);
});

describe('the line on the pad', () => {
  test('shows what was written and says it in words', async () => {
    const { screen } = await show({ text: '4 1/2' });
    await expect.element(screen.getByRole('textbox', { name: 'My measure' })).toHaveValue('4 1/2');
    await expect.element(screen.getByText('four and a half inches')).toBeVisible();
  });

  test('says nothing about what is not yet a reading', async () => {
    const { screen } = await show({ text: '4 1/' });
    await expect.element(screen.getByText('inches', { exact: true })).toBeVisible();
    expect(screen.container.querySelector('[aria-live]')).toHaveTextContent('');
  });

  test('can be typed on by keyboard, and Enter writes it down', async () => {
    const { screen, ontext, onsubmit } = await show();
    await screen.getByRole('textbox').click();
    await userEvent.keyboard('7');
    expect(ontext).toHaveBeenLastCalledWith('7');
    await userEvent.keyboard('{Enter}');
    expect(onsubmit).toHaveBeenCalledOnce();
  });

  test('a doubt is tied to the line and shown in words', async () => {
    const { screen } = await show({ text: 'x', error: 'Which number did you read?' });
    const line = screen.getByRole('textbox');
    await expect.element(line).toHaveAttribute('aria-invalid', 'true');
    await expect.element(line).toHaveAccessibleDescription(/Which number did you read\?/);
    await expect.element(screen.getByText('Which number did you read?')).toBeVisible();
  });
});

describe('the keys', () => {
  test('add to what is written', async () => {
    const { screen, ontext } = await show({ text: '4' });
    await screen.getByRole('button', { name: '2', exact: true }).click();
    await screen.getByRole('button', { name: 'a half', exact: true }).click();
    await screen.getByRole('button', { name: 'three quarters' }).click();
    await screen.getByRole('button', { name: 'back' }).click();
    await screen.getByRole('button', { name: 'clear' }).click();
    expect(ontext.mock.calls.flat()).toEqual(['42', '4 1/2', '4 3/4', '', '']);
  });

  test('follow the mark: none finer, fractions, or a decimal point', async () => {
    const { screen } = await show({ mark: '1 in' });
    const fractions = screen.getByRole('group', { name: 'Fractions' });
    const point = screen.getByRole('button', { name: 'decimal point' });
    expect(fractions.query()).toBeNull();
    expect(point.query()).toBeNull();
    await screen.rerender({ mark: '1/8 in' });
    expect(fractions.getByRole('button').elements()).toHaveLength(7);
    await screen.rerender({ mark: '1 mm', unit: 'cm' });
    expect(fractions.query()).toBeNull();
    await expect.element(point).toBeVisible();
  });

  test.each(['1 in', '1/2 in', '1/4 in', '1/8 in', '0.1 in'] as const)(
    'are 56 pixels high or more and 8 apart on a small telephone, to the mark %s',
    async (mark) => {
      const { screen } = await show({ mark, text: '3' });
      const boxes = [...screen.container.querySelectorAll('.key')].map((key) =>
        key.getBoundingClientRect(),
      );
      for (const box of boxes) {
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(56);
      }
      for (const [index, one] of boxes.entries()) {
        for (const other of boxes.slice(index + 1)) {
          const apart = Math.max(
            Math.max(one.left, other.left) - Math.min(one.right, other.right),
            Math.max(one.top, other.top) - Math.min(one.bottom, other.bottom),
          );
          expect(apart).toBeGreaterThanOrEqual(7.99);
        }
      }
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
    },
  );

  test('for a left hand the fractions stand at the left', async () => {
    const { screen } = await show({ hand: 'left' });
    const leftOf = (name: string) =>
      screen.getByRole('button', { name, exact: true }).element().getBoundingClientRect().left;
    expect(leftOf('a half')).toBeLessThan(leftOf('1'));
    await screen.rerender({ hand: 'right' });
    expect(leftOf('a half')).toBeGreaterThan(leftOf('3'));
  });
});

describe('the unit', () => {
  test('changes alone: what is written stays as it was written', async () => {
    const { screen, ontext, onunit } = await show({ text: '4' });
    await screen.getByRole('radio', { name: 'centimetres' }).click();
    expect(onunit).toHaveBeenCalledExactlyOnceWith('cm');
    expect(ontext).not.toHaveBeenCalled();
    await screen.rerender({ unit: 'cm', mark: '1 cm' });
    await expect.element(screen.getByRole('textbox')).toHaveValue('4');
    await expect.element(screen.getByText('four centimetres')).toBeVisible();
  });

  test('is not asked where there is only one', async () => {
    const { screen } = await show({ units: ['in'] });
    expect(screen.getByRole('radio').query()).toBeNull();
  });
});
