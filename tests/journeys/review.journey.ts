import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { height, kept, openKeptLog, type Written } from './kept-log';
import { pdfPages } from './pdf-shapes';
import { listenForFaults, looks } from './walk';

/** A bean that was read on every school day of three weeks from Monday 2 March 2026 on. */
const beans: readonly Written[] = [2, 3, 5, 6, 8, 9, 11, 13, 14, 16, 17, 18, 20, 21, 23].map(
  (value, index) => {
    const day = `2026-03-${String(2 + index + 2 * Math.floor(index / 5)).padStart(2, '0')}`;
    return height(kept.beanA, day, value);
  },
);
const thursday = '2026-03-26T09:00:00-04:00';
const friday = '2026-03-27T09:00:00-04:00';

const button = (page: Page, name: string): Locator =>
  page.getByRole('button', { name, exact: true });
const answer = (page: Page): Locator => page.getByRole('textbox', { name: 'My answer' });
const asked = (page: Page): Promise<string> => page.getByRole('heading', { level: 2 }).innerText();
const equation = (page: Page): Locator => page.getByText(/^(\d+|\?) \+ (\d+|\?) = (\d+|\?)$/);

/** The number that a question mark stands for: what a child reckons. */
const reckoned = (text: string): number => {
  const [start, change, result] = text.split(/ [+=] /).map(Number) as [number, number, number];
  return Number.isNaN(result) ? start + change : result - (Number.isNaN(start) ? change : start);
};

async function openReview(page: Page, on: string): Promise<void> {
  await page.clock.setFixedTime(new Date(on));
  await openKeptLog(page, '/review', { written: beans });
  await expect(page.getByRole('heading', { name: 'A few things to try' })).toBeVisible();
}

/** Gives two answers that are not so, and goes on. */
async function miss(page: Page): Promise<void> {
  const together = page.getByText('Let us look at it side by side.');
  if (await answer(page).isVisible()) {
    for (const text of ['97', '96']) {
      await answer(page).fill(text);
      await button(page, 'That is it').click();
    }
  } else {
    const choices = page.locator('section li').getByRole('button', { name: /^(?!Read to me)/ });
    const said = await choices.allInnerTexts();
    for (const text of said.slice(0, 2)) await button(page, text.trim()).click();
  }
  const found = page.getByText('Yes. That is it.');
  await expect(together.or(found)).toBeVisible();
}

test('a whole review by taps: a missed sum comes again on the next school day, a found one rests @phone', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const faults = listenForFaults(page);
  await openReview(page, thursday);
  await expect(page.getByRole('link', { name: 'Measure: Bean A' })).toBeVisible();
  await button(page, 'I do it later').click();

  let missedSum = '';
  for (let place = 2; place <= 5; place += 1) {
    await expect(page.getByText(`Thing ${place} of 6`)).toBeVisible();
    const isSum = (await equation(page).count()) > 0;
    if (isSum && missedSum === '') {
      missedSum = await equation(page).innerText();
      await button(page, 'Show me blocks').click();
      await button(page, 'Show me jumps').click();
      await expect(page.getByRole('img', { name: /^From/ })).toBeVisible();
    }
    await miss(page);
    await button(page, 'Go on').click();
  }
  expect(missedSum).not.toBe('');

  await button(page, 'Add or take away').click();
  const chosen = await equation(page).innerText();
  await answer(page).fill(String(reckoned(chosen)));
  await button(page, 'That is it').click();
  await expect(page.getByText('Yes. That is it.')).toBeVisible();
  await button(page, 'Go on').click();
  await expect(page.getByRole('heading', { name: 'That is all for today.' })).toBeVisible();
  await page.reload();
  await expect(page.getByText('You thought well about numbers of your own.')).toBeVisible();

  await page.clock.setFixedTime(new Date(friday));
  await page.reload();
  await button(page, 'I do it later').click();
  const nextDay: string[] = [];
  for (let place = 2; place <= 5; place += 1) {
    await expect(page.getByText(`Thing ${place} of 6`)).toBeVisible();
    if ((await equation(page).count()) > 0) nextDay.push(await equation(page).innerText());
    await button(page, 'Skip this one').click();
  }
  expect(nextDay).toContain(missedSum);
  expect(nextDay).not.toContain(chosen);
  expect(faults).toEqual([]);
});

