import '#ui/look';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { goto } from '$app/navigation';
import { civilDay } from '#core/calendar';
import type { JournalEntry, WeatherWord } from '#core/journal';
import { NotebookState } from '#notebook';
import { openMemoryJournalStore } from '#store';
import { bean, begun, child, read, written } from '../../core/journal/entries';
import { memoryOf } from '../records/a-notebook';
import DrawOf from './DrawOf.svelte';

vi.mock('$app/navigation', () => ({ goto: vi.fn(() => Promise.resolve()) }));

/** Ten mornings from Monday 2 March: by hand, 8 grew and 1 did not (on the 6th). */
const log: readonly (readonly [day: string, heightCm: number, weather: WeatherWord])[] = [
  ...[['02', 1, 'sun'] as const, ['03', 2, 'sun'] as const, ['04', 3, 'cloud'] as const],
  ...[['05', 5, 'sun'] as const, ['06', 5, 'cloud'] as const, ['07', 6, 'sun'] as const],
  ...[['08', 8, 'cloud'] as const, ['09', 9, 'sun'] as const, ['10', 11, 'sun'] as const],
  ['11', 12, 'cloud'],
];

const readings = (rows: typeof log): readonly JournalEntry[] =>
  rows.map(([day, heightCm, weather], index) =>
    written(10 + index, {
      ...{ kind: 'reading-taken', specimen: bean, day: civilDay(`2026-03-${day}`), weather },
      measured: read(heightCm),
    }),
  );

/** The page of the bean's drawings; where it leads is shown as its route would. */
async function showDraw(rows: typeof log = log) {
  const store = openMemoryJournalStore();
  await store.append([...begun, ...readings(rows)]);
  const clock = {
    nowMs: () => Date.UTC(2026, 2, 11, 8),
    timeZone: () => 'UTC',
    randomBytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)),
  };
  const notebook = new NotebookState(store, clock, memoryOf());
  await notebook.open();
  notebook.chooseAuthor(child);
  const props = { notebook, specimen: bean };
  const screen = await render(DrawOf, { ...props, drawing: null as string | null });
  const show = (drawing: string | null) => screen.rerender({ ...props, drawing });
  vi.mocked(goto).mockImplementation(async (to) =>
    show(new URL(String(to), location.href).searchParams.get('drawing')),
  );
  const drawingId = () => [...notebook.contents.drawings.keys()].at(-1)!;
  const papers = () => notebook.contents.drawings.get(drawingId())!.versions.map((v) => v.paper);
  return { notebook, show, drawingId, papers };
}

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const graph = (name: string) => page.getByRole('article', { name });
const choose = (name: string, table: string) =>
  graph(name).getByRole('button', { name: table, exact: true }).click();
const kind = (name: string) =>
  page.getByRole('group', { name: 'Kinds' }).getByRole('button', { name: new RegExp(`^${name}`) });
/** A child taps no faster: two quick taps are one. */
const tap = async (name: string) => {
  await kind(name).click();
  await new Promise((done) => setTimeout(done, 260));
};
const table = () =>
  [...document.querySelectorAll('.desk .beside tbody tr')].map((row) => [
    row.children[0]!.textContent!.trim(),
    row.querySelectorAll('.marks svg').length,
    row.querySelector('td.number')!.textContent!.trim(),
  ]);
const sortWeather = async (rows: typeof log = log) => {
  for (const [, , weather] of rows) await tap(weather);
};

beforeEach(async () => {
  await page.viewport(820, 1180);
});

describe('choosing a graph', () => {
  test('shows which graphs are ready, and what the others still need', async () => {
    await showDraw(log.slice(0, 3));
    await expect.element(graph('Picture graph')).toBeVisible();
    expect(document.querySelectorAll('article')).toHaveLength(4);
    expect(graph('Line plot (X plot)').element().textContent).toMatch(/needed first/);
    const said = document.body.textContent!;
    expect(said).not.toMatch(/wrong|NaN|undefined/);
  });

  test('offers what the log is enough for, and nothing is hidden when it is not', async () => {
    const { notebook } = await showDraw();
    await expect.element(graph('Bar graph').getByText('The weather')).toBeVisible();
    await expect.element(graph('Line graph').getByText('Walking through the days')).toBeVisible();
    expect(notebook.contents.drawings.size).toBe(0);
  });

  test('keeps a graph without numbers in sight and says so', async () => {
    await showDraw([]);
    await expect
      .element(page.getByText('No graph is ready yet. Measure some more days.'))
      .toBeVisible();
  });
});

