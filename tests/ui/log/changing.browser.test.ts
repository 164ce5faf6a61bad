import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { failed } from '#core/base';
import { civilDay } from '#core/calendar';
import { openMemoryJournalStore } from '#store';
import { marked, noted } from '../../core/series/bean-log';
import { anId, bean, heights, read, took } from '../../core/journal/entries';
import { changedTo, note, showLog, today, yesterday } from './a-log';

beforeEach(async () => {
  await page.viewport(1280, 900);
});

type Shown = Awaited<ReturnType<typeof showLog>>;

const write = async ({ screen }: Shown, number: string, button = 'Write it down') => {
  await screen.getByRole('textbox', { name: 'My measure' }).fill(number);
  await screen.getByRole('button', { name: button }).click();
};
const status = ({ screen }: Shown) => screen.container.querySelector('.said')!;

describe('fixing a reading', () => {
  const wednesday = civilDay('2026-03-04');

  test('writes the new one and why, and leaves the old one with a line through it', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Fix this 8 cm, Wed 4 Mar' }).click();
    await expect.element(screen.getByRole('heading', { name: 'Fix this' })).toHaveFocus();
    await expect.element(screen.getByText('One line through it. The old one stays.')).toBeVisible();
    await write(shown, '5', 'Write the new one');
    await screen.getByRole('button', { name: 'I read the other end', exact: true }).click();
    await expect.poll(() => status(shown).textContent).toContain('5 cm, Wed 4 Mar');
    expect(await shown.writtenSince()).toMatchObject([
      {
        kind: 'reading-corrected',
        reading: anId(10),
        to: { day: wednesday, measured: read(5) },
        why: 'I read the other end',
      },
    ]);
    const row = screen.getByRole('row', { name: /Wed 4 Mar/ });
    expect(row.element().querySelector('del')).toHaveTextContent('8 cm');
    await expect.element(row.getByRole('button', { name: 'Fix this 5 cm' })).toHaveFocus();
  });

  test('can be done by keyboard alone, and the why left out', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    const { screen } = shown;
    (screen.getByRole('button', { name: /Fix this/ }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('heading', { name: 'Fix this' })).toHaveFocus();
    const pad = screen.getByRole('textbox', { name: 'My measure' });
    for (let step = 0; step < 6 && document.activeElement !== pad.element(); step += 1) {
      await userEvent.keyboard('{Tab}');
    }
    await expect.element(pad).toHaveFocus();
    await userEvent.keyboard('6{Enter}');
    await expect.element(screen.getByRole('heading', { name: 'Why did it change?' })).toHaveFocus();
    const own = screen.getByLabelText('Or say it your way');
    for (let step = 0; step < 9 && document.activeElement !== own.element(); step += 1) {
      await userEvent.keyboard('{Tab}');
    }
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('button', { name: /Fix this 6 cm/ })).toHaveFocus();
    const [entry] = await shown.writtenSince();
    expect(entry).toMatchObject({ kind: 'reading-corrected', to: { measured: read(6) } });
    expect(entry).not.toHaveProperty('why');
  });

  test('moves a reading to the day it was taken, and asks first where a number stands', async () => {
    const shown = await showLog([took(10, wednesday, 8), took(11, '2026-03-05', 9)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: /Fix this 8 cm/ }).click();
    await screen.getByText('It was not that day').click();
    await screen.getByLabelText('Which day was it?').fill('2026-03-05');
    await screen.getByRole('button', { name: 'Write the new day' }).click();
    await expect
      .element(screen.getByText('You wrote a number for this day. Keep both?'))
      .toBeVisible();
    await screen.getByRole('button', { name: 'Yes, keep both' }).click();
    await screen.getByRole('button', { name: 'It was not that day', exact: true }).click();
    await expect
      .poll(() => shown.readings().map((each) => each.day))
      .toEqual(['2026-03-05', '2026-03-05']);
    const left = screen.getByText(/moved to Thu 5 Mar/);
    await expect.element(left).toBeVisible();
    expect(left.element().closest('td')!.querySelector('del')).toHaveTextContent('8 cm');
  });

  test('writes nothing where nothing changes, and says so', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    await shown.screen.getByRole('button', { name: /Fix this/ }).click();
    await write(shown, '8', 'Write the new one');
    await expect.element(shown.screen.getByText('That is what the log says now.')).toBeVisible();
    expect(await shown.writtenSince()).toEqual([]);
  });

  test('can be laid aside, and the keyboard comes back to the row', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    await shown.screen.getByRole('button', { name: /Fix this/ }).click();
    await shown.screen.getByRole('button', { name: 'Back to the log' }).click();
    await expect.element(shown.screen.getByRole('button', { name: /Fix this/ })).toHaveFocus();
    expect(await shown.writtenSince()).toEqual([]);
  });

  test('crosses out a line that was not ours, in the family’s own words, and puts it back', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: /Fix this/ }).click();
    await screen.getByRole('button', { name: 'This was not ours' }).click();
    await screen.getByLabelText('Or say it your way').fill('  the neighbour’s pot ');
    await screen.getByRole('button', { name: 'Write it down' }).last().click();
    await expect.element(screen.getByText(/the neighbour’s pot/)).toBeVisible();
    expect(await shown.writtenSince()).toMatchObject([
      { kind: 'entry-taken-back', entry: anId(10), why: 'the neighbour’s pot' },
    ]);
    await screen.getByRole('button', { name: /Put it back/ }).click();
    await expect.poll(() => shown.readings().map((each) => each.takenBack)).toEqual([null]);
    await expect.element(screen.getByRole('button', { name: /Fix this 8 cm/ })).toHaveFocus();
  });

  test('is undone from where it was said', async () => {
    const shown = await showLog([took(10, wednesday, 8)]);
    await shown.screen.getByRole('button', { name: /Fix this/ }).click();
    await write(shown, '5', 'Write the new one');
    await shown.screen.getByRole('button', { name: 'I looked again', exact: true }).click();
    await shown.screen.getByRole('button', { name: 'Undo' }).click();
    await expect
      .poll(() => shown.readings()[0])
      .toMatchObject({
        counted: read(8),
        crossedOut: [],
      });
  });
});

