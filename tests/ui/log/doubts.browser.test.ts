import { beforeEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import type { JournalEntry } from '#core/journal';
import { anId, read, took } from '../../core/journal/entries';
import { showLog } from './a-log';

beforeEach(async () => {
  await page.viewport(1280, 900);
});

type Shown = Awaited<ReturnType<typeof showLog>>;

/** 10, 11 and 12 cm on three days; yesterday, 12 March, is still blank. */
const growing: readonly JournalEntry[] = [10, 11, 12].map((height, index) =>
  took(20 + index, `2026-03-${String(9 + index).padStart(2, '0')}`, height),
);

async function writeYesterday({ screen }: Shown, number: string): Promise<void> {
  await screen.getByRole('button', { name: 'Write another day' }).click();
  await screen.getByRole('textbox', { name: 'My measure' }).fill(number);
  await screen.getByRole('button', { name: 'Write it down' }).click();
}

async function fixLast({ screen }: Shown, number: string): Promise<void> {
  await screen.getByRole('button', { name: 'Fix this 12 cm, Wed 11 Mar' }).click();
  await screen.getByRole('textbox', { name: 'My measure' }).fill(number);
  await screen.getByRole('button', { name: 'Write the new one' }).click();
  await screen.getByRole('button', { name: 'I looked again', exact: true }).click();
}

const question = ({ screen }: Shown, asked: RegExp) => screen.getByRole('group', { name: asked });

test('a day that went by is written first, and then asked about once', async () => {
  const shown = await showLog(growing);
  await writeYesterday(shown, '5');
  await expect.element(question(shown, /Which side of the ruler/)).toHaveFocus();
  expect(await shown.writtenSince()).toMatchObject([
    { kind: 'reading-taken', day: '2026-03-12', measured: read(5) },
  ]);
  await shown.screen.getByRole('button', { name: 'It is a different unit' }).click();
  await expect.element(shown.screen.getByRole('button', { name: /Fix this 5 in/ })).toHaveFocus();
  expect((await shown.writtenSince()).slice(1)).toMatchObject([
    { kind: 'doubt-answered', doubt: 'other-side', answer: 'other-unit' },
    { kind: 'reading-corrected', to: { day: '2026-03-12', measured: read(5, 'in', '1 in') } },
  ]);
  expect(shown.screen.getByRole('heading', { name: 'Look at this number' }).elements()).toEqual([]);
});

test('a number that was changed is asked about, and a second look goes back to the row', async () => {
  const shown = await showLog(growing);
  await fixLast(shown, '21');
  await expect.element(question(shown, /Point to the tens/)).toHaveFocus();
  await shown.screen.getByRole('button', { name: 'I want to look again' }).click();
  await expect
    .element(shown.screen.getByRole('heading', { name: /What do you read now/ }))
    .toHaveFocus();
  await shown.screen.getByRole('textbox', { name: 'My measure' }).fill('13');
  await shown.screen.getByRole('button', { name: 'Write what I read now' }).click();
  await expect.element(shown.screen.getByRole('button', { name: /Fix this 13 cm/ })).toHaveFocus();
  expect(await shown.writtenSince()).toMatchObject([
    { kind: 'reading-corrected', reading: anId(22), to: { measured: read(21) } },
    { kind: 'doubt-answered', doubt: 'digits-swapped', answer: 'look-again' },
    { kind: 'reading-corrected', to: { measured: read(13) }, why: 'looked again' },
  ]);
});

test('going back to the log leaves the question open, and writes no answer', async () => {
  const shown = await showLog(growing);
  await fixLast(shown, '21');
  await expect.element(question(shown, /Point to the tens/)).toBeVisible();
  await shown.screen.getByRole('button', { name: 'Back to the log' }).click();
  await expect.element(shown.screen.getByRole('button', { name: /Fix this 21 cm/ })).toHaveFocus();
  expect(await shown.writtenSince()).toMatchObject([{ kind: 'reading-corrected' }]);
});

test('the number can be undone while it is asked about, and the question goes with it', async () => {
  const shown = await showLog(growing);
  await writeYesterday(shown, '21');
  await expect.element(question(shown, /Point to the tens/)).toBeVisible();
  await shown.screen.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => question(shown, /Point to the tens/).elements()).toEqual([]);
  expect(shown.readings().at(-1)).toMatchObject({ day: '2026-03-12', takenBack: { by: {} } });
});

test('after the answer there is no offer to undo the number any more', async () => {
  const shown = await showLog(growing);
  await writeYesterday(shown, '21');
  await shown.screen.getByRole('button', { name: 'Yes, I read that' }).click();
  await expect.element(shown.screen.getByRole('button', { name: /Fix this 21 cm/ })).toHaveFocus();
  expect(shown.screen.container.querySelector('.said')!.textContent!.trim()).toBe('');
});

test('a number that only moves to another day is not asked about', async () => {
  const shown = await showLog([...growing, took(30, '2026-03-13', 21)]);
  await shown.screen.getByRole('button', { name: /Fix this 21 cm/ }).click();
  await shown.screen.getByText('It was not that day').click();
  await shown.screen.getByLabelText('Which day was it?').fill('2026-03-12');
  await shown.screen.getByRole('button', { name: 'Write the new day' }).click();
  await shown.screen.getByRole('button', { name: 'It was not that day', exact: true }).click();
  await expect.poll(() => shown.readings().at(-1)?.day).toBe('2026-03-12');
  expect(shown.screen.getByRole('heading', { name: 'Look at this number' }).elements()).toEqual([]);
});
