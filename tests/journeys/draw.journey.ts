import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { listenForFaults } from './walk';

/** A child draws on a tablet, in the made-up notebook, from its tables alone. */
test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

async function openDraw(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: /look around/i }).tap();
  await page.getByRole('link', { name: 'Draw', exact: true }).tap();
  await expect(
    page.getByRole('heading', { name: 'Which graph do you want to draw?' }),
  ).toBeVisible();
}

const choose = (page: Page, graph: string, table: string) =>
  page.getByRole('article', { name: graph }).getByRole('button', { name: table, exact: true });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const columns = (page: Page) => page.getByRole('slider');
const column = (page: Page, name: string) => page.getByRole('slider', { name, exact: true });

/** The table beside the board, as the child reads it. */
const tableRows = (page: Page): Promise<{ label: string; value: string }[]> =>
  page.locator('.desk .beside table tbody tr').evaluateAll((rows) =>
    rows.map((row) => ({
      label: row.children[0]!.textContent!.trim(),
      value: row.querySelector('td.number')!.textContent!.trim(),
    })),
  );

/** A tap where the number stands on the side: the place is found on the paper, as a child would. */
async function tapAtNumber(page: Page, name: string, value: number): Promise<void> {
  const slot = column(page, name);
  await slot.scrollIntoViewIfNeeded();
  const from = await numberAt(page, '0');
  const labels = (await page.locator('.board svg text.end').allTextContents()).map(Number);
  const top = Math.max(...labels.filter((label) => !Number.isNaN(label)));
  const to = await numberAt(page, String(top));
  const y = from + ((to - from) * value) / top;
  const box = (await slot.boundingBox())!;
  await slot.tap({ position: { x: box.width / 2, y: y - box.y } });
}

const numberAt = async (page: Page, text: string): Promise<number> => {
  const box = (await page
    .locator('.board svg text.end')
    .getByText(text, { exact: true })
    .first()
    .boundingBox())!;
  return box.y + box.height / 2;
};

async function writeTitle(page: Page, title: string): Promise<void> {
  await button(page, 'Title').tap();
  await page.getByRole('textbox', { name: 'My title' }).fill(title);
}

/** The drawing is looked at, found right, and only then stands beside the computer's. */
async function finish(page: Page): Promise<void> {
  const computers = page.getByRole('region', { name: 'The computer’s drawing' });
  await expect(computers).toBeHidden();
  await button(page, 'Look with me').tap();
  await expect(page.getByText('All the parts are there. Tell somebody about it!')).toBeVisible();
  await button(page, 'I am done').tap();
  await expect(computers).toBeVisible();
}

/** Each day is put where its card says: by its word, or by the two heights on it. */
async function sortAll(page: Page, put: (kind: Locator) => Promise<void>): Promise<void> {
  const card = page.locator('.card .visually-hidden');
  await expect(card).toBeAttached();
  let says = await card.textContent();
  for (let day = 1; says !== null; day += 1) {
    const [before, after] = [...says.matchAll(/: ([\d.]+) cm/g)].map(([, cm]) => Number(cm));
    const word = says.replace(/^.*: |\.$/g, '');
    const kind = after === undefined ? word : after > before! ? 'grew' : 'did not grow';
    const kinds = page.getByRole('group', { name: 'Kinds' });
    await put(kinds.getByRole('button', { name: new RegExp(`^${kind} `) }));
    const next = page.getByText(`${day + 1} of `).or(button(page, 'Draw my tally'));
    await expect(next.first()).toBeVisible();
    says = (await card.count()) > 0 ? await card.textContent() : null;
  }
  await expect(page.getByText('Your tally and the log say the same.')).toBeVisible();
}

const isNumber = (value: string): boolean => /^\d/.test(value);

test('a picture graph of the weather: sorted, tallied, keyed, drawn and looked at', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openDraw(page);
  await choose(page, 'Picture graph', 'The weather').tap();
  await sortAll(page, async (kind) => {
    await kind.tap();
    await page.waitForTimeout(260); // A child taps no faster: two quick taps are one.
  });
  await button(page, 'Draw my tally').tap();
  await expect(page.getByText('Draw from your tally.')).toBeVisible();
  await page
    .getByRole('group', { name: 'Your picture' })
    .getByRole('button', { name: 'star' })
    .tap();
  await page
    .getByRole('group', { name: 'How many one picture stands for' })
    .getByRole('button', { name: '1', exact: true })
    .tap();
  await button(page, 'Next').tap();
  for (const { label, value } of await tableRows(page)) {
    await column(page, label).tap({ position: { x: 5, y: 20 } });
    for (let more = 1; more < Number(value); more += 1) await button(page, 'One more').tap();
    await page.getByRole('checkbox', { name: `I drew ${label}` }).check();
  }
  await writeTitle(page, 'Our weather days');
  await finish(page);
  expect(faults).toEqual([]);
});

