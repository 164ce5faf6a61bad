import '#ui/look';
import { beforeEach, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { failed } from '#core/base';
import { civilDay } from '#core/calendar';
import type { Entry, EntryId, JournalEntry, SpecimenId } from '#core/journal';
import type { MarkId, Unit } from '#core/measure';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore } from '#store';
import { anId, bean, begun, child, heights, read, written } from '../../core/journal/entries';
import { changedTo } from '../log/a-log';
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

/** Heights on the days up to yesterday, one a day. */
function heightsOf(
  values: readonly number[],
  unit: Unit = 'cm',
  mark: MarkId = '1 cm',
): readonly JournalEntry[] {
  return values.map((value, index) =>
    written(20 + index, {
      ...{ kind: 'reading-taken', specimen: bean },
      day: civilDay(`2026-03-${String(13 - values.length + index).padStart(2, '0')}`),
      measured: read(value, unit, mark),
    }),
  );
}

const growing = heightsOf([10, 11, 12]);

const beanB = anId<SpecimenId>(902);
/** Bean B stands twice as high. */
const secondBean: readonly JournalEntry[] = [
  written(6, {
    ...{ kind: 'specimen-added', specimen: beanB, investigation: heights, name: 'Bean B' },
    startedOn: civilDay('2026-03-02'),
  }),
  ...[25, 26, 27].map((height, index) =>
    written(30 + index, {
      ...{ kind: 'reading-taken', specimen: beanB, day: civilDay(`2026-03-${10 + index}`) },
      measured: read(height),
    }),
  ),
];

/** The bean in a pot of this height, in place of the bean that has none. */
function potOf(heightCm: number): JournalEntry {
  return written(4, {
    ...{ kind: 'specimen-added', specimen: bean, investigation: heights, name: 'Bean A' },
    ...{ startedOn: civilDay('2026-03-02'), standHeight: read(heightCm) },
  });
}

async function showToday(entries: readonly JournalEntry[]) {
  const store = openMemoryJournalStore();
  const replaced = new Set(entries.map(({ id }) => id));
  await store.append([...begun.filter(({ id }) => !replaced.has(id)), ...entries]);
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
  const guess = screen.getByRole('button', { name: 'Measure right away' });
  if (guess.elements().length > 0) await guess.click();
  await screen.getByRole('textbox', { name: 'My measure' }).fill(number);
  await screen.getByRole('button', { name: 'Write it down' }).click();
}

const taken = (since: readonly Entry[]): EntryId =>
  since.find(({ kind }) => kind === 'reading-taken')!.id;

interface Slip {
  readonly slip: string;
  /** What was in the journal before. */
  readonly log?: readonly JournalEntry[];
  readonly typed: string;
  readonly asked: RegExp;
  readonly answer: string;
  readonly kept: readonly object[];
}

const said = (doubt: string, answer = 'read-so') => ({ kind: 'doubt-answered', doubt, answer });

