import { expect, type Page } from '@playwright/test';

/** Steps that many journeys share, told as a family would tell them. */
export async function beginSeedling(page: Page, nickname = 'Wren'): Promise<void> {
  await page.goto('/');
  await page.getByRole('link', { name: 'Begin our own' }).click();
  await page.getByRole('button', { name: /A seedling grows/ }).click();
  await page.getByLabel('Who measures?').fill(nickname);
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Measure your plant.' })).toBeVisible();
}

/** Where the page asks for a guess first, this family measures right away. */
export async function writeReading(page: Page, text: string): Promise<void> {
  const pad = page.getByRole('textbox', { name: 'My measure' });
  const rightAway = page.getByRole('button', { name: 'Measure right away' });
  await pad.or(rightAway).first().waitFor();
  if (await rightAway.isVisible()) await rightAway.click();
  await pad.fill(text);
  await page.getByRole('button', { name: 'Write it down' }).click();
}

export const writtenDown = (page: Page) => page.getByText('It is written down.');

/** What the page said that it should not have: every journey ends with none of it. */
export function listenForFaults(page: Page): string[] {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  return faults;
}

/**
 * How a page is looked at: by day on a large screen, by night on a phone. All four would find little
 * more in twice the time.
 */
export const looks = [
  ['light', '@desktop'],
  ['dark', '@only-phone'],
] as const;
