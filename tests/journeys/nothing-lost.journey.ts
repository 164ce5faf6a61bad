import { expect, test } from '@playwright/test';
import { beginSeedling, writeReading, writtenDown } from './walk';

test('another tab sees a reading within a second', async ({ page, context }) => {
  await beginSeedling(page);
  const other = await context.newPage();
  await other.goto('/today');
  await expect(other.getByRole('heading', { name: 'Measure your plant.' })).toBeVisible();
  await writeReading(page, '5');
  await expect(writtenDown(page)).toBeVisible();
  await expect(writtenDown(other)).toBeVisible({ timeout: 1000 });
});

test('a tab killed in the middle of saving loses nothing that was said to be saved', async ({
  context,
}) => {
  const page = await context.newPage();
  await beginSeedling(page);
  await writeReading(page, '5');
  await expect(writtenDown(page)).toBeVisible();
  await page.getByRole('button', { name: 'Measure once more' }).click();
  await page.getByRole('textbox', { name: 'My measure' }).fill('6');
  await page.getByRole('button', { name: 'Write it down' }).click({ noWaitAfter: true });
  const asked = page.getByRole('button', { name: 'Yes, keep both' });
  await asked.click({ noWaitAfter: true });
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto('/today');
  await expect(writtenDown(again)).toBeVisible();
  await expect(again.getByText('5 in', { exact: true }).first()).toBeVisible();
});

test('with no storage it works in memory, says so, and offers a backup', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
  });
  await page.goto('/');
  await expect(page.getByText(/does not let the notebook keep anything/)).toBeVisible();
  await expect(page.getByRole('link', { name: 'Save a backup file under Records' })).toBeVisible();
  await page.getByRole('link', { name: 'Begin our own' }).click();
  await page.getByRole('button', { name: /A seedling grows/ }).click();
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await writeReading(page, '2');
  await expect(writtenDown(page)).toBeVisible();
});

test('a full device says so, keeps what was typed, and saves when there is room', async ({
  page,
}) => {
  // The browser's own full disk is tried in tests/store; here the page meets the same refusal.
  await page.addInitScript(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...entry: Parameters<typeof add>) {
      if ('isFull' in globalThis) throw new DOMException('full', 'QuotaExceededError');
      return add.apply(this, entry);
    };
  });
  await beginSeedling(page);
  await page.evaluate(() => Object.assign(globalThis, { isFull: true }));
  await writeReading(page, '7');
  await expect(page.getByText(/no room left/)).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'My measure' })).toHaveValue('7');
  await page.evaluate(() => delete (globalThis as { isFull?: boolean }).isFull);
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(writtenDown(page)).toBeVisible();
  await expect(page.getByText(/no room left/)).toBeHidden();
});

test('a clock set back is said, and the order of the log stays', async ({ page }) => {
  await beginSeedling(page);
  await writeReading(page, '5');
  await expect(writtenDown(page)).toBeVisible();
  await page.clock.setSystemTime(new Date('2020-01-03T08:00:00'));
  await page.reload();
  await expect(page.getByText(/clock is earlier than the last thing written/)).toBeVisible();
  await writeReading(page, '6');
  await expect(page.getByText(/before you began/)).toBeVisible();
});

test('the notebook opens with no network once it was opened', async ({ page, context }) => {
  await beginSeedling(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => null));
  await page.reload();
  await context.setOffline(true);
  await page.goto('/today');
  await expect(page.getByRole('heading', { name: 'Measure your plant.' })).toBeVisible();
  await writeReading(page, '4');
  await expect(writtenDown(page)).toBeVisible();
  await page.goto('/growth');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});
