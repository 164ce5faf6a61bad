import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { height, kept, openKeptLog, tabTo, type Written } from './kept-log';
import { listenForFaults, looks } from './walk';

/** Wednesday 11 March 2026, nine in the morning in New York. */
const today = '2026-03-11T09:00:00-04:00';
const path = `/measure/both-sides?of=${kept.beanA}`;
const comparePath = `/measure/both-sides/compare?of=${kept.beanA}`;
const togetherPath = `/measure/together?of=${kept.beanA}`;
const robin: Written = [
  '2026-03-02',
  {
    ...{ kind: 'person-added', person: '00000000-0000-7000-8000-000000000702', name: 'Robin' },
    ...{ shape: 'star', colour: 3, role: 'grown-up', stage: 'grade-2', hand: 'right' },
  },
];

test.use({ actionTimeout: 10_000 });

const pad = (page: Page) => page.getByRole('textbox', { name: 'My measure' });
const press = (page: Page, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();

async function tapNumber(page: Page, number: string): Promise<void> {
  await expect(pad(page)).toHaveValue('');
  for (const figure of number) {
    await page
      .getByRole('group', { name: 'Figures' })
      .getByRole('button', { name: figure, exact: true })
      .click();
  }
}

async function readBoth(page: Page, own: string, other: string): Promise<void> {
  await expect(page.getByRole('heading', { name: 'Read the side with “cm”.' })).toBeVisible();
  await tapNumber(page, own);
  await press(page, 'Next');
  await expect(page.getByRole('heading', { name: 'Now the side with “in”.' })).toBeVisible();
  await tapNumber(page, other);
  await press(page, 'Write both down');
}

/** All that is shown, said or held on the page that has this number in it. */
const tracesOf = (page: Page, number: string): Promise<readonly string[]> =>
  page.evaluate((wanted) => {
    const tells = new RegExp(`(?<![\\d.])${wanted}(?![\\d.])`);
    const elements = [...document.body.querySelectorAll('*')];
    return [
      document.title,
      document.body.innerText,
      ...elements.map((each) => each.getAttribute('aria-label') ?? ''),
      ...elements.map((each) => (each instanceof HTMLInputElement ? each.value : '')),
    ].filter((text) => tells.test(text));
  }, number);

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test.beforeEach(async ({ page }) => {
  await page.clock.setSystemTime(today);
});

test.describe('both sides of the ruler', () => {
  test('agree: the first number is nowhere until both are in @phone', async ({ page }) => {
    const faults = listenForFaults(page);
    await openKeptLog(page, path, {});
    await tapNumber(page, '43');
    expect(await tracesOf(page, '43')).not.toEqual([]);
    await press(page, 'Next');
    await expect(page.getByText('Your first number is safe.')).toBeVisible();
    expect(await tracesOf(page, '43')).toEqual([]);
    await tapNumber(page, '17');
    expect(await tracesOf(page, '43')).toEqual([]);
    await press(page, 'Write both down');
    await expect(page.getByRole('status').getByText('43 cm | 17 in')).toBeVisible();
    await expect(page.getByText('Same height. Two numbers. Both are true.')).toBeVisible();
    await page.getByRole('link', { name: 'See them on two rulers' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('One height, two numbers');
    await expect(page.getByRole('img', { name: /43 cm above, 17 in below/ })).toBeVisible();
    expect(faults).toEqual([]);
  });

  test('do not agree: both are read again, and what was read stays in the log', async ({
    page,
  }) => {
    await openKeptLog(page, path, {});
    await readBoth(page, '43', '25');
    await expect(
      page.getByRole('heading', { name: 'Let us read both sides again.' }),
    ).toBeVisible();
    await expect(page.getByText('Both are true.', { exact: false })).toBeHidden();
    await press(page, 'Read both sides again');
    expect(await tracesOf(page, '43')).toEqual([]);
    await readBoth(page, '44', '17');
    await expect(page.getByText('44 cm | 17 in')).toBeVisible();
    await expect(page.getByText('Both are true.', { exact: false })).toBeVisible();
    await page.goto(`/log?of=${kept.beanA}`);
    await expect(page.locator('del').filter({ hasText: '43' }).first()).toBeAttached();
  });

  test('do not agree: both numbers are kept, and nobody is asked again', async ({ page }) => {
    await openKeptLog(page, path, {});
    await readBoth(page, '13', '8');
    await press(page, 'Keep both numbers');
    await expect(page.getByText('Both numbers are in the log.')).toBeVisible();
    await expect(page.getByText('Let us read both sides again.')).toBeHidden();
    await page.reload();
    await expect(page.getByText('Both numbers are in the log.')).toBeVisible();
    await expect(page.getByText('13 cm | 8 in')).toBeVisible();
  });

  test('of a reading of today, just the other side is read', async ({ page }) => {
    await openKeptLog(page, path, { written: [height(kept.beanA, '2026-03-11', 13)] });
    await expect(page.getByText('You read it today. The number is covered.')).toBeVisible();
    expect(await tracesOf(page, '13')).toEqual([]);
    await press(page, 'Read the other side');
    await expect(page.getByRole('heading', { name: 'Now read the side with “in”.' })).toBeVisible();
    expect(await tracesOf(page, '13')).toEqual([]);
    await tapNumber(page, '5');
    await press(page, 'Write it down');
    await expect(page.getByText('13 cm | 5 in')).toBeVisible();
  });

  test('are read by the keyboard alone', async ({ page }) => {
    await openKeptLog(page, path, {});
    await tabTo(page, 'My measure', 'textbox');
    await page.keyboard.type('13');
    await page.keyboard.press('Enter');
    await expect(page.getByText('Your first number is safe.')).toBeVisible();
    await tabTo(page, 'My measure', 'textbox');
    await page.keyboard.type('8');
    await page.keyboard.press('Enter');
    await tabTo(page, 'Read both sides again', 'button');
    await page.keyboard.press('Enter');
    await tabTo(page, 'My measure', 'textbox');
    await page.keyboard.type('13');
    await page.keyboard.press('Enter');
    await expect(page.getByText('Your first number is safe.')).toBeVisible();
    await tabTo(page, 'My measure', 'textbox');
    await page.keyboard.type('5');
    await page.keyboard.press('Enter');
    await expect(page.getByText('13 cm | 5 in')).toBeVisible();
  });
});

async function measureAs(page: Page, who: RegExp, number: string): Promise<void> {
  await press(page, who);
  await tapNumber(page, number);
  await press(page, 'Write it down');
  await expect(page.getByText('Your number is safe. Who is next?')).toBeVisible();
}

async function threeMeasure(page: Page): Promise<void> {
  await openKeptLog(page, togetherPath, { written: [robin] });
  await measureAs(page, /^Wren/, '43');
  expect(await tracesOf(page, '43')).toEqual([]);
  await measureAs(page, /^Robin/, '45');
  await measureAs(page, /^One more/, '44');
  expect(
    (await Promise.all(['43', '44', '45'].map((each) => tracesOf(page, each)))).flat(),
  ).toEqual([]);
  await expect(page.getByText('3 numbers are in.', { exact: false })).toBeVisible();
  await press(page, 'Show what we found');
  await expect(page.getByText('Our numbers are between 43 and 45 cm.')).toBeVisible();
  await expect(page.getByText('The middle one is 44 cm.')).toBeVisible();
}

test.describe('many measure one thing', () => {
  test('two people and one more, covered until all are in, to the plot @phone', async ({
    page,
  }) => {
    const faults = listenForFaults(page);
    await threeMeasure(page);
    await press(page, 'Now show the notebook’s plot');
    const plot = page.getByRole('img', { name: /^Line plot\..*3 X marks/ });
    await expect(plot).toBeVisible();
    await expect(plot.locator('.cross')).toHaveCount(3);
    await press(page, 'Cover them again');
    expect(await tracesOf(page, '44')).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('draw it first: while the drawing is not done, the notebook holds its own plot back', async ({
    page,
  }) => {
    await threeMeasure(page);
    await press(page, 'Draw it');
    await expect(page).toHaveURL(/\/draw\?of=.*drawing=/);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await page.goto(togetherPath);
    await press(page, 'Show what we found');
    await expect(page.getByText('Your drawing is not done yet.')).toBeVisible();
    await expect(page.getByRole('button', { name: /notebook’s plot/ })).toBeHidden();
    await expect(page.getByRole('img', { name: /^Line plot/ })).toBeHidden();
    await page.getByRole('link', { name: 'Go on with your drawing' }).click();
    await expect(page).toHaveURL(/\/draw\?of=.*drawing=/);
  });

  test('who measures again has the last number in the table, and that is said', async ({
    page,
  }) => {
    await openKeptLog(page, togetherPath, { written: [robin] });
    await measureAs(page, /^Wren/, '43');
    await measureAs(page, /^Robin/, '45');
    await measureAs(page, /^Wren/, '44');
    await press(page, 'Show what we found');
    await expect(page.getByRole('row', { name: /Wren/ })).toContainText('44 cm');
    await expect(
      page.getByText('Who measured again has the last number here.', { exact: false }),
    ).toBeVisible();
  });
});

/** Serious or not: nothing is let through. */
async function expectClean(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((each) => `${where}: ${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
  expect([where, await overflow(page)]).toEqual([where, 0]);
}

for (const [scheme, where] of looks) {
  test(`axe finds nothing and nothing scrolls sideways, ${scheme} ${where}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    await openKeptLog(page, path, { written: [robin] });
    await tapNumber(page, '13');
    await expectClean(page, 'the first side');
    await press(page, 'Next');
    await expectClean(page, 'the second side');
    await tapNumber(page, '5');
    await press(page, 'Write both down');
    await expect(page.getByText('13 cm | 5 in')).toBeVisible();
    await expectClean(page, 'both numbers');

    await page.goto(comparePath);
    await page.getByText('For the grown-up', { exact: true }).click();
    await press(page, 'Open the answer, with a grown-up');
    await expectClean(page, 'the two rulers');

    await page.goto(togetherPath);
    await measureAs(page, /^Robin/, '14');
    await expectClean(page, 'who measures');
    await press(page, 'Show what we found');
    await press(page, 'Now show the notebook’s plot');
    await expectClean(page, 'what we found');
  });
}

test('on paper a talk list has its numbers, and a folded part leaves no line', async ({ page }) => {
  await openKeptLog(page, path, {});
  await readBoth(page, '13', '5');
  await expect(page.getByText('13 cm | 5 in')).toBeVisible();
  await page.goto(comparePath);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('For the grown-up', { exact: true })).toBeHidden();
  const first = page.getByRole('listitem').filter({ hasText: 'Which number is larger?' });
  await expect(first).toBeVisible();
  expect(
    await first.evaluate((item) => {
      const { display, listStyleType } = getComputedStyle(item);
      return [display, listStyleType];
    }),
  ).toEqual(['list-item', 'decimal']);
  const hint = page.getByText('Printed at 100 %', { exact: false });
  await expect(hint).toBeVisible();
  expect(await hint.evaluate((element) => getComputedStyle(element).display)).toBe('block');
});
