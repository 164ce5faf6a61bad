import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { listenForFaults, looks } from './walk';

const pages = [
  '/today',
  '/log',
  '/draw',
  '/draw/paper',
  '/growth',
  '/records',
  '/records/bring-in',
  '/set-up',
  '/begin',
];

for (const [scheme, where] of looks) {
  test(`axe finds nothing on any page of the made-up notebook, ${scheme} ${where}`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    const faults = listenForFaults(page);
    await page.goto('/');
    await page.getByRole('button', { name: 'Look around a made-up notebook' }).click();
    await expect(page.getByText('A made-up notebook.')).toBeVisible();
    for (const path of pages) {
      await page.goto(path);
      await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).analyze();
      const found = violations.map((each) => `${path}: ${each.id}: ${each.nodes[0]?.html}`);
      expect(found).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([path, tooWide]).toEqual([path, 0]);
    }
    expect(faults).toEqual([]);
  });
}

test('the made-up notebook is left without a trace in the family’s own', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Look around a made-up notebook' }).click();
  await expect(page.getByText('A made-up notebook.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.getByRole('button', { name: 'Leave the made-up notebook' }).click();
  await expect(page.getByRole('link', { name: 'Begin our own' })).toBeVisible();
  await page.goto('/today');
  await expect(page.getByText('There is no log yet.')).toBeVisible();
});

test('nothing is asked of any other server', async ({ page }) => {
  const elsewhere: string[] = [];
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.hostname !== 'localhost' && url.protocol.startsWith('http'))
      elsewhere.push(request.url());
  });
  await page.goto('/');
  await page.getByRole('button', { name: 'Look around a made-up notebook' }).click();
  for (const path of pages) {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
  }
  expect(elsewhere).toEqual([]);
});

test('every answer of the server carries the security headers', async ({ request }) => {
  for (const path of ['/', '/today', '/icon.svg', '/sample-notebook.json', '/nowhere']) {
    const headers = (await request.get(path)).headers();
    expect([path, headers['x-content-type-options'], headers['referrer-policy']]).toEqual([
      path,
      'nosniff',
      'no-referrer',
    ]);
    expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  }
});
