import { expect, test } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beginSeedling, writeReading, writtenDown } from './walk';

const reference = (name: string): string =>
  fileURLToPath(new URL(`../reference/${name}`, import.meta.url));

interface RainReference {
  readonly years: Readonly<
    Record<string, { year: { total_mm: string; total_in_exact_2dp: string } }>
  >;
}

test('three years of rain come in, and their totals agree with the reference', async ({ page }) => {
  const rain = JSON.parse(readFileSync(reference('rain.json'), 'utf8')) as RainReference;
  await page.goto('/records/bring-in');
  await page.locator('input[type=file]').setInputFiles(reference('rain_seattle.csv'));
  for (const [name, { year }] of Object.entries(rain.years)) {
    const millimetres = Number(year.total_mm).toFixed(1);
    const row = new RegExp(`^${name} \\d+ ${millimetres} ${year.total_in_exact_2dp}$`);
    await expect(page.getByRole('row', { name: row })).toBeVisible();
  }
  await page.getByRole('button', { name: 'Bring in 1,096 rows' }).click();
  await expect(page.getByRole('link', { name: 'Open the log' })).toBeVisible();
  await page.goto('/growth');
  await page.getByRole('radio', { name: /year/i }).check();
  for (const { year } of Object.values(rain.years)) {
    await expect(page.getByText(`${Number(year.total_mm)} mm`).first()).toBeVisible();
  }
  await page.getByRole('radio', { name: /inches/i }).check();
  for (const { year } of Object.values(rain.years)) {
    await expect(page.getByText(new RegExp(`${year.total_in_exact_2dp} in`)).first()).toBeVisible();
  }
});

test('a backup taken away and brought in again changes nothing', async ({ page }) => {
  await beginSeedling(page);
  await writeReading(page, '5');
  await expect(writtenDown(page)).toBeVisible();
  await page.goto('/records');
  const saved = page.waitForEvent('download');
  await page
    .getByRole('button', { name: /backup file/i })
    .first()
    .click();
  const path = await (await saved).path();
  await page.locator('input[type=file]').setInputFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: readFileSync(path),
  });
  await expect(page.getByText(/here already/).first()).toBeVisible();
});

test('the 1919 sunflowers give their fastest week and both slopes', async ({ page }) => {
  // H. S. Reed and R. H. Holland, PNAS 5 (1919) 135-144; slopes in growth.json.
  const rows = readFileSync(reference('growth.csv'), 'utf8')
    .split('\n')
    .filter((row) => row.startsWith('Sunflower'))
    .map((row) => row.split(',').slice(-2).join(','));
  await page.goto('/records/bring-in');
  await page.locator('input[type=file]').setInputFiles({
    name: 'sunflowers.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(['day,height (cm)', ...rows].join('\n')),
  });
  await page.getByLabel(/Which date was day 7/).fill('2019-05-08');
  await page.getByLabel('Title').fill('Sunflowers of 1919');
  await page.getByLabel(/What is it called/).fill('Mean of 58');
  await expect(page.getByText('Coming in (12)')).toBeVisible();
  await page.getByRole('button', { name: 'Bring in 12 rows' }).click();
  await expect(page.getByRole('link', { name: 'Open the log' })).toBeVisible();
  await page.goto('/growth');
  await expect(page.getByRole('heading', { name: 'Mean of 58' })).toBeVisible();
  await expect(page.getByText(/3\.69/).first()).toBeVisible();
  await expect(page.getByText(/3\.45/).first()).toBeVisible();
  await expect(
    page.getByText(/\(day 35 to day 42\): 38\.5 cm in 7 days, 5\.50 cm a day/).first(),
  ).toBeVisible();
});
