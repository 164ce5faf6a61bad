import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { height, kept, openKeptLog, type Written } from './kept-log';
import { pdfPages } from './pdf-shapes';
import { listenForFaults, looks } from './walk';

const sample = JSON.parse(readFileSync('demo/sample-notebook.json', 'utf8')) as {
  entries: Record<string, string>[];
};
const specimenOf = (name: string): string =>
  sample.entries.find((each) => each['kind'] === 'specimen-added' && each['name'] === name)![
    'specimen'
  ]!;
const growthOf = (name: string): string => `/growth?of=${specimenOf(name)}`;

/** Opens the made-up notebook at this page of it. */
async function openSample(page: Page, path: string): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
  await page.goto(path);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** Ends in a 21 between 9 and 14: two digits that changed places, or just what was read. */
const withASlip: readonly Written[] = [2, 3, 4, 5, 7, 9, 21, 14].map((value, index) =>
  height(kept.beanA, `2026-03-0${index + 2}`, value),
);

const middleSlope = (page: Page) => page.getByText(/^Middle slope: /);

test('numbers to look at are left out of the trend, mended in the log, or settled @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await page.clock.setSystemTime('2026-03-11T09:00:00-04:00');
  await openKeptLog(page, `/growth?of=${kept.beanA}`, { written: withASlip });
  await page.getByRole('link', { name: '1 number to look at together' }).click();
  await expect(page.getByText('Did the two digits change places?')).toBeInViewport();
  await page.getByRole('radio', { name: 'Without Sunday 8 March' }).check();
  await expect(middleSlope(page)).toContainText('without');
  await expect(page.getByText('on 7 days, over 7 days')).toBeVisible();
  await expect(page.getByRole('img', { name: /Line graph/ })).toHaveAccessibleName(/8 readings/);
  await page.getByRole('radio', { name: 'With every reading' }).check();
  await expect(middleSlope(page)).toBeHidden();
  await expect(page.getByText('on 8 days, over 7 days')).toBeVisible();

  await page.getByRole('link', { name: 'Mend it in the log' }).click();
  await expect(page).toHaveURL(/\/log\?of=.*#day-2026-03-08$/);
  await expect(page.getByRole('row', { name: /Sun 8 Mar/ })).toBeInViewport();
  await page.goBack();
  await page.getByRole('button', { name: 'It was read so' }).click();
  await expect(page.getByText('No number waits to be looked at.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Looked at already (1)')).toBeVisible();
  expect(faults).toEqual([]);
});

test('the made-up notebook tells of guesses, of both sides, and of a gauge that caught rain on a dry day', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openSample(page, growthOf('Window bean'));
  await expect(page.getByText('Wren: 12 guesses were measured.')).toBeVisible();
  await expect(page.getByText(/Counting seems to begin at 0\./)).toBeVisible();
  await page.goto(growthOf('Yard gauge'));
  const asked = page.getByText('A sprinkler, or dew?').filter({ visible: true });
  await expect(asked).toHaveCount(1);
  await page.getByText('Looked at already (1)').click();
  await expect(asked).toHaveCount(2);
  expect(faults).toEqual([]);
});

/** All that is kept anywhere on the device, as one text. */
const keptAnywhere = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const rows: unknown[] = [{ ...localStorage }, { ...sessionStorage }, document.cookie];
    for (const { name } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>((done) => {
        const opening = indexedDB.open(name!);
        opening.onsuccess = () => done(opening.result);
      });
      for (const store of database.objectStoreNames) {
        rows.push(
          await new Promise((done) => {
            const reading = database.transaction(store).objectStore(store).getAll();
            reading.onsuccess = () => done(reading.result);
          }),
        );
      }
      database.close();
    }
    return JSON.stringify(rows);
  });

async function savedBackup(page: Page): Promise<string> {
  await page.goto('/records');
  const saving = page.waitForEvent('download');
  await page
    .getByRole('button', { name: /backup file/i })
    .first()
    .click();
  return readFileSync(await (await saving).path(), 'utf8');
}