test('a bar graph of the heights, a bar for each measured day and none for the others', async ({
  page,
}) => {
  await openDraw(page);
  await choose(page, 'Bar graph', 'Each day’s measure').tap();
  await expect(columns(page).first()).toBeVisible();
  const rows = await tableRows(page);
  for (const { label, value } of rows) {
    if (isNumber(value)) await tapAtNumber(page, label, Number(value));
  }
  await expect(page.locator('.board .bar')).toHaveCount(
    rows.filter(({ value }) => isNumber(value)).length,
  );
  await writeTitle(page, 'How tall was our bean?');
  await finish(page);
});

test('a line plot of what it grew each day, one mark for each', async ({ page }) => {
  await openDraw(page);
  await choose(page, 'Line plot (X plot)', 'How much it grew each day').tap();
  await expect(columns(page).first()).toBeVisible();
  for (const { value } of await tableRows(page)) {
    if (!isNumber(value)) continue;
    await page.waitForTimeout(260); // A child taps no faster: two quick taps are one.
    await column(page, value).tap();
  }
  await writeTitle(page, 'How much our bean grew');
  await finish(page);
});

test('a line graph: a point over each day, joined, with dots over the days between', async ({
  page,
}) => {
  await openDraw(page);
  await choose(page, 'Line graph', 'Walking through the days').tap();
  await expect(columns(page).first()).toBeVisible();
  const rows = await tableRows(page);
  for (const { label, value } of rows) {
    if (isNumber(value)) await tapAtNumber(page, label, Number(value));
  }
  await button(page, 'Next').tap();
  let gap = false;
  let count = 0;
  for (const { value } of rows) {
    if (!isNumber(value)) {
      gap = true;
      continue;
    }
    if (count > 0) {
      await button(page, gap ? 'Dotted line, for a gap' : 'Whole line').tap();
      await button(page, 'Join the next two').tap();
    }
    count += 1;
    gap = false;
  }
  await writeTitle(page, 'Our bean day by day');
  await finish(page);
});