test('a review is stopped in the middle, and goes on there when the page is opened again', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openReview(page, thursday);
  await button(page, 'I do it later').click();
  await button(page, 'Skip this one').click();
  await expect(page.getByText('Thing 3 of 6')).toBeVisible();
  const question = await asked(page);
  await page.reload();
  await expect(page.getByText('Thing 3 of 6')).toBeVisible();
  expect(await asked(page)).toBe(question);
  expect(faults).toEqual([]);
});

/** Presses the tab key until this is where the keyboard is. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let presses = 0; presses < 60; presses += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The tab key does not reach ${target}`);
}

test('a sum with its help and both answers by keyboard alone', async ({ page }) => {
  const faults = listenForFaults(page);
  await openReview(page, thursday);
  await tabTo(page, button(page, 'I do it later'));
  await page.keyboard.press('Enter');
  while ((await equation(page).count()) === 0) {
    await tabTo(page, button(page, 'Skip this one'));
    await page.keyboard.press('Enter');
    await page.waitForTimeout(100);
  }
  await tabTo(page, button(page, 'Show me jumps'));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('img', { name: /^From/ })).toBeVisible();
  const text = await equation(page).innerText();
  await tabTo(page, answer(page));
  await page.keyboard.type('97');
  await page.keyboard.press('Enter');
  await expect(page.locator('.notice.ask')).toBeVisible();
  await tabTo(page, answer(page));
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(String(reckoned(text)));
  await page.keyboard.press('Enter');
  await expect(page.getByText('Yes. That is it.')).toBeVisible();
  await tabTo(page, button(page, 'Go on'));
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Thing \d of 6/)).toBeVisible();
  expect(faults).toEqual([]);
});

for (const [scheme, where] of looks) {
  test(`axe finds nothing on any thing of the review, nor on its paper, ${scheme} ${where}`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    const faults = listenForFaults(page);
    const expectClean = async (what: string): Promise<void> => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${what}: ${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([what, tooWide]).toEqual([what, 0]);
    };
    await openReview(page, thursday);
    await expectClean('measure');
    await button(page, 'I do it later').click();
    for (let place = 2; place <= 5; place += 1) {
      await expect(page.getByText(`Thing ${place} of 6`)).toBeVisible();
      for (const help of ['Show me blocks', 'Show me jumps'])
        if (await button(page, help).isVisible()) await button(page, help).click();
      await expectClean(`thing ${place}`);
      await miss(page);
      await expectClean(`thing ${place}, looked at`);
      await button(page, 'Go on').click();
    }
    await expectClean('choice');
    await button(page, 'I stop here').click();
    await expectClean('end');
    await page.goto('/review/paper');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await button(page, 'Show the answers here').click();
    await expectClean('paper');
    expect(faults).toEqual([]);
  });
}

for (const size of ['letter', 'a4'] as const)
  test(`the printed review is one sheet and one of answers on ${size}`, async ({ page }) => {
    const faults = listenForFaults(page);
    await openReview(page, thursday);
    await page.goto(`/review/paper?size=${size}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    const overflow = await page
      .locator('.paper-sheet .work')
      .first()
      .evaluate((work) => {
        const last = work.lastElementChild!.getBoundingClientRect().bottom;
        return last - work.getBoundingClientRect().bottom;
      });
    expect(overflow).toBeLessThanOrEqual(0);
    const printed = pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    // ISO 216 and ANSI/ASME Y14.1; Chromium rounds a page to whole CSS pixels.
    const [widthMm, heightMm] = size === 'a4' ? [210, 297] : [215.9, 279.4];
    expect(printed).toHaveLength(2);
    for (const sheet of printed) {
      expect(Math.abs(sheet.widthMm - widthMm)).toBeLessThan(0.3);
      expect(Math.abs(sheet.heightMm - heightMm)).toBeLessThan(0.3);
    }
    expect(faults).toEqual([]);
  });
