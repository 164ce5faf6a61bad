import '#ui/look';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import PlaceLinks from '../../../src/lib/ui/page/PlaceLinks.svelte';

const address = vi.hoisted(() => ({ url: new URL('http://localhost/log?of=bean') }));
vi.mock('$app/state', () => ({ page: address }));
/** As many pages as there will be: five for the child, four for the grown-up. */
vi.mock('../../../src/lib/ui/page/places', () => {
  const place = (path: string, name: string, icon: string, side: string) => ({
    ...{ path, name, icon, side },
  });
  return {
    places: [
      place('/today', 'Today', 'today', 'child'),
      place('/log', 'Log', 'log', 'child'),
      place('/measure', 'Measure', 'ruler', 'child'),
      place('/draw', 'Draw', 'draw', 'child'),
      place('/talk', 'Talk', 'talk', 'child'),
      place('/lessons', 'Lessons', 'lessons', 'grown-up'),
      place('/growth', 'Growth', 'growth', 'grown-up'),
      place('/records', 'Records', 'records', 'grown-up'),
      place('/set-up', 'Set-up', 'set-up', 'grown-up'),
    ],
  };
});

const seenLinks = (screen: Awaited<ReturnType<typeof render>>) =>
  screen
    .getByRole('link')
    .elements()
    .map((link) => link.textContent.trim());
const childSide = ['Today', 'Log', 'Measure', 'Draw', 'Talk'];
const grownUpSide = ['Lessons', 'Growth', 'Records', 'Set-up'];
const showAt = async (path: string, width: number) => {
  address.url = new URL(`http://localhost${path}`);
  await page.viewport(width, 700);
  document.body.style.margin = '0 12px';
  return render(PlaceLinks);
};

beforeEach(() => document.fonts.ready);

describe('on a wide screen', () => {
  test.each([820, 1440])('both sides are in sight at %i pixels, with no button', async (width) => {
    const screen = await showAt('/log?of=bean', width);
    expect(seenLinks(screen)).toEqual([...childSide, ...grownUpSide]);
    expect(screen.getByRole('button').elements()).toHaveLength(0);
    await expect.element(screen.getByRole('group', { name: 'Grown-up’s side' })).toBeVisible();
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });
});

describe('on a phone', () => {
  test.each([
    ['/log?of=bean', childSide, 'Grown-up’s side', [...childSide, ...grownUpSide]],
    ['/records/bring-in', grownUpSide, 'Child’s side', [...childSide, ...grownUpSide]],
    ['/begin', childSide, 'Grown-up’s side', [...childSide, ...grownUpSide]],
  ])('%s shows its own side; a button unfolds the other', async (path, own, name, all) => {
    const screen = await showAt(path, 360);
    expect(seenLinks(screen)).toEqual(own);
    const button = screen.getByRole('button', { name });
    await expect.element(button).toHaveAttribute('aria-expanded', 'false');
    await button.click();
    await expect.element(button).toHaveAttribute('aria-expanded', 'true');
    expect(seenLinks(screen)).toEqual(all);
    const unfolded = document.getElementById(button.element().getAttribute('aria-controls')!);
    expect(unfolded?.getAttribute('aria-label')).toBe(name);
    await button.click();
    expect(seenLinks(screen)).toEqual(own);
  });

  test('the row of a side is one line, and pressing the button moves nothing in it', async () => {
    for (const path of ['/today', '/measure', '/growth']) {
      const screen = await showAt(path, 360);
      const button = screen.getByRole('button');
      const tops = () => [
        ...new Set(
          [...screen.getByRole('link').elements(), button.element()].map((each) =>
            Math.round(each.getBoundingClientRect().bottom),
          ),
        ),
      ];
      const before = button.element().getBoundingClientRect();
      expect([path, tops().length]).toEqual([path, 1]);
      await button.click();
      expect([path, tops().length]).toEqual([path, 2]);
      expect(button.element().getBoundingClientRect()).toEqual(before);
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
      await screen.unmount();
    }
  });

  test('every target is at least 48 pixels wide and high', async () => {
    const screen = await showAt('/measure', 360);
    await screen.getByRole('button').click();
    const targets = [
      ...screen.getByRole('link').elements(),
      ...screen.getByRole('button').elements(),
    ].map((each) => each.getBoundingClientRect());
    expect(targets).toHaveLength(10);
    for (const { width, height } of targets)
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(48);
  });

  test('by keyboard: the tab key reaches the button, Enter unfolds, the next stop is a page', async () => {
    const screen = await showAt('/log', 360);
    for (let stop = 0; stop < 6; stop += 1) await userEvent.keyboard('{Tab}');
    expect(document.activeElement).toBe(screen.getByRole('button').element());
    await userEvent.keyboard('{Enter}{Tab}');
    expect(document.activeElement?.textContent.trim()).toBe('Lessons');
  });
});

test('a link keeps the open log, and the page one is on is marked', async () => {
  const screen = await showAt('/measure/ruler/spaces?of=bean', 1440);
  const link = screen.getByRole('link', { name: 'Measure' });
  await expect.element(link).toHaveAttribute('href', '/measure?of=bean');
  await expect.element(link).toHaveAttribute('aria-current', 'page');
  expect(document.querySelectorAll('[aria-current]')).toHaveLength(1);
});
