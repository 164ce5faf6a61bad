import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { height, kept, openKeptLog, type Written } from './kept-log';
import { listenForFaults } from './walk';

/** A talk is ten minutes of taps, and axe looks at every kind of page in it. */
test.setTimeout(180_000);

const panel = (page: Page) => page.getByRole('region', { name: 'Talk', exact: true });
const say = (page: Page) => page.getByRole('button', { name: 'That is my answer' });
const done = (page: Page) => page.getByText('You talked about all of it.');

/** A bean that was measured every school morning for two weeks. */
const twoWeeks: readonly Written[] = [
  ...[2, 3, 5, 6, 7].map((value, index) => height(kept.beanA, `2026-03-0${index + 2}`, value)),
  ...[11, 12, 14, 15, 16].map((value, index) =>
    height(kept.beanA, `2026-03-${String(index + 9).padStart(2, '0')}`, value),
  ),
];

const openTalk = async (page: Page): Promise<void> => {
  await page.clock.setSystemTime('2026-03-13T10:00:00-04:00');
  await openKeptLog(page, `/talk?of=${kept.beanA}`, { written: twoWeeks });
  await expect(panel(page).getByRole('heading', { level: 2 })).toBeVisible();
};

const expectClean = async (page: Page): Promise<void> => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
  const tooWide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(tooWide).toBe(0);
};

/** WCAG 2.2 asks for 24 CSS pixels, and 44 at its highest level; a child's page keeps to 48. */
const expectForFingers = async (page: Page): Promise<void> => {
  const small = await panel(page)
    .locator('button, summary, .stamp')
    .evaluateAll((buttons) =>
      buttons
        .map((each) => ({ box: each.getBoundingClientRect(), name: each.textContent?.trim() }))
        .filter(({ box }) => box.height > 0 && (box.height < 48 || box.width < 48))
        .map(({ box, name }) => `${name}: ${box.width} by ${box.height}`),
    );
  expect(small).toEqual([]);
};

/** Gives some answer to the question that is up, by taps alone. */
async function tapAnAnswer(page: Page): Promise<void> {
  const onGraph = page.getByRole('listbox', { name: 'The graph' });
  const figure = page.getByRole('button', { name: '9', exact: true });
  if (await figure.isVisible()) {
    await page.getByRole('button', { name: 'clear' }).click();
    await figure.click();
    const unit = panel(page).locator('.stamp', { hasText: /^\s*(cm|mm)\s*$/ });
    if (await unit.first().isVisible()) await unit.first().click();
  } else if (await onGraph.isVisible()) {
    const { width, height: high } = (await onGraph.boundingBox())!;
    for (const share of [0.4, 0.7]) {
      await onGraph.click({ position: { x: width * share, y: high * 0.3 } });
    }
  } else {
    for (const stamp of await panel(page).locator('.stamp').all()) {
      if ((await stamp.getAttribute('aria-pressed')) === 'false') await stamp.click();
      if (!/things/.test((await stamp.locator('xpath=../..').getAttribute('class')) ?? '')) break;
    }
  }
  await say(page).click();
}

/** Talks until nothing is left: an answer that does not fit twice is looked at with a grown-up. */
async function talkToTheEnd(page: Page): Promise<number> {
  let questions = 0;
  for (let taps = 0; taps < 60 && !(await done(page).isVisible()); taps += 1) {
    const goOn = page.getByRole('button', { name: 'Go on' });
    const together = page.getByRole('button', { name: 'With my grown-up' });
    const grownUp = panel(page).getByText('For the grown-up');
    if (await goOn.isVisible()) {
      questions += 1;
      await goOn.click();
    } else if (await grownUp.isVisible()) {
      await grownUp.click();
      await expectForFingers(page);
      await panel(page)
        .getByRole('group', { name: 'How did it go?' })
        .getByRole('button')
        .first()
        .click();
      await goOn.waitFor();
    } else if (await together.isVisible()) await together.click();
    else await tapAnAnswer(page);
    await expectForFingers(page);
  }
  return questions;
}