describe('writing a day that went by', () => {
  test('begins at yesterday, and keeps the reading on its day', async () => {
    const shown = await showLog([took(10, '2026-03-10', 8)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write another day' }).click();
    await expect.element(screen.getByLabelText('Which day was it?')).toHaveValue(yesterday);
    await expect.element(screen.getByText('Thursday 12 March 2026')).toBeVisible();
    await screen.getByRole('button', { name: 'The day before' }).click();
    await write(shown, '9');
    await expect
      .poll(() => shown.readings().map((each) => [each.day, each.counted.text]))
      .toEqual([
        ['2026-03-10', '8'],
        ['2026-03-11', '9'],
      ]);
    await expect.element(screen.getByRole('row', { name: /Wed 11 Mar/ })).toHaveTextContent('9 cm');
  });

  test('begins at the blank day that was tapped, and takes a stamp too', async () => {
    const shown = await showLog([took(10, '2026-03-10', 8)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write it now Wed 11 Mar' }).click();
    await expect.element(screen.getByLabelText('Which day was it?')).toHaveValue('2026-03-11');
    await screen.getByRole('button', { name: 'We missed it' }).click();
    await expect
      .element(screen.getByRole('row', { name: /Wed 11 Mar/ }))
      .toHaveTextContent('missed');
    expect(await shown.writtenSince()).toMatchObject([
      { kind: 'day-marked', specimen: bean, day: '2026-03-11', state: 'missed' },
    ]);
  });

  test.each([
    ['2026-03-14', /has not come yet/, 'Yes, that day'],
    ['2026-02-28', /2 days before you began/, 'Yes, that day'],
    ['2026-03-10', /Keep both\?/, 'Yes, keep both'],
  ])('on %s asks first, and yes writes it', async (day, question, yes) => {
    const shown = await showLog([took(10, '2026-03-10', 8)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write another day' }).click();
    await screen.getByLabelText('Which day was it?').fill(day);
    await write(shown, '9');
    await expect.element(screen.getByText(question)).toBeVisible();
    expect(await shown.writtenSince()).toEqual([]);
    await screen.getByRole('button', { name: yes }).click();
    await expect.poll(() => shown.readings().map((each) => each.day)).toEqual(['2026-03-10', day]);
  });

  test('asks how 13 inches were read on a 12 inch ruler, and looking again keeps what was typed', async () => {
    const shown = await showLog([changedTo({ unit: 'in', mark: '1 in' })]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write another day' }).click();
    await write(shown, '13');
    await expect.element(screen.getByText(/A ruler ends at 12 in/)).toBeVisible();
    await screen.getByRole('button', { name: 'I want to look again' }).click();
    const pad = screen.getByRole('textbox', { name: 'My measure' });
    await expect.element(pad).toHaveValue('13');
    expect(await shown.writtenSince()).toEqual([]);
  });

  test('takes the leaves, the sky, the time and what was seen with it', async () => {
    const shown = await showLog([]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write another day' }).click();
    await screen.getByText('Write more about it').click();
    await screen.getByLabelText('How many leaves?').fill('4');
    await screen.getByLabelText('What time was it?').fill('08:05');
    await screen.getByRole('button', { name: 'cloud' }).click();
    await screen.getByLabelText('What did you see?').fill('It leans.');
    await write(shown, '9');
    await expect
      .poll(shown.writtenSince)
      .toMatchObject([
        { leaves: 4, time: '08:05', weather: 'cloud', note: 'It leans.', measured: read(9) },
      ]);
    const row = screen.getByRole('row', { name: /Thu 12 Mar/ });
    await expect.element(row).toHaveTextContent(/08:05.*9 cm.*4 leaves.*cloud.*It leans/);
  });

  test.each(['2.5', '0', '99'])(
    'asks again where %s days of rain cannot be, and keeps what was typed',
    async (days) => {
      const shown = await showLog([changedTo({ quantity: 'rain', unit: 'mm', mark: '1 mm' })]);
      const { screen } = shown;
      await screen.getByRole('button', { name: 'Write another day' }).click();
      await screen.getByText('Write more about it').click();
      await screen.getByLabelText('How many days of rain are in it?').fill(days);
      await write(shown, '9');
      await expect.element(screen.getByText(/whole number of days/)).toBeVisible();
      expect(await shown.writtenSince()).toEqual([]);
      await screen.getByLabelText('How many days of rain are in it?').fill('3');
      await screen.getByRole('button', { name: 'Write it down' }).click();
      await expect
        .poll(shown.writtenSince)
        .toMatchObject([{ spanDays: 3, measured: { text: '9' } }]);
    },
  );

  test('asks for the day while it is half written, and writes nothing', async () => {
    const shown = await showLog([]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write another day' }).click();
    await screen.getByLabelText('Which day was it?').fill('');
    await write(shown, '3');
    await expect.element(screen.getByText('Which day was it? Choose a day.')).toBeVisible();
    expect(await shown.writtenSince()).toEqual([]);
  });

  test('stays on the screen when the device cannot save it', async () => {
    const store = openMemoryJournalStore();
    const shown = await showLog([], store);
    await shown.screen.getByRole('button', { name: 'Write another day' }).click();
    store.append = () => Promise.resolve(failed({ kind: 'no-room', detail: 'full' }));
    await write(shown, '3');
    await expect.poll(() => shown.notebook.trouble?.kind).toBe('no-room');
    const pad = shown.screen.getByRole('textbox', { name: 'My measure' });
    await expect.element(pad).toHaveValue('3');
  });
});

describe('stamps, words and notes', () => {
  const sky = changedTo({
    ...{ quantity: 'daily-kind', unit: 'count', mark: '1', weekdays: [1, 2, 3, 4, 5, 6, 7] },
    kinds: ['sun', 'rain'],
  });

  test('a stamp is changed in one write: the old one taken back, the new one beside it', async () => {
    const shown = await showLog([marked(10, yesterday, 'missed')]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Fix this missed, Thu 12 Mar' }).click();
    await screen.getByRole('button', { name: 'Not up yet' }).click();
    await screen.getByRole('button', { name: 'I looked again', exact: true }).click();
    await expect.poll(shown.writtenSince).toMatchObject([
      { kind: 'entry-taken-back', entry: anId(10), why: 'I looked again' },
      { kind: 'day-marked', day: yesterday, state: 'not-up-yet' },
    ]);
    const row = screen.getByRole('row', { name: /^Thu 12 Mar not up yet/ });
    await expect.element(row).toBeVisible();
  });

  test('a missed day can get its number after all', async () => {
    const shown = await showLog([marked(10, yesterday, 'missed')]);
    const { screen } = shown;
    await screen.getByRole('button', { name: /Fix this missed/ }).click();
    await screen.getByRole('button', { name: 'Write a number after all' }).click();
    await expect.element(screen.getByLabelText('Which day was it?')).toHaveValue(yesterday);
    await write(shown, '4');
    await expect.element(screen.getByRole('row', { name: /^Thu 12 Mar 4 cm/ })).toBeVisible();
    expect(screen.container.querySelector('tbody del')).toHaveTextContent('missed');
  });

  test('a word is changed in one write, with why', async () => {
    const shown = await showLog([sky, noted(10, yesterday, 'sun')]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Fix this sun, Thu 12 Mar' }).click();
    await screen.getByRole('button', { name: 'rain', exact: true }).click();
    await screen.getByRole('button', { name: 'My finger slipped', exact: true }).click();
    await expect.poll(shown.writtenSince).toMatchObject([
      { kind: 'entry-taken-back', entry: anId(10), why: 'My finger slipped' },
      { kind: 'kind-noted', day: yesterday, word: 'rain' },
    ]);
    expect(screen.container.querySelector('tbody del')).toHaveTextContent('sun');
  });

  test('a word is written for a day that went by', async () => {
    const shown = await showLog([sky, noted(10, '2026-03-11', 'sun')]);
    const { screen } = shown;
    await screen.getByRole('button', { name: /Write it now Thu 12 Mar/ }).click();
    await screen.getByRole('button', { name: 'rain', exact: true }).click();
    await expect
      .poll(shown.writtenSince)
      .toMatchObject([{ kind: 'kind-noted', specimen: bean, day: yesterday, word: 'rain' }]);
  });

  test('a note is written for any day, about this log', async () => {
    const shown = await showLog([took(10, yesterday, 4)]);
    const { screen } = shown;
    await screen.getByRole('button', { name: 'Write a note' }).click();
    await screen.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(screen.getByText('Write some words first.')).toBeVisible();
    await screen.getByLabelText('Which day is it about?').fill(yesterday);
    await screen.getByLabelText('What did you see?').fill(' It leans to the window.\n');
    await screen.getByRole('button', { name: 'Write it down' }).click();
    await expect.poll(shown.writtenSince).toMatchObject([
      {
        ...{ kind: 'note-written', specimen: bean, investigation: heights, day: yesterday },
        text: 'It leans to the window.',
      },
    ]);
  });

  test('a note is changed by crossing the old words out', async () => {
    const shown = await showLog([note(10, yesterday, 'It leens.')]);
    const { screen } = shown;
    await screen.getByRole('button', { name: /Fix this note/ }).click();
    await expect.element(screen.getByLabelText('What did you see?')).toHaveValue('It leens.');
    await screen.getByLabelText('What did you see?').fill('It leans.');
    await screen.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(screen.getByText('It leans.', { exact: true })).toBeVisible();
    expect(screen.container.querySelector('tbody del')).toHaveTextContent('It leens.');
    expect(await shown.writtenSince()).toHaveLength(2);
  });
});

describe('on a narrow page', () => {
  test('the work is all there is until it is done, and on a wide one the log stays beside it', async () => {
    const { screen } = await showLog([took(10, today, 4)]);
    const table = screen.getByRole('table', { name: /March/ });
    await screen.getByRole('button', { name: 'Write a note' }).click();
    await expect.element(table).toBeVisible();
    await page.viewport(360, 740);
    expect(screen.getByRole('table', { name: /March/ }).elements()).toHaveLength(0);
    await screen.getByRole('button', { name: 'Back to the log' }).click();
    await expect.element(screen.getByRole('table', { name: /March/ })).toBeVisible();
    const { scrollWidth } = document.documentElement;
    expect(scrollWidth).toBeLessThanOrEqual(360);
  });

  test('every button of a row is 48 pixels high or more', async () => {
    await page.viewport(360, 740);
    const { screen } = await showLog([took(10, today, 4), marked(11, yesterday, 'missed')]);
    const heightsPx = [...screen.container.querySelectorAll('button')].map(
      (button) => button.getBoundingClientRect().height,
    );
    expect(heightsPx.length).toBeGreaterThan(6);
    expect(Math.min(...heightsPx)).toBeGreaterThanOrEqual(48);
  });
});
