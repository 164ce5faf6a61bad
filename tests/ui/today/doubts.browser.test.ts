import '#ui/look';
import { beforeEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { failed } from '#core/base';
import type { Entry, EntryId, JournalEntry } from '#core/journal';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore } from '#store';
import { bean, begun, child, read, took, written } from '../../core/journal/entries';
import TodayOf from './TodayOf.svelte';

/** Friday 13 March 2026, eight in the morning; the bean was sown on Monday 2 March. */
const clock: Clock = {
  nowMs: () => Date.UTC(2026, 2, 13, 8),
  timeZone: () => 'UTC',
  randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
};

beforeEach(async () => {
  await page.viewport(1280, 900);
  localStorage.clear();
});

/** 10, 11 and 12 cm on the three days before. */
const growing: readonly JournalEntry[] = [10, 11, 12].map((height, index) =>
  took(20 + index, `2026-03-${10 + index}`, height),
);

async function showToday(entries: readonly JournalEntry[]) {
  const store = openMemoryJournalStore();
  await store.append([...begun, ...entries]);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  notebook.chooseAuthor(child);
  const screen = await render(TodayOf, { notebook, specimen: bean });
  const before = notebook.entries.length;
  const since = (): readonly Entry[] => notebook.entries.slice(before) as Entry[];
  return { screen, notebook, store, since };
}

type Shown = Awaited<ReturnType<typeof showToday>>;

async function measure({ screen }: Shown, number: string): Promise<void> {
  await screen.getByRole('button', { name: 'Measure right away' }).click();
  await screen.getByRole('textbox', { name: 'My measure' }).fill(number);
  await screen.getByRole('button', { name: 'Write it down' }).click();
}

const taken = (since: readonly Entry[]): EntryId =>
  since.find(({ kind }) => kind === 'reading-taken')!.id;

const slips: readonly [
  slip: string,
  typed: string,
  asked: RegExp,
  answer: string,
  kinds: readonly object[],
][] = [
  [
    'a 0 for a missed day',
    '0',
    /Was there a plant\? Or did we miss this day\?/,
    'We missed this day',
    [{ kind: 'entry-taken-back' }, { kind: 'day-marked', state: 'missed' }],
  ],
  [
    'a 0 for a plant that is gone',
    '0',
    /Was there a plant\?/,
    'There was no plant to measure',
    [{ kind: 'entry-taken-back' }, { kind: 'day-marked', state: 'lost' }],
  ],
  [
    'the inch side read',
    '5',
    /Which side of the ruler/,
    'It is a different unit',
    [
      { kind: 'doubt-answered', doubt: 'other-side', answer: 'other-unit' },
      {
        kind: 'reading-corrected',
        to: { measured: read(5, 'in', '1 in') },
        why: 'the other side of the ruler',
      },
    ],
  ],
  [
    'millimetres for centimetres',
    '130',
    /Is it centimetres or millimetres\? Are you as tall as that\?/,
    'It is a different unit',
    [
      { kind: 'doubt-answered', doubt: 'ten-times-too-long', answer: 'other-unit' },
      { kind: 'reading-corrected', to: { measured: read(130, 'mm', '1 mm') } },
    ],
  ],
  [
    'digits swapped, kept',
    '21',
    /Point to the tens\. Point to the ones\./,
    'Yes, I read that',
    [{ kind: 'doubt-answered', doubt: 'digits-swapped', answer: 'read-so' }],
  ],
];

for (const [slip, typed, asked, answer, kinds] of slips) {
  test(`${slip}: it is written, asked about once, and the answer is kept`, async () => {
    const shown = await showToday(growing);
    await measure(shown, typed);
    if (typed === '130')
      await shown.screen.getByRole('button', { name: 'Yes, I read that' }).click();
    await expect.element(shown.screen.getByText('It is written down.')).toBeVisible();
    await expect.element(shown.screen.getByRole('group', { name: asked })).toBeVisible();
    expect(shown.since()).toMatchObject([{ kind: 'reading-taken', day: '2026-03-13' }]);
    await shown.screen.getByRole('button', { name: answer }).click();
    await expect.poll(() => shown.since().slice(1)).toMatchObject(kinds);
    await expect
      .poll(() => shown.screen.getByRole('group', { name: asked }).elements())
      .toEqual([]);
  });
}

