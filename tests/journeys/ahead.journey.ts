import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { cm, height, kept, openKeptLog, tabTo, type Written } from './kept-log';
import { listenForFaults, looks, writeReading, writtenDown } from './walk';

/** Wednesday 11 March 2026, nine in the morning in New York. */
const today = '2026-03-11T09:00:00-04:00';
const tomorrow = '2026-03-12T09:00:00-04:00';
const dayAfter = '2026-03-13T09:00:00-04:00';

/** Five days read over seven: enough to look ahead from. */
const week: readonly Written[] = [
  height(kept.beanA, '2026-03-03', 3),
  height(kept.beanA, '2026-03-04', 4),
  height(kept.beanA, '2026-03-06', 6),
  height(kept.beanA, '2026-03-09', 9),
  height(kept.beanA, '2026-03-10', 10),
];
const aheadPath = `/measure/ahead?of=${kept.beanA}`;
const fairPath = `/measure/fair-test?of=${kept.beanA}`;

const at = (page: Page, moment: string): Promise<void> => page.clock.setSystemTime(moment);
const sealedCard = (page: Page) => page.getByRole('article', { name: /A sealed guess/ });

/** The day's reading, without the guess that is asked for before it. */
async function measureToday(page: Page, text: string): Promise<void> {
  await page.getByRole('button', { name: 'Measure right away' }).click();
  await writeReading(page, text);
  await expect(writtenDown(page)).toBeVisible();
}

async function sealByTaps(page: Page, number: string, because: string): Promise<void> {
  await page.getByRole('button', { name: /^Tomorrow/ }).click();
  const pad = page.getByRole('textbox', { name: 'My guess' });
  await expect(pad).toHaveValue('');
  for (const figure of number) {
    await page.getByRole('button', { name: figure, exact: true }).click();
  }
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByLabel('I think so because').fill(because);
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('button', { name: 'Seal it' }).click();
  await expect(sealedCard(page)).toBeVisible();
}

test.describe('a guess for a day to come', () => {
  test('is asked for when there are days enough, and says kindly what is missing before', async ({
    page,
  }) => {
    await at(page, today);
    await openKeptLog(page, aheadPath, { written: week.slice(0, 3) });
    await expect(page.getByText('Measure on 2 more days first.')).toBeVisible();
    await expect(page.getByRole('button', { name: /Tomorrow/ })).toBeHidden();
  });

  test('is sealed by taps, kept over a reload, and opened after the reading of its day @phone', async ({
    page,
  }) => {
    const faults = listenForFaults(page);
    await at(page, today);
    await openKeptLog(page, aheadPath, { written: week });
    await sealByTaps(page, '14', 'it was warm');
    await page.reload();
    await expect(sealedCard(page)).toContainText('It opens on Thursday 12 March.');
    await expect(sealedCard(page)).toContainText('Wren');

    await at(page, tomorrow);
    await page.goto(aheadPath);
    await expect(sealedCard(page)).toContainText('This is the day.');
    await page.getByRole('link', { name: 'Measure it now' }).click();
    await measureToday(page, '13');
    await page.goto(aheadPath);
    await expect(
      page.getByText('You guessed 14 cm. It was 13 cm. Very close.', { exact: false }),
    ).toBeVisible();
    await expect(page.getByText('What would you think now?')).toBeVisible();
    expect(faults).toEqual([]);
  });

  test('is made by the keyboard alone, taken back unseen, and brought back', async ({ page }) => {
    await at(page, today);
    await openKeptLog(page, aheadPath, { written: week });
    await tabTo(page, /^Tomorrow/, 'button');
    await page.keyboard.press('Enter');
    await tabTo(page, 'My guess', 'textbox');
    await page.keyboard.type('12');
    await page.keyboard.press('Enter');
    await tabTo(page, 'it was warm', 'button');
    await page.keyboard.press('Enter');
    await expect(page.getByLabel('I think so because')).toBeFocused();
    await page.keyboard.type(' all week');
    await tabTo(page, 'Go on', 'button');
    await page.keyboard.press('Enter');
    await tabTo(page, 'Seal it', 'button');
    await page.keyboard.press('Enter');
    await expect(sealedCard(page)).toBeVisible();

    await tabTo(page, /^Take it back/, 'button');
    await page.keyboard.press('Enter');
    await expect(sealedCard(page)).toBeHidden();
    await expect(page.getByText('You took it back.')).toBeVisible();
    await expect(page.getByText('all week')).toBeHidden();
    await tabTo(page, /Undo the last thing/, 'button');
    await page.keyboard.press('Enter');
    await expect(sealedCard(page)).toBeVisible();
  });

  test('opens after a day that nobody measured, and says so', async ({ page }) => {
    await at(page, today);
    await openKeptLog(page, aheadPath, { written: week });
    await sealByTaps(page, '14', 'it was warm');
    await at(page, dayAfter);
    await page.goto(aheadPath);
    await expect(page.getByText('You guessed 14 cm. We did not measure that day.')).toBeVisible();
  });
});