/** Every slip of the pen and the ruler that is noticed, and one answer to each. */
const slips: readonly Slip[] = [
  {
    slip: 'a 0 for a missed day',
    typed: '0',
    asked: /Was there a plant\? Or did we miss this day\?/,
    answer: 'We missed this day',
    kept: [{ kind: 'entry-taken-back' }, { kind: 'day-marked', state: 'missed' }],
  },
  {
    slip: 'a 0 for a plant that is gone',
    typed: '0',
    asked: /Was there a plant\?/,
    answer: 'There was no plant to measure',
    kept: [{ kind: 'entry-taken-back' }, { kind: 'day-marked', state: 'lost' }],
  },
  {
    slip: 'the inch side read',
    typed: '5',
    asked: /Which side of the ruler did you use\? Look at the letters\./,
    answer: 'It is a different unit',
    kept: [
      said('other-side', 'other-unit'),
      {
        kind: 'reading-corrected',
        to: { measured: read(5, 'in', '1 in') },
        why: 'the other side of the ruler',
      },
    ],
  },
  {
    slip: 'the centimetre side read in a log of inches',
    log: [changedTo({ unit: 'in', mark: '1 in' }), ...heightsOf([4, 4, 5], 'in', '1 in')],
    typed: '12',
    asked: /Which side of the ruler did you use\?/,
    answer: 'It is a different unit',
    kept: [
      said('other-side', 'other-unit'),
      { kind: 'reading-corrected', to: { measured: read(12, 'cm', '1 cm') } },
    ],
  },
  {
    slip: 'millimetres for centimetres',
    typed: '130',
    asked: /Is it centimetres or millimetres\? Are you as tall as that\?/,
    answer: 'It is a different unit',
    kept: [
      said('ten-times-too-long', 'other-unit'),
      {
        kind: 'reading-corrected',
        to: { measured: read(130, 'mm', '1 mm') },
        why: 'a different unit',
      },
    ],
  },
  {
    slip: 'the point slipped the other way',
    log: heightsOf([18, 19, 20]),
    typed: '2',
    asked: /Read me the number again\. Go slow\./,
    answer: 'Yes, I read that',
    kept: [said('ten-times-too-short')],
  },
  {
    slip: 'digits swapped',
    typed: '21',
    asked: /Point to the tens\. Point to the ones\./,
    answer: 'Yes, I read that',
    kept: [said('digits-swapped')],
  },
  {
    slip: 'the pot counted in',
    log: [potOf(9), ...growing],
    typed: '22',
    asked: /Where did your ruler start\? Point to it\./,
    answer: 'I want to look again',
    kept: [said('stand-counted', 'look-again')],
  },
  {
    slip: 'the ruler upside down',
    typed: '17',
    asked: /Which end of the ruler is on the soil\?/,
    answer: 'I want to look again',
    kept: [said('ruler-upside-down', 'look-again')],
  },
  {
    slip: 'the height of another plant',
    log: [...secondBean, ...growing],
    typed: '28',
    asked: /Whose height is this\?/,
    answer: 'It is Bean B’s',
    kept: [
      { kind: 'entry-taken-back' },
      { kind: 'reading-taken', specimen: beanB, day: '2026-03-13', measured: read(28) },
    ],
  },
  {
    slip: 'the same number for a fourth day, just after it grew fast',
    log: heightsOf([8, 10, 12, 12, 12]),
    typed: '12',
    asked: /Still 12 cm\? Let us look at it, you and I\./,
    answer: 'Yes, I read that',
    kept: [said('same-number-again')],
  },
  {
    slip: 'a plant that is shorter',
    typed: '9',
    asked: /Did the stem bend\? Did the soil rise\? Did the tip break\?/,
    answer: 'Yes, I read that',
    kept: [said('shrank')],
  },
  {
    slip: 'a big jump that nothing else explains',
    typed: '20',
    asked: /Wow, a big change! Shall we measure once more\?/,
    answer: 'Yes, I read that',
    kept: [said('big-jump')],
  },
  {
    slip: 'more than a metre in the first days',
    log: [],
    typed: '101',
    asked: /That is very long! Shall we measure once more\?/,
    answer: 'Yes, I read that',
    kept: [said('past-the-cap')],
  },
  {
    slip: 'rain to the same mark as yesterday',
    log: [
      changedTo({ quantity: 'rain', unit: 'mm', mark: '1 mm' }),
      ...heightsOf([12], 'mm', '1 mm'),
    ],
    typed: '12',
    asked: /Did you pour it out\?/,
    answer: 'Yes, I read that',
    kept: [said('rain-as-before')],
  },
  {
    slip: 'more than 4 inches of rain',
    log: [changedTo({ quantity: 'rain', unit: 'in', mark: '1/8 in' })],
    typed: '7',
    asked: /That is a lot! Is it inches or millimetres\?/,
    answer: 'It is a different unit',
    kept: [
      said('rain-unit', 'other-unit'),
      { kind: 'reading-corrected', to: { measured: read(7, 'mm', '1 mm') } },
    ],
  },
  {
    slip: 'a shadow of 0',
    log: [changedTo({ quantity: 'shadow', unit: 'cm', mark: '1 cm' })],
    typed: '0',
    asked: /Was there no sun\?/,
    answer: 'There was no sun',
    kept: [{ kind: 'entry-taken-back' }, { kind: 'day-marked', state: 'no-sun' }],
  },
];