test('looking again crosses the old number out, and writes the new one beside it', async () => {
  const shown = await showToday(growing);
  await measure(shown, '21');
  await shown.screen.getByRole('button', { name: 'I want to look again' }).click();
  await expect.poll(() => shown.screen.container.querySelector('del')?.textContent).toContain('21');
  await expect.element(shown.screen.getByRole('textbox', { name: 'My measure' })).toHaveValue('');
  await shown.screen.getByRole('textbox', { name: 'My measure' }).fill('13');
  await shown.screen.getByRole('button', { name: 'Write what I read now' }).click();
  await expect
    .poll(() => shown.since().slice(1))
    .toMatchObject([
      { kind: 'doubt-answered', answer: 'look-again' },
      { kind: 'reading-corrected', to: { measured: { text: '13' } }, why: 'looked again' },
    ]);
});

test('an answer given in another window ends the question', async () => {
  const shown = await showToday(growing);
  await measure(shown, '21');
  const question = shown.screen.getByRole('group', { name: /Point to the tens/ });
  await expect.element(question).toBeVisible();
  const reading = taken(shown.since());
  const day = { minute: 60 * 24 * 20 };
  const draft = { kind: 'doubt-answered', reading, doubt: 'digits-swapped', answer: 'read-so' };
  await shown.notebook.bringIn([written(500, draft as never, day)]);
  await expect.poll(() => question.elements()).toEqual([]);
});

test('no guess shows the number of yesterday, and no strip is there before it is in', async () => {
  const shown = await showToday(growing);
  await expect.element(shown.screen.getByText('How tall do you think?')).toBeVisible();
  await new Promise((done) => setTimeout(done, 500));
  expect(shown.screen.container.textContent).not.toMatch(/\b1[012]\b(?! March)/);
  expect(shown.screen.container.querySelector('section svg[role="img"], figure')).toBeNull();
  await expect.element(shown.screen.getByRole('textbox', { name: 'My guess' })).toHaveValue('');
  await shown.screen.getByRole('textbox', { name: 'My guess' }).fill('20');
  await shown.screen.getByRole('button', { name: 'That is my guess' }).click();
  await shown.screen.getByRole('textbox', { name: 'My measure' }).fill('13');
  await shown.screen.getByRole('button', { name: 'Write it down' }).click();
  await expect.element(shown.screen.getByText(/Which helper could you use/)).toBeVisible();
  expect(shown.since()).toMatchObject([
    { kind: 'estimate-made', author: child, measured: { text: '20' } },
    { kind: 'reading-taken' },
  ]);
});

test('a full device keeps the guess and the number on the pad', async () => {
  const shown = await showToday(growing);
  shown.store.append = () => Promise.resolve(failed({ kind: 'no-room', detail: 'full' }));
  await shown.screen.getByRole('textbox', { name: 'My guess' }).fill('14');
  await shown.screen.getByRole('button', { name: 'That is my guess' }).click();
  await expect.poll(() => shown.notebook.trouble?.kind).toBe('no-room');
  await expect.element(shown.screen.getByRole('textbox', { name: 'My guess' })).toHaveValue('14');
  await shown.screen.getByRole('button', { name: 'Measure right away' }).click();
  await shown.screen.getByRole('textbox', { name: 'My measure' }).fill('13');
  await shown.screen.getByRole('button', { name: 'Write it down' }).click();
  await expect.element(shown.screen.getByRole('textbox', { name: 'My measure' })).toHaveValue('13');
  expect(shown.since()).toEqual([]);
});