test('a bar graph is drawn by keyboard alone, left, and taken up again', async ({ page }) => {
  const reach = async (wanted: Locator) => {
    for (let tabs = 0; tabs < 80; tabs += 1) {
      if (await wanted.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`The keyboard never reached ${wanted.toString()}`);
  };
  await openDraw(page);
  await reach(choose(page, 'Bar graph', 'Did it grow that day?'));
  await page.keyboard.press('Enter');
  await sortAll(page, async (kind) => {
    await reach(kind);
    await page.keyboard.press('Enter');
  });
  await expect(button(page, 'Draw my tally')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(columns(page).first()).toBeVisible();
  const rows = await tableRows(page);
  await reach(columns(page).first());
  for (const { value } of rows) {
    for (let more = 0; more < Number(value); more += 1) await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
  }
  await reach(page.getByRole('link', { name: 'All my drawings' }).or(button(page, 'Undo')).last());
  await page.getByRole('link', { name: 'All my drawings' }).focus();
  await page.keyboard.press('Enter');
  await reach(page.getByRole('link', { name: /go on/ }));
  await page.keyboard.press('Enter');
  await expect(page.locator('.board .bar')).toHaveCount(
    rows.filter(({ value }) => value !== '0').length,
  );
  await reach(button(page, 'Title'));
  await page.keyboard.press('Enter');
  await reach(page.getByRole('textbox', { name: 'My title' }));
  await page.keyboard.type('Did our bean grow?');
  await reach(button(page, 'Look with me'));
  await page.keyboard.press('Enter');
  await expect(page.getByText('All the parts are there. Tell somebody about it!')).toBeVisible();
});

test('a drawing with three planted mistakes is led to right by hints alone', async ({ page }) => {
  await openDraw(page);
  await page.getByText('For the grown-up: what stands on the paper').tap();
  await page.getByRole('radio', { name: /The numbers are given/ }).check();
  await choose(page, 'Bar graph', 'Did it grow that day?').tap();
  await button(page, 'Use the log’s table').tap(); // Sorted on paper.
  await expect(button(page, 'Names')).toBeVisible();
  const rows = await tableRows(page);
  for (const { label } of rows) await button(page, label).tap();
  await button(page, 'Bars').tap();
  // Planted: the first bar is one too low, the label of the numbers is missing, and the title too.
  const [first, ...others] = rows;
  await tapAtNumber(page, first!.label, Number(first!.value) - 1);
  for (const { label, value } of others) await tapAtNumber(page, label, Number(value));
  const mended: string[] = [];
  for (let round = 0; round < 5; round += 1) {
    await button(page, 'Look with me').tap();
    const panel = page.getByRole('region', { name: 'Look with me' });
    await expect(panel).toBeVisible();
    if ((await panel.locator('.notice.ask').count()) === 0) break;
    await expect(panel.locator('.notice.ask')).toHaveCount(1);
    await button(page, 'I will try').tap();
    // Where the hint sends the child is where the thing can be mended.
    const step = (await page.locator('.steps [aria-pressed="true"]').textContent())!.trim();
    mended.push(step);
    if (step === 'Title')
      await page.getByRole('textbox', { name: 'My title' }).fill('Did it grow?');
    else if (step === 'Label') await page.getByRole('textbox', { name: 'My label' }).fill('days');
    else await tapAtNumber(page, first!.label, Number(first!.value));
  }
  expect(mended.toSorted()).toEqual(['Bars', 'Label', 'Title']);
  await expect(page.getByText('All the parts are there. Tell somebody about it!')).toBeVisible();
});

for (const [scheme, width, height] of [
  ['light', 360, 740],
  ['dark', 820, 1180],
] as const) {
  test(`the cards, a board, a hint and the end leave axe nothing to find: ${scheme}, ${width} wide`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.setViewportSize({ width, height });
    test.setTimeout(180_000); // Axe looks a dozen times.
    const findsNothing = async (): Promise<void> => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(tooWide).toBe(0);
    };
    await openDraw(page);
    await findsNothing();
    await choose(page, 'Picture graph', 'The weather').tap();
    await expect(page.getByRole('group', { name: 'Kinds' })).toBeVisible();
    await findsNothing();
    await button(page, 'Use the log’s table').tap();
    await expect(button(page, 'Pictures')).toBeVisible();
    await findsNothing();
    for (const [graph, table] of [
      ['Bar graph', 'Each day’s measure'],
      ['Line plot (X plot)', 'How much it grew each day'],
      ['Line graph', 'Walking through the days'],
    ] as const) {
      await page.getByRole('link', { name: 'All my drawings' }).tap();
      await choose(page, graph, table).tap();
      await expect(columns(page).first()).toBeVisible();
      await columns(page).first().press('ArrowUp');
      await findsNothing();
      await button(page, 'Look with me').tap();
      const panel = page.getByRole('region', { name: 'Look with me' });
      // What is said is seen, however small the screen.
      await expect(panel.locator('.notice.ask')).toBeInViewport({ ratio: 0.9 });
      await findsNothing();
    }
    await button(page, 'Title').tap();
    await button(page, 'I am done').tap();
    await expect(page.getByRole('region', { name: 'The computer’s drawing' })).toBeVisible();
    await findsNothing();
  });
}

test('whoever draws by keyboard is never left without a place when a button goes', async ({
  page,
}) => {
  await openDraw(page);
  await choose(page, 'Line plot (X plot)', 'How much it grew each day').press('Enter');
  await columns(page).first().press('ArrowUp');
  await button(page, 'Look with me').press('Enter');
  await button(page, 'I will try').press('Enter');
  await expect(button(page, 'Marks')).toBeFocused();
  await button(page, 'Next').press('Enter');
  await expect(button(page, 'Title')).toBeFocused();
  await button(page, 'I am done').press('Enter');
  const mine = page.getByRole('region', { name: 'My drawing' });
  await expect(mine).toBeVisible();
  await page.keyboard.press('Tab');
  const next = page.locator(':focus');
  expect(await next.evaluate((element) => element.closest('.desk') !== null)).toBe(true);
});