for (const { slip, log = growing, typed, asked, answer, kept } of slips) {
  test(`${slip}: it is written, asked about once, and the answer is kept`, async () => {
    const shown = await showToday(log);
    await measure(shown, typed);
    await expect.element(shown.screen.getByText('It is written down.')).toBeVisible();
    await expect.element(shown.screen.getByRole('group', { name: asked })).toHaveFocus();
    expect(shown.since()).toMatchObject([{ kind: 'reading-taken', day: '2026-03-13' }]);
    await shown.screen.getByRole('button', { name: answer }).click();
    await expect.poll(() => shown.since().slice(1)).toMatchObject(kept);
    await expect
      .poll(() => shown.screen.getByRole('group', { name: asked }).elements())
      .toEqual([]);
  });
}

test('where another explanation fits as well, it is asked next, and the answer is about it', async () => {
  const shown = await showToday([potOf(8), ...growing]);
  await measure(shown, '21');
  await expect
    .element(shown.screen.getByRole('group', { name: /Point to the tens/ }))
    .toBeVisible();
  await shown.screen.getByRole('button', { name: 'Something else' }).click();
  await expect
    .element(shown.screen.getByRole('group', { name: /Where did your ruler start/ }))
    .toHaveFocus();
  expect(shown.screen.getByRole('button', { name: 'Something else' }).elements()).toEqual([]);
  await shown.screen.getByRole('button', { name: 'Yes, I read that' }).click();
  await expect.poll(() => shown.since().slice(1)).toMatchObject([said('stand-counted')]);
});

test('going to another plant leaves the question open, and it is not asked again', async () => {
  const shown = await showToday([...secondBean, ...growing]);
  await measure(shown, '21');
  const question = shown.screen.getByRole('group', { name: /Point to the tens/ });
  await expect.element(question).toBeVisible();
  await shown.screen.rerender({ notebook: shown.notebook, specimen: beanB });
  await expect.element(shown.screen.getByRole('heading', { name: 'Bean B' })).toBeVisible();
  expect(question.elements()).toEqual([]);
  await shown.screen.rerender({ notebook: shown.notebook, specimen: bean });
  await expect.element(shown.screen.getByText('It is written down.')).toBeVisible();
  await expect.element(shown.screen.getByRole('link', { name: 'Look at the log' })).toBeVisible();
  expect(question.elements()).toEqual([]);
  expect(shown.since()).toMatchObject([{ kind: 'reading-taken' }]);
});

test('water in the gauge after two dry days is asked about kindly', async () => {
  const yesterday: JournalEntry = written(20, {
    ...{ kind: 'reading-taken', specimen: bean, day: civilDay('2026-03-12') },
    ...{ measured: read(0, 'mm', '1 mm'), weather: 'sun' },
  });
  const shown = await showToday([
    changedTo({ quantity: 'rain', unit: 'mm', mark: '1 mm' }),
    yesterday,
  ]);
  await shown.screen.getByText('Write more about it').click();
  await shown.screen.getByRole('button', { name: 'sun', exact: true }).click();
  await measure(shown, '4');
  await expect
    .element(shown.screen.getByRole('group', { name: /Was it dew\? Did a hose drip\?/ }))
    .toBeVisible();
});

test('leaves that a fair test waits for have their place open', async () => {
  const plan = (number: number, second: readonly 'leaves'[]): JournalEntry =>
    written(number, {
      ...{ kind: 'fair-test-planned', investigation: heights, different: 'light' },
      ...{ same: ['seed'], second: [...second] },
    });
  const shown = await showToday([plan(10, ['leaves']), ...growing]);
  await shown.screen.getByRole('button', { name: 'Measure right away' }).click();
  await expect.element(shown.screen.getByLabelText('How many leaves?')).toBeVisible();
});

test('leaves that nothing waits for stay folded away', async () => {
  const shown = await showToday(growing);
  await shown.screen.getByRole('button', { name: 'Measure right away' }).click();
  await expect.element(shown.screen.getByText('Write more about it')).toBeVisible();
  await expect.element(shown.screen.getByLabelText('How many leaves?')).not.toBeVisible();
});

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