const stick: readonly Written[] = [
  [
    '2026-04-24',
    {
      ...{ kind: 'investigation-begun', investigation: '00000000-0000-7000-8000-000000000803' },
      ...{ title: 'A shadow day', question: 'When is it shortest?', quantity: 'shadow' },
      ...{ unit: 'cm', mark: '1 cm', kinds: [], weekdays: [1, 2, 3, 4, 5], origin: 'ours' },
      ...{ where: 'From foot to tip', tool: 'A tape', when: 'Every hour' },
    },
  ],
  [
    '2026-04-24',
    {
      ...{ kind: 'specimen-added', specimen: '00000000-0000-7000-8000-000000000903' },
      ...{ investigation: '00000000-0000-7000-8000-000000000803', name: 'Yard stick' },
      startedOn: '2026-04-24',
      standHeight: { text: '100', unit: 'cm', mark: '1 cm', exact: 1_000_000_000 },
    },
  ],
  ...(
    [
      ['11:00', 79],
      ['12:00', 60],
      ['13:00', 54],
      ['14:00', 60],
    ] as const
  ).map(([time, value]): Written => {
    const [day, reading] = height('00000000-0000-7000-8000-000000000903', '2026-04-24', value);
    return [day, { ...reading, time }];
  }),
];

test('the latitude of a check is in no journal and in no backup, kept or not', async ({ page }) => {
  const faults = listenForFaults(page);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url() + (request.postData() ?? '')));
  await page.clock.setSystemTime('2026-04-24T18:00:00-04:00');
  const path = '/growth?of=00000000-0000-7000-8000-000000000903';
  await openKeptLog(page, path, { written: stick });
  await page.getByLabel('Latitude in degrees').fill('41.37');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // 24 April at 41 degrees north: the sun stands 62 degrees high; 100 cm / tan 62 is 53 cm.
  await expect(page.getByText(/54 cm at 13:00\. It fits\./)).toBeVisible();
  expect(await keptAnywhere(page)).toContain('A shadow day');
  expect(await keptAnywhere(page)).not.toContain('41.37');

  await page.getByRole('checkbox', { name: 'Keep it on this device' }).check();
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByText('Kept on this device.')).toBeVisible();
  const saved = await savedBackup(page);
  expect(saved).toContain('A shadow day');
  expect(saved).not.toContain('41.37');
  await page.goto(path);
  await expect(page.getByLabel('Latitude in degrees')).toHaveValue('41.37');
  await page.getByRole('button', { name: 'Forget it' }).click();
  await expect(page.getByText('Forgotten.')).toBeVisible();
  expect(await keptAnywhere(page)).not.toContain('41.37');
  expect(asked.filter((url) => url.includes('41.37'))).toEqual([]);
  expect(faults).toEqual([]);
});

for (const [scheme, where] of looks) {
  test(`axe finds nothing on Growth and Set-up and nothing scrolls sideways, ${scheme} ${where}`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    const paths = [...['Window bean', 'Yard gauge', 'Yard stick'].map(growthOf), '/set-up'];
    for (const path of paths) {
      await openSample(page, path);
      await page.locator('main details').evaluateAll((folds) => {
        for (const fold of folds as HTMLDetailsElement[]) fold.open = true;
      });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${path}: ${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([path, overflow]).toEqual([path, 0]);
    }
  });
}

test('the set-up cards and the growth of a log print without a blank page or a button', async ({
  page,
}) => {
  for (const path of ['/set-up', ...['Window bean', 'Yard gauge', 'Yard stick'].map(growthOf)]) {
    await openSample(page, path);
    const pages = pdfPages(await page.pdf({ format: 'Letter' }));
    expect([path, pages.map(({ hasLetters }) => hasLetters)]).toEqual([
      path,
      pages.map(() => true),
    ]);
    await page.emulateMedia({ media: 'print' });
    const controls = page.locator('main').locator('button, input, select, summary.action');
    expect([path, await controls.filter({ visible: true }).count()]).toEqual([path, 0]);
    await page.emulateMedia({ media: 'screen' });
  }
});
