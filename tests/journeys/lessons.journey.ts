import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { height, kept, openKeptLog, type Written } from './kept-log';
import { listenForFaults, looks } from './walk';

/** A bean measured every day for ten days: 1, 2, 2, 4, 5, 7, 8, 9, 11, 12 cm. */
const tenDays: readonly Written[] = [1, 2, 2, 4, 5, 7, 8, 9, 11, 12].map((value, index) =>
  height(kept.beanA, `2026-03-${String(index + 2).padStart(2, '0')}`, value),
);

const planned = (page: Page) => page.getByRole('heading', { level: 1 });
const part = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
const step = (page: Page) => page.getByRole('heading', { level: 2 });

/** The notebook has the ten days in it; the page of lessons is open. */
async function openLessons(page: Page): Promise<void> {
  await page.clock.setSystemTime('2026-03-12T09:00:00-04:00');
  await openKeptLog(page, `/lessons?of=${kept.beanA}`, { written: tenDays });
}

async function makeLesson(page: Page, name: string): Promise<void> {
  await page
    .getByRole('listitem')
    .filter({ hasText: name })
    .getByRole('button', { name: 'Make this lesson' })
    .click();
  await expect(page).toHaveURL(/\/lessons\/plan\?lesson=/);
  await planned(page).waitFor();
}

async function faultsOfAxe(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map((each) => `${page.url()}: ${each.id}: ${each.nodes[0]?.html}`);
}

test('a lesson is made of the log, changed, and still so after a reload @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openLessons(page);
  await makeLesson(page, 'Show each measure as a bar');

  await part(page, 'What to accept').getByRole('button', { name: 'Change' }).click();
  await page.getByLabel('Your words for “What to accept”').fill('Any bar that is near enough');
  await page.getByRole('button', { name: 'Keep these words' }).click();
  await expect(part(page, 'What to accept')).toContainText('Any bar that is near enough');

  const questions = part(page, 'Questions').locator('li .asked');
  const before = await questions.allTextContents();
  await page.getByRole('button', { name: 'Another in its place' }).last().click();
  const other = part(page, 'What could stand here').getByRole('listitem').first();
  const taken = (await other.locator('p').textContent())!;
  await other.getByRole('button', { name: 'Take this one' }).click();
  await expect(questions.last()).toHaveText(taken);

  await page.reload();
  await expect(part(page, 'What to accept')).toContainText('Any bar that is near enough');
  expect(await questions.allTextContents()).toEqual([...before.slice(0, -1), taken]);
  expect(faults).toEqual([]);
});

test('a lesson is given by keys alone, left in the middle, and written as given once', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openLessons(page);
  await makeLesson(page, 'Show each measure as a bar');
  await page.getByRole('link', { name: 'Teach it, step by step' }).focus();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/lessons\/run/);

  const pressNext = async (): Promise<void> => {
    const next = page.getByRole('button', { name: 'Next', exact: true });
    for (let tab = 0; tab < 30; tab += 1) {
      if (await next.evaluate((button) => button === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
  };
  await step(page).waitFor();
  for (let turn = 0; turn < 4; turn += 1) await pressNext();
  await expect(page.getByText(/^Step 5 of/)).toBeVisible();
  const left = await step(page).textContent();
  await page.reload();
  await expect(step(page)).toHaveText(left!);

  for (let turn = 0; turn < 20 && (await step(page).textContent()) !== 'The end'; turn += 1) {
    await pressNext();
  }
  await expect(step(page)).toHaveText('The end');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByText('It is written: given today.')).toBeVisible();
  await page.reload();
  await page.goto('/lessons');
  await expect(page.getByText(/Given on Thu 12 Mar\./)).toBeVisible();
  expect(faults).toEqual([]);
});

test('an address with no such lesson, or none at all, is said kindly', async ({ page }) => {
  const faults = listenForFaults(page);
  await openLessons(page);
  for (const path of ['/lessons/plan', '/lessons/run?lesson=nonsense', '/lessons/plan?lesson=']) {
    await page.goto(path);
    await expect(page.getByText(/is not in this notebook/)).toBeVisible();
    await page.getByRole('link', { name: 'All lessons' }).click();
    await expect(page.getByRole('heading', { name: 'What is the lesson for?' })).toBeVisible();
  }
  expect(faults).toEqual([]);
});

for (const [scheme, where] of looks) {
  test(`axe finds nothing on the lesson pages and nothing scrolls sideways, ${scheme} ${where}`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
    await page.goto('/lessons');
    const check = async (): Promise<void> => {
      expect(await faultsOfAxe(page)).toEqual([]);
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([page.url(), overflow]).toEqual([page.url(), 0]);
    };
    await planned(page).waitFor();
    await check();
    await makeLesson(page, 'Show each measure as a bar');
    await page.getByRole('button', { name: 'Open all answers' }).click();
    await page.getByRole('button', { name: 'Another in its place' }).first().click();
    await page.getByRole('button', { name: 'Add a question of your own' }).click();
    await page.getByRole('button', { name: 'Show it to me' }).click();
    await part(page, 'What to accept').getByRole('button', { name: 'Change' }).click();
    await check();
    await page.getByRole('link', { name: 'Teach it, step by step' }).click();
    // The plan has headings of this kind too.
    await page.waitForURL(/\/lessons\/run/);
    const next = page.getByRole('button', { name: 'Next', exact: true });
    await step(page).waitFor();
    while (await next.isVisible()) {
      await check();
      await next.click();
    }
    await check();
  });
}
