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
  await page.getByLabel(/file/i).first().setInputFiles(reference('rain_seattle.csv'));
  for (const { year } of Object.values(rain.years)) {
    const millimetres = Number(year.total_mm).toFixed(1);
    await expect(page.getByText(new RegExp(`${millimetres}\\s*mm`)).first()).toBeVisible();
    await expect(
      page.getByText(new RegExp(`${year.total_in_exact_2dp}\\s*in`)).first(),
    ).toBeVisible();
  }
  await expect(page.getByText(/1[ ,\u202f]?096/).first()).toBeVisible();
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
  await page
    .getByLabel(/backup/i)
    .first()
    .setInputFiles({
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: readFileSync(path),
    });
  await expect(page.getByText(/here already/).first()).toBeVisible();
});