describe('sorting before drawing', () => {
  test('asks for one day after the other, and the board draws from the tally', async () => {
    const { papers } = await showDraw();
    await choose('Bar graph', 'The weather');
    await expect.element(page.getByText('1 of 10')).toBeVisible();
    await sortWeather();
    await expect.element(page.getByText('Your tally and the log say the same.')).toBeVisible();
    await button('Draw my tally').click();
    await expect.element(page.getByText('Draw from your tally.')).toBeVisible();
    // Six days of sun are a bundle of five and one; four of cloud stand in one bundle.
    expect(table()).toEqual([
      ['sun', 2, '6'],
      ['cloud', 1, '4'],
    ]);
    expect(papers().at(-1)).toMatchObject({ tally: { use: 'mine', kinds: ['sun', 'cloud'] } });
  });

  test('asks once to look again, and then the child may keep its own', async () => {
    const { show } = await showDraw();
    await choose('Bar graph', 'The weather');
    await tap('cloud');
    await sortWeather(log.slice(1, -1));
    await tap('sun');
    await expect.element(page.getByText('Look at this one again.')).toBeVisible();
    await expect.element(kind('cloud')).toHaveAttribute('aria-pressed', 'true');
    await button('I want to keep mine').click();
    // The last day is looked at too, and mended.
    await expect.element(page.getByText('10 of 10')).toBeVisible();
    await tap('cloud');
    await expect.element(page.getByText('Your tally is done.')).toBeVisible();
    await button('Draw my tally').click();
    await expect.element(page.getByText('Draw from your tally.')).toBeVisible();
    expect(table()).toEqual([
      ['sun', 1, '5'],
      ['cloud', 1, '5'],
    ]);
    await show(null);
    const told = page.getByText('For the grown-up: 1 was sorted otherwise than in the log');
    await told.click();
    await expect
      .element(page.getByText('Mon 2 Mar (sun): sorted as “cloud”; the log has it as “sun”.'))
      .toBeVisible();
  });

  test('what was sorted otherwise is right for the board: it looks at the child’s tally', async () => {
    await showDraw();
    await choose('Bar graph', 'The weather');
    await tap('cloud');
    await sortWeather(log.slice(1));
    await button('I want to keep mine').click();
    await button('Draw my tally').click();
    for (const [name, count] of [
      ['sun', 5],
      ['cloud', 5],
    ] as const) {
      page.getByRole('slider', { name, exact: true }).element().focus();
      for (let more = 0; more < count; more += 1) await userEvent.keyboard('{ArrowUp}');
    }
    await button('Title').click();
    await page.getByRole('textbox', { name: 'My title' }).fill('Our weather days');
    await button('Look with me').click();
    await expect.element(page.getByText('All the parts are there.')).toBeVisible();
  });

  test('a tally that was drawn from is there when the drawing is taken up again', async () => {
    const { show, drawingId } = await showDraw();
    await choose('Bar graph', 'The weather');
    await tap('cloud');
    await sortWeather(log.slice(1));
    await button('I want to keep mine').click();
    await button('Draw my tally').click();
    await button('One more').click();
    await show(null);
    await expect.element(page.getByText('(go on)')).toBeVisible();
    await show(drawingId());
    await expect.element(page.getByText('Draw from your tally.')).toBeVisible();
    expect(table().map(([, , number]) => number)).toEqual(['5', '5']);
    await expect.poll(() => document.querySelectorAll('.board .bar').length).toBe(1);
  });

  test('a tally half done can be left and taken up again, and a day taken back', async () => {
    const { show, drawingId } = await showDraw();
    await choose('Picture graph', 'The weather');
    await sortWeather(log.slice(0, 3));
    await show(null);
    await expect.element(page.getByText('(sort on)')).toBeVisible();
    await show(drawingId());
    await expect.element(page.getByText('4 of 10')).toBeVisible();
    await expect.element(kind('sun').getByRole('img')).toHaveAccessibleName('2 tally marks');
    await button('One back').click();
    await expect.element(page.getByText('3 of 10')).toBeVisible();
    await expect.element(kind('cloud').getByRole('img')).toHaveAccessibleName('0 tally marks');
  });

  test('whether it grew is seen on two strips, and decided by the child', async () => {
    await showDraw();
    await choose('Bar graph', 'Did it grow that day?');
    await expect.element(page.getByText('Did it grow? Look at the two strips.')).toBeVisible();
    const card = () => document.querySelector('.card .visually-hidden')!.textContent;
    expect(card()).toBe('Mon 2 Mar: 1 cm. Tue 3 Mar: 2 cm.');
    const heights = () =>
      [...document.querySelectorAll('.strip')].map((each) => each.getBoundingClientRect().height);
    expect(heights()[0]! / heights()[1]!).toBeCloseTo(1 / 2, 1);
    for (let day = 0; day < 3; day += 1) await tap('grew');
    expect(card()).toBe('Thu 5 Mar: 5 cm. Fri 6 Mar: 5 cm.');
    expect(heights()[0]).toBe(heights()[1]);
    await tap('did not grow');
    for (let day = 0; day < 5; day += 1) await tap('grew');
    await button('Draw my tally').click();
    await expect.element(page.getByText('Draw from your tally.')).toBeVisible();
    expect(table()).toEqual([
      ['grew', 2, '8'],
      ['did not grow', 1, '1'],
    ]);
  });

  test('works by keys alone: arrows to a kind, Enter for each day', async () => {
    await showDraw();
    await choose('Bar graph', 'The weather');
    await expect.element(kind('sun')).toBeVisible();
    kind('sun').element().focus();
    let at = 'sun';
    for (const [, , weather] of log) {
      if (weather !== at) await userEvent.keyboard('{ArrowRight}');
      at = weather;
      await userEvent.keyboard('{Enter}');
    }
    await expect.element(button('Draw my tally')).toHaveFocus();
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('Draw from your tally.')).toBeVisible();
    expect(table().map(([, , number]) => number)).toEqual(['6', '4']);
  });

  test('two quick taps of a shaking hand sort one day', async () => {
    await showDraw();
    await choose('Bar graph', 'The weather');
    await kind('sun').dblClick();
    await expect.element(page.getByText('2 of 10')).toBeVisible();
    await expect.element(kind('sun').getByRole('img')).toHaveAccessibleName('1 tally mark');
  });

  test('who sorted on paper takes the log’s table', async () => {
    const { papers } = await showDraw();
    await choose('Bar graph', 'The weather');
    await tap('cloud');
    await button('Use the log’s table').click();
    await expect.element(page.getByText('Draw from this table.')).toBeVisible();
    expect(table()).toEqual([
      ['sun', 0, '6'],
      ['cloud', 0, '4'],
    ]);
    expect(papers().at(-1)).toMatchObject({ tally: { use: 'log' } });
  });

  test('a tally that cannot be read gives way to the log’s table, and says so kindly', async () => {
    const { notebook, show, drawingId } = await showDraw();
    await choose('Bar graph', 'The weather');
    await expect.element(kind('sun')).toBeVisible();
    await show(null);
    const drawing = drawingId();
    const broken = { kind: 'drawing-saved', drawing, paper: { tally: 7 }, ticked: [] } as const;
    await notebook.write({ ...broken, ticked: [] });
    await show(drawing);
    await expect.element(page.getByText('Your tally cannot be read here.')).toBeVisible();
    expect(table().map(([, , number]) => number)).toEqual(['6', '4']);
  });

  test('keeps each pick within a few seconds, though nothing is finished', async () => {
    const { papers } = await showDraw();
    await choose('Bar graph', 'The weather');
    const before = papers().length;
    await sortWeather(log.slice(0, 2));
    await expect.poll(() => papers().length, { timeout: 4000 }).toBe(before + 1);
    const kept = papers().at(-1) as { tally: { cards: { picks: string[] }[] } };
    expect(kept.tally.cards.filter(({ picks }) => picks.length > 0)).toHaveLength(2);
  });
});