/** Every page there is, as the routes are written. */
const routes = readdirSync(fileURLToPath(new URL('../../src/routes', import.meta.url)), {
  recursive: true,
  encoding: 'utf8',
})
  .filter((file) => file.endsWith('+page.svelte'))
  .map(
    (file) =>
      `/${file
        .split('\\')
        .join('/')
        .replace(/\/?\+page\.svelte$/, '')}`,
  )
  .sort();

const number = '873';
const because = 'zebra pyjamas';

/** Where a page shows, says or holds the sealed number or its because: nowhere, it is hoped. */
async function tracesOn(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await page.waitForLoadState('networkidle');
  const held = await page.evaluate(() => [
    document.documentElement.outerHTML,
    ...[...document.querySelectorAll('input, textarea, select')].map(
      (field) => (field as HTMLInputElement).value,
    ),
    document.title,
    ...Object.values(localStorage),
    ...Object.values(sessionStorage),
  ]);
  const tells = new RegExp(`(?<![\\w.#-])${number}(?![\\w-])|${because}`, 'i');
  return held.flatMap((text) => tells.exec(text)?.[0] ?? []);
}

async function tracesAnywhere(page: Page): Promise<readonly (readonly [string, string])[]> {
  const found: (readonly [string, string])[] = [];
  for (const route of routes) {
    await page.goto(`${route}?of=${kept.beanA}`);
    await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible();
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media });
      for (const trace of await tracesOn(page)) found.push([route, trace]);
    }
    await page.emulateMedia({ media: 'screen' });
  }
  await page.goto('/records');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the table' }).click();
  const table = readFileSync(await (await saving).path(), 'utf8');
  expect(table).toContain('Bean A,number,10,cm');
  for (const told of [number, because]) if (table.includes(told)) found.push(['the table', told]);
  return found;
}

test('no page and no table tells a sealed guess before its day; with the clock set back it is sealed again', async ({
  page,
}) => {
  test.setTimeout(180_000);
  expect(routes.length).toBeGreaterThan(15);
  await at(page, today);
  await openKeptLog(page, aheadPath, { written: week });
  await sealByTaps(page, number, because);
  expect(await tracesAnywhere(page)).toEqual([]);

  // The morning of its day: still sealed, until the reading is down.
  await at(page, tomorrow);
  await page.goto(aheadPath);
  await expect(sealedCard(page)).toBeVisible();
  expect(await tracesOn(page)).toEqual([]);
  await page.goto(`/today?of=${kept.beanA}`);
  expect(await tracesOn(page)).toEqual([]);
  await measureToday(page, '12');
  await page.goto(aheadPath);
  await expect(page.getByText('You guessed 873 cm. It was 12 cm.')).toBeVisible();
  await expect(page.getByText(because)).toBeVisible();
  // The search itself finds what is there to be found.
  expect(await tracesOn(page)).not.toEqual([]);

  await at(page, today);
  await page.goto(aheadPath);
  await expect(sealedCard(page)).toBeVisible();
  expect(await tracesAnywhere(page)).toEqual([]);
});