test('a whole talk of the made-up notebook goes by taps, and axe finds nothing @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await page.clock.setSystemTime('2026-05-02T10:00:00-04:00');
  await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
  await page.goto('/talk');
  await expect(page.getByRole('heading', { level: 1, name: 'Talk' })).toBeVisible();
  const whose = page.getByRole('group', { name: 'Who wants to talk?' });
  await whose.getByRole('button', { name: 'Wren' }).click();
  await expect(panel(page).getByRole('heading', { level: 2 })).toBeVisible();
  await expectClean(page);
  await page.getByRole('button', { name: 'The table' }).click();
  await expectClean(page);
  await page
    .getByRole('button', { name: /graph$/i })
    .first()
    .click();
  expect(await talkToTheEnd(page)).toBeGreaterThan(2);
  await expect(done(page)).toBeVisible();
  await expectClean(page);
  await expect(page.locator('main')).not.toContainText(/wrong|score|points/i);
  expect(faults).toEqual([]);
});

test('after a reload in the middle, what was answered stays and the help stands where it stood @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openTalk(page);
  const heading = panel(page).getByRole('heading', { level: 2 });
  const first = await heading.textContent();
  await tapAnAnswer(page);
  const help = panel(page).getByRole('status');
  const goOn = page.getByRole('button', { name: 'Go on' });
  await expect(help.or(goOn).first()).toBeVisible();
  const helped = await help.first().textContent();
  await page.reload();
  await expect(heading).toHaveText(first!);
  await expect(help.first()).toHaveText(helped!);
  await expectClean(page);
  expect(await talkToTheEnd(page)).toBeGreaterThan(2);
  await page.reload();
  await expect(done(page)).toBeVisible();
  expect(faults).toEqual([]);
});

test('a full device keeps the answer on the screen, and keeps it when there is room', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...entry: Parameters<typeof add>) {
      if ('isFull' in globalThis) throw new DOMException('full', 'QuotaExceededError');
      return add.apply(this, entry);
    };
  });
  await openTalk(page);
  await page.evaluate(() => Object.assign(globalThis, { isFull: true }));
  const keep = page.getByRole('button', { name: 'Keep it now' });
  for (let taps = 0; taps < 8 && !(await keep.isVisible()); taps += 1) {
    const together = page.getByRole('button', { name: 'With my grown-up' });
    const grownUp = panel(page).getByText('For the grown-up');
    if (await grownUp.isVisible()) {
      await grownUp.click();
      await panel(page)
        .getByRole('group', { name: 'How did it go?' })
        .getByRole('button')
        .first()
        .click();
      await keep.waitFor();
    } else if (await together.isVisible()) await together.click();
    else await tapAnAnswer(page);
  }
  await expect(panel(page).getByText('It is not kept yet.')).toBeVisible();
  await expect(panel(page).getByText('You said:')).toBeVisible();
  await expect(page.getByText(/no room left/)).toBeVisible();
  await page.evaluate(() => delete (globalThis as { isFull?: boolean }).isFull);
  await keep.click();
  await expect(page.getByRole('button', { name: 'Go on' })).toBeVisible();
  await expect(page.getByText(/no room left/)).toBeHidden();
});

test('a talk goes by the keyboard alone', async ({ page }) => {
  await openTalk(page);
  const reach = async (name: string): Promise<void> => {
    const wanted = page.getByRole('button', { name, exact: true }).first();
    for (let presses = 0; presses < 90; presses += 1) {
      if (await wanted.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`The keyboard never reached ${name}`);
  };
  const heading = panel(page).getByRole('heading', { level: 2 });
  const first = await heading.textContent();
  await reach('Not now');
  await page.keyboard.press('Enter');
  await expect(heading).not.toHaveText(first!);
  // The new question has the focus: the next stop is inside it.
  await expect(panel(page)).toBeFocused();
  await page.keyboard.press('Tab');
  expect(await panel(page).evaluate((element) => element.contains(document.activeElement))).toBe(
    true,
  );
});

test('before any graph is ready the page says what to do first', async ({ page }) => {
  await page.clock.setSystemTime('2026-03-03T10:00:00-05:00');
  await openKeptLog(page, '/talk', { written: twoWeeks.slice(0, 1) });
  await expect(page.getByText('Measure it on a few more days first.')).toBeVisible();
  await expectClean(page);
  await page.getByRole('link', { name: 'Measure it now' }).click();
  await expect(page).toHaveURL(/\/today/);
});
