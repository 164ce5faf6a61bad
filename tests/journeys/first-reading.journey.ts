import { expect, test } from '@playwright/test';
import { beginSeedling, listenForFaults, writeReading, writtenDown } from './walk';

test('a parent begins and a child writes the first reading, by taps @phone', async ({ page }) => {
  const faults = listenForFaults(page);
  await beginSeedling(page);
  await page.getByRole('button', { name: '4', exact: true }).click();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(writtenDown(page)).toBeVisible();
  await page.reload();
  await expect(writtenDown(page)).toBeVisible();
  await expect(page.getByText('4 in', { exact: true }).first()).toBeVisible();
  expect(faults).toEqual([]);
});

test('the whole path goes by keyboard alone', async ({ page }) => {
  await page.goto('/');
  const press = async (name: string | RegExp, role: 'link' | 'button' | 'textbox') => {
    const wanted = page.getByRole(role, { name }).first();
    for (let tabs = 0; tabs < 60; tabs += 1) {
      if (
        await wanted.evaluate((element) => element === document.activeElement).catch(() => false)
      ) {
        return;
      }
      await page.keyboard.press('Tab');
    }
    throw new Error(`The keyboard never reached ${String(name)}`);
  };
  await press('Begin our own', 'link');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'What shall we measure?' })).toBeVisible();
  await press(/A seedling grows/, 'button');
  await page.keyboard.press('Enter');
  await press('Begin', 'button');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Measure your plant.' })).toBeVisible();
  await press('My measure', 'textbox');
  await page.keyboard.type('3');
  await page.keyboard.press('Enter');
  await expect(writtenDown(page)).toBeVisible();
  await press('Undo the last thing', 'button');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Undone.')).toBeVisible();
});

test('a stamp says that nothing is up yet, and it is not 0', async ({ page }) => {
  await beginSeedling(page);
  await page.getByRole('button', { name: 'Not up yet' }).click();
  await expect(page.getByText('Not up yet')).toBeVisible();
  await page.getByRole('link', { name: 'Log', exact: true }).click();
  await expect(page.getByRole('cell', { name: /not up yet/i }).first()).toBeVisible();
});

test('13 inches on a 12 inch ruler is asked about once and then kept', async ({ page }) => {
  await beginSeedling(page);
  await writeReading(page, '13 in');
  await expect(page.getByText('A ruler ends at 12 in. You wrote 13 in.')).toBeVisible();
  await page.getByRole('button', { name: 'I want to look again' }).click();
  await expect(page.getByRole('textbox', { name: 'My measure' })).toHaveValue('13 in');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await page.getByRole('button', { name: 'Yes, I read that' }).click();
  await expect(writtenDown(page)).toBeVisible();
});

const strange: readonly [what: string, text: string, said: RegExp][] = [
  ['nothing', '', /Write a number first/],
  ['a word', 'twelve', /is not a number/],
  ['a minus', '-3', /Nothing is shorter than 0/],
  ['a huge number', '99999999999', /longer than a whole town/],
  ['ten thousand digits', '1'.repeat(10_000), /very long number/],
  ['a smiling plant', '🌱', /is not a number/],
  ['markup', '<b>4</b>', /is not a number/],
  ['half a fraction', '4 1/', /fraction is not done/],
  ['a third of an inch', '4 1/3', /between the marks/],
];

for (const [what, text, said] of strange) {
  test(`a reading that is ${what} gets a kind word and stays on the pad`, async ({ page }) => {
    await beginSeedling(page);
    await writeReading(page, text);
    await expect(page.getByText(said).first()).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'My measure' })).toHaveValue(text);
    await expect(writtenDown(page)).toBeHidden();
  });
}

test('a name with markup or right-to-left script is shown as it was typed', async ({ page }) => {
  await beginSeedling(page, '<img src=x onerror=alert(1)> نبتة');
  await page.getByRole('link', { name: 'Set-up' }).click();
  await expect(page.getByText('<img src=x onerror=alert(1)> نبتة').first()).toBeVisible();
});
