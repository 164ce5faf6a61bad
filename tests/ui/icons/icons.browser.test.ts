import { Icon, iconNames, isIconName } from '#ui/icons';
import { expect, test } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { dayStates, shapes, weatherWords } from '#core/journal';

test.each(iconNames)('the drawing "%s" stays inside its square, stroke and all', async (name) => {
  const { container } = await render(Icon, { name, size: 24 });
  const box = container.querySelector('path')!.getBBox();
  expect(Math.max(box.width, box.height)).toBeGreaterThan(9);
  expect(box.x).toBeGreaterThanOrEqual(1);
  expect(box.y).toBeGreaterThanOrEqual(1);
  expect(box.x + box.width).toBeLessThanOrEqual(23);
  expect(box.y + box.height).toBeLessThanOrEqual(23);
});

test('a screen reader passes over an icon, for its word stands beside it', async () => {
  const { container } = await render(Icon, { name: 'seedling' });
  expect(container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
});

test('every state of a day, shape of a person and kind of weather has a drawing', () => {
  for (const word of [...dayStates, ...shapes, ...weatherWords])
    expect(isIconName(word)).toBe(true);
  expect(isIconName('toString')).toBe(false);
});
