import '#ui/look';
import { describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { civilDay } from '#core/calendar';
import type { JournalEntry, SpecimenId } from '#core/journal';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore } from '#store';
import { anId, bean, begun, child, heights, read, took, written } from '../../core/journal/entries';
import PageOf from './PageOf.svelte';

const beanB = anId<SpecimenId>(902);

/** Friday 13 March 2026, eight in the morning; the beans were sown on Monday 2 March. */
const clock: Clock = {
  nowMs: () => Date.UTC(2026, 2, 13, 8),
  timeZone: () => 'UTC',
  randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
};

async function show(
  of: 'fair-test' | 'ahead',
  entries: readonly JournalEntry[],
  specimens: readonly SpecimenId[] = [bean, beanB],
): Promise<{ container: Element; notebook: NotebookState }> {
  localStorage.clear();
  const store = openMemoryJournalStore();
  await store.append([...begun, ...entries]);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  notebook.chooseAuthor(child);
  const { container } = await render(PageOf, { notebook, of, specimens });
  return { container, notebook };
}

const second = written(5, {
  ...{ kind: 'specimen-added', specimen: beanB, investigation: heights, name: 'Bean B' },
  startedOn: civilDay('2026-03-02'),
});
const planned = (number: number, different: string): JournalEntry =>
  written(number, {
    ...{ kind: 'fair-test-planned', investigation: heights, different },
    ...{ same: ['seed'], second: different === 'light' ? ['colour'] : [] },
  });

describe('the fair test', () => {
  test('says how to add a second plant when there is one', async () => {
    await show('fair-test', [], [bean]);
    await expect.element(page.getByText('A fair test needs two or more plants')).toBeVisible();
    await expect.element(page.getByRole('link', { name: 'Go to Set-up' })).toBeVisible();
  });

  test('holds no plants against each other before somebody planned one', async () => {
    await show('fair-test', [second, took(6, '2026-03-10', 4)]);
    await expect.element(page.getByRole('button', { name: 'Write the plan' })).toBeVisible();
    await expect.element(page.getByText('Side by side')).not.toBeInTheDocument();
  });

  test('shows a seed that never came up as a state, with no number and no lead', async () => {
    const { container } = await show('fair-test', [
      ...[second, planned(6, 'water'), took(7, '2026-03-10', 4)],
      written(8, {
        ...{ kind: 'specimen-ended', specimen: beanB, day: civilDay('2026-03-12'), how: 'lost' },
      }),
    ]);
    await expect.element(page.getByText('It never came up. We found that out.')).toBeVisible();
    await expect.element(page.getByText('No day yet when both were measured.')).toBeVisible();
    expect(container.textContent).not.toMatch(/\b0 cm/);
  });

  test('of light asks which looks well only after three weeks and a second look', async () => {
    await show('fair-test', [second, planned(6, 'light'), took(7, '2026-03-10', 4)]);
    await expect
      .element(page.getByText('Wait three weeks. Then ask which did well.'))
      .toBeVisible();
    await expect
      .element(page.getByText('Look at the leaves, too. Tall can be weak.'))
      .toBeVisible();
    await expect.element(page.getByText('Which looks well and strong?')).not.toBeInTheDocument();
  });

  test('says that a plan came after the first reading, when it did', async () => {
    await show('fair-test', [second, took(6, '2026-03-02', 1), planned(7, 'soil')]);
    await expect.element(page.getByText('Written after the first reading')).toBeVisible();
  });

  test('notes how a plant looks', async () => {
    const { notebook } = await show('fair-test', [
      ...[second, planned(6, 'light'), took(7, '2026-03-10', 4)],
    ]);
    await page.getByText('Look at them now.').click();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(page.getByText('Tap what you see first.')).toBeVisible();
    await page.getByRole('radio', { name: 'pale green' }).click();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await expect.element(page.getByRole('cell', { name: 'pale green' })).toBeVisible();
    expect(notebook.contents.looks.get(bean)?.[0]).toMatchObject({ colour: 'pale-green' });
  });
});

describe('a guess for later', () => {
  const week = [3, 4, 6, 9, 10, 11].map((day, index) =>
    took(10 + index, `2026-03-${String(day).padStart(2, '0')}`, index + 2),
  );
  const sealed = (number: number, forDay: string) =>
    written(number, {
      ...{ kind: 'prediction-sealed', specimen: bean, day: civilDay('2026-03-10') },
      ...{ forDay: civilDay(forDay), measured: read(77), because: 'zebra' },
    });

  test('shows of a sealed one its day and its maker, and neither number nor because', async () => {
    const { container } = await show('ahead', [...week, sealed(20, '2026-03-14')], [bean]);
    const card = page.getByRole('article', { name: /A sealed guess/ });
    await expect.element(card).toHaveTextContent(/Wren/);
    await expect.element(card).toHaveTextContent(/It opens on Saturday 14 March\./);
    expect(container.innerHTML).not.toMatch(/77|zebra/);
  });

  test('has one talk question, for the newest that opened; older ones are folded away', async () => {
    await show('ahead', [...week, sealed(20, '2026-03-10'), sealed(21, '2026-03-11')], [bean]);
    await expect.element(page.getByText('You guessed 77 cm. It was 7 cm.')).toBeVisible();
    expect(page.getByText('What would you think now?').elements()).toHaveLength(1);
    await expect.element(page.getByText('Guesses from before (1)')).toBeVisible();
  });

  test('is offered once for each person and day', async () => {
    await show('ahead', [...week, sealed(20, '2026-03-14')], [bean]);
    await expect.element(page.getByRole('button', { name: /Tomorrow/ })).toBeDisabled();
  });

  test('keeps nothing on the page of a guess that was sealed', async () => {
    const { container, notebook } = await show('ahead', week, [bean]);
    await page.getByRole('button', { name: /^Tomorrow/ }).click();
    await page.getByRole('textbox', { name: 'My guess' }).fill('77');
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('textbox', { name: /I think so because/ }).fill('zebra');
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('button', { name: 'Seal it' }).click();
    await expect.element(page.getByRole('article', { name: /A sealed guess/ })).toBeVisible();
    expect(container.innerHTML).not.toMatch(/77|zebra/);
    expect(notebook.entries.at(-1)).toMatchObject({ kind: 'prediction-sealed', because: 'zebra' });
  });
});