test.describe('a fair test', () => {
  const plan: Written = [
    '2026-03-02',
    {
      ...{ kind: 'fair-test-planned', investigation: kept.beans, different: 'light' },
      ...{ same: ['seed', 'pot'], second: ['leaves', 'colour', 'stands'] },
    },
  ];
  const heights: readonly Written[] = [
    ...week,
    height(kept.beanB, '2026-03-04', 5),
    height(kept.beanB, '2026-03-09', 12),
    height(kept.beanB, '2026-03-10', 14),
  ];

  test('is planned by taps, locked by the first reading, and takes a later difference beside it @phone', async ({
    page,
  }) => {
    const faults = listenForFaults(page);
    await at(page, today);
    await openKeptLog(page, fairPath, { beans: 2 });
    await page.getByRole('button', { name: 'Write the plan' }).click();
    await expect(page.getByText('Tap the one thing first.')).toBeVisible();
    await page.getByText('light', { exact: true }).first().click();
    for (const name of ['How many leaves?', 'What colour?', 'Does it stand?']) {
      await page.getByRole('checkbox', { name }).uncheck();
    }
    await page.getByRole('button', { name: 'Write the plan' }).click();
    await expect(page.getByText('Tick one more thing to look at.')).toBeVisible();
    await page.getByRole('checkbox', { name: 'What colour?' }).check();
    await page.getByRole('checkbox', { name: 'seed' }).check();
    await page.getByLabel('What do you think will happen?').fill('The dark one stays small.');
    await page.getByRole('button', { name: 'Write the plan' }).click();
    await expect(page.getByRole('heading', { name: 'Our plan' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Change the plan' })).toBeVisible();

    await page.goto(`/today?of=${kept.beanA}`);
    await writeReading(page, '3');
    await expect(writtenDown(page)).toBeVisible();
    await page.goto(fairPath);
    await expect(page.getByText('The plan is set.')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Change the plan' })).toBeHidden();
    await page.getByRole('button', { name: 'Something else was different' }).click();
    await page.getByLabel('What was it?').fill('The cat sat in one pot.');
    await page.getByLabel('Which plant?').selectOption('Bean B');
    await page.getByRole('button', { name: 'Write it under the plan' }).click();
    await expect(page.getByText('The cat sat in one pot.')).toBeVisible();
    await page.reload();
    const card = page.getByRole('region', { name: 'Our plan' });
    await expect(card).toContainText('Wed 11 Mar, Bean B: The cat sat in one pot.');
    await expect(card).toContainText('The dark one stays small.');
    expect(faults).toEqual([]);
  });

  test('is planned by the keyboard alone', async ({ page }) => {
    await at(page, today);
    await openKeptLog(page, fairPath, { beans: 2 });
    await tabTo(page, 'light', 'radio');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('radio', { name: 'water' })).toBeChecked();
    await tabTo(page, 'seed', 'checkbox');
    await page.keyboard.press('Space');
    await tabTo(page, 'Write the plan', 'button');
    await page.keyboard.press('Enter');
    const card = page.getByRole('region', { name: 'Our plan' });
    await expect(card).toContainText('water');
    await expect(card).toContainText('Not ticked as the same: pot, soil, depth, light, place.');
  });

  test('holds its line graph back while a child draws these plants', async ({ page }) => {
    const drawing: Written = [
      '2026-03-10',
      {
        ...{ kind: 'drawing-begun', drawing: '00000000-0000-7000-8000-000000000501' },
        ...{ investigation: kept.beans, specimen: kept.beanA, graph: 'line-graph' },
        choice: {
          ...{ source: 'day-values', investigation: kept.beans, specimens: [kept.beanA] },
          ...{ from: '2026-03-03', to: '2026-03-10', told: null, mostKinds: null },
        },
        ...{ stage: 'grade-2', level: 'frame-given' },
      },
    ];
    await at(page, today);
    await openKeptLog(page, fairPath, { beans: 2, written: [plan, ...heights, drawing] });
    await expect(page.getByText('A child is drawing a graph of these plants.')).toBeVisible();
    await expect(page.getByText('The line graph, for the grown-up')).toBeHidden();
    await expect(page.getByRole('img', { name: /Line graph/ })).toHaveCount(0);
  });

  for (const [scheme, where] of looks) {
    test(`and a guess for later give axe nothing to find, ${scheme} ${where}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme: scheme });
      await at(page, today);
      const sealed = (forDay: string, day: string): Written => [
        day,
        {
          ...{ kind: 'prediction-sealed', specimen: kept.beanA, day, forDay },
          ...{ measured: cm(11), because: 'it was warm' },
        },
      ];
      await openKeptLog(page, aheadPath, {
        beans: 2,
        written: [
          plan,
          ...heights,
          sealed('2026-03-10', '2026-03-09'),
          sealed('2026-03-12', '2026-03-10'),
        ],
      });
      const looksFine = async (what: string): Promise<void> => {
        const { violations } = await new AxeBuilder({ page }).analyze();
        const found = violations.map((each) => `${what}: ${each.id}: ${each.nodes[0]?.html}`);
        expect(found).toEqual([]);
        const tooWide = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect([what, tooWide]).toEqual([what, 0]);
      };
      await expect(sealedCard(page)).toBeVisible();
      await looksFine('days');
      await page.getByRole('button', { name: /^In 2 days/ }).click();
      await looksFine('number');
      await page.getByRole('textbox', { name: 'My guess' }).fill('12');
      await page.getByRole('button', { name: 'Go on' }).click();
      await page.getByRole('button', { name: 'Go on' }).click();
      await expect(page.getByText('Say why first.')).toBeVisible();
      await looksFine('because');
      await page.getByRole('button', { name: 'it was warm' }).click();
      await page.getByRole('button', { name: 'Go on' }).click();
      await looksFine('seal');

      await page.goto(fairPath);
      await page.getByText('The line graph, for the grown-up').click();
      await page.getByText('Look at them now.').click();
      await page.getByRole('button', { name: 'Something else was different' }).click();
      await expect(page.getByRole('img', { name: /Line graph/ })).toBeVisible();
      await looksFine('compare');
    });
  }
});
