import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { cm, height, kept, openKeptLog, tabTo, type Written } from './kept-log';
import { listenForFaults, looks, writeReading, writtenDown } from './walk';

/** Thursday 12 March 2026, nine in the morning in New York. */
const today = '2026-03-12T09:00:00-04:00';
const path = `/today?of=${kept.beanA}`;

const growing: readonly Written[] = [
  height(kept.beanA, '2026-03-09', 10),
  height(kept.beanA, '2026-03-10', 11),
  height(kept.beanA, '2026-03-11', 12),
];

const withHelpersAndLooks: readonly Written[] = [
  [
    '2026-03-02',
    {
      ...{ kind: 'fair-test-planned', investigation: kept.beans, different: 'light' },
      ...{ same: ['seed'], second: ['leaves', 'colour', 'stands'] },
    },
  ],
  [
    '2026-03-02',
    {
      ...{ kind: 'helper-length-measured', person: kept.wren },
      ...{ helper: 'little-finger', measured: cm(1) },
    },
  ],
  ...growing,
];

async function openToday(page: Page, written: readonly Written[] = growing): Promise<void> {
  await page.clock.setSystemTime(today);
  await openKeptLog(page, path, { written });
  await expect(page.getByRole('heading', { name: 'How tall do you think?' })).toBeVisible();
}

const tap = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

const question = (page: Page, asked: RegExp) => page.getByRole('group', { name: asked });

test('by taps: a guess, the inch side read, one question, and the other unit written @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openToday(page);
  await expect(page.getByText('12 cm')).toHaveCount(0);
  await tap(page, '1');
  await tap(page, '4');
  await tap(page, 'That is my guess');
  await expect(page.getByRole('heading', { name: 'Measure your plant.' })).toBeVisible();
  await tap(page, '5');
  await tap(page, 'Write it down');
  await expect(writtenDown(page)).toBeVisible();
  await expect(question(page, /Which side of the ruler did you use\?/)).toBeFocused();
  await expect(page.getByText('Your guess:')).toBeHidden();
  await tap(page, 'It is a different unit');
  await expect(page.getByText('5 in', { exact: true }).first()).toBeVisible();
  await expect(page.getByText('Your guess:')).toContainText('14 cm');
  await page.reload();
  await expect(page.getByText('5 in', { exact: true }).first()).toBeVisible();
  await expect(question(page, /Which side/)).toHaveCount(0);
  await page.getByRole('link', { name: 'Look at the log' }).click();
  const row = page.getByRole('row', { name: /12 Mar/ });
  await expect(row.locator('del')).toContainText('5 cm');
  await expect(row).toContainText('the other side of the ruler');
  expect(faults).toEqual([]);
});

test('by keyboard alone: digits swapped, looked at again, and written anew', async ({ page }) => {
  const faults = listenForFaults(page);
  await openToday(page);
  await tabTo(page, 'Measure right away', 'button');
  await page.keyboard.press('Enter');
  await tabTo(page, 'My measure', 'textbox');
  await page.keyboard.type('21');
  await page.keyboard.press('Enter');
  await expect(question(page, /Point to the tens\. Point to the ones\./)).toBeFocused();
  await tabTo(page, 'I want to look again', 'button');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: /What do you read now\?/ })).toBeFocused();
  await tabTo(page, 'My measure', 'textbox');
  await page.keyboard.type('13');
  await page.keyboard.press('Enter');
  await expect(page.getByText('13 cm', { exact: true }).first()).toBeVisible();
  await expect(question(page, /Point to the tens/)).toHaveCount(0);
  await tabTo(page, 'Measure once more', 'button');
  expect(faults).toEqual([]);
});

test('a question that was left open is not asked again on this page', async ({ page }) => {
  await openToday(page);
  await writeReading(page, '21');
  await expect(question(page, /Point to the tens/)).toBeVisible();
  await page.reload();
  await expect(writtenDown(page)).toBeVisible();
  await expect(page.getByRole('link', { name: 'Look at the log' })).toBeVisible();
  await expect(question(page, /Point to the tens/)).toHaveCount(0);
});

test.describe('where a part of the page does not come', () => {
  // It would hand out what it kept.
  test.use({ serviceWorkers: 'block' });

  test('the reading is written all the same, and the page says so', async ({ page }) => {
    let held = 0;
    await page.route('**/*.js', async (route) => {
      const came = await route.fetch();
      if (!(await came.text()).includes('Point to the tens'))
        return route.fulfill({ response: came });
      held += 1;
      return route.abort();
    });
    await openToday(page);
    await writeReading(page, '21');
    await expect(page.getByText('It is written down. The rest did not load.')).toBeVisible();
    expect(held).toBeGreaterThan(0);
    await expect(page.getByRole('link', { name: 'Look at the log' })).toBeVisible();
    await page.unroute('**/*.js');
    await page.goto(`/log?of=${kept.beanA}`);
    await expect(page.getByRole('row', { name: /12 Mar/ })).toContainText('21 cm');
  });
});

for (const [scheme, where] of looks) {
  test(`axe finds nothing in the guess, the question, the second look and after it, ${scheme} ${where}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await openToday(page, withHelpersAndLooks);
    await expect(page.getByRole('group', { name: /Which helper/ })).toBeVisible();
    await findNothing(page, 'guess');
    await page.getByRole('textbox', { name: 'My guess' }).fill('20');
    await tap(page, 'That is my guess');
    await page.getByRole('textbox', { name: 'My measure' }).fill('21');
    await findNothing(page, 'pad');
    await tap(page, 'Write it down');
    await expect(question(page, /Point to the tens/)).toBeVisible();
    await findNothing(page, 'question');
    await tap(page, 'I want to look again');
    await expect(page.getByRole('heading', { name: /What do you read now\?/ })).toBeVisible();
    await findNothing(page, 'second look');
    await page.getByRole('textbox', { name: 'My measure' }).fill('13');
    await tap(page, 'Write what I read now');
    await expect(page.getByRole('group', { name: 'What colour are the leaves?' })).toBeVisible();
    await findNothing(page, 'written');
  });
}

async function findNothing(page: Page, step: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const found = violations.map(({ id, nodes }) => `${step}: ${id}: ${nodes[0]?.html}`);
  expect(found).toEqual([]);
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect([step, tooWide]).toEqual([step, 0]);
}
