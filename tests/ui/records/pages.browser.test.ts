import '#ui/look';
import { readBackup } from '#core/exchange';
import type { NotebookState } from '#notebook';
import { BringInPage, RecordsPage } from '#ui/records';
import type { Component } from 'svelte';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import rainCsv from '../../reference/rain_seattle.csv?raw';
import { begun, took } from '../../core/journal/entries';
import { aNotebook } from './a-notebook';
import WithNotebook from './WithNotebook.svelte';

const beans = [...begun, took(5, '2026-03-02', 3), took(6, '2026-03-03', 4)];

const show = async (which: typeof RecordsPage | typeof BringInPage, notebook?: NotebookState) => {
  const book = notebook ?? (await aNotebook());
  return {
    notebook: book,
    screen: await render(WithNotebook, { notebook: book, page: which as Component }),
  };
};

const showRecords = async () => {
  const notebook = await aNotebook();
  await notebook.bringIn(beans);
  return show(RecordsPage, notebook);
};

/** What the page hands to the browser to save, with its name. */
const saved: { name: string; address: string }[] = [];

beforeEach(async () => {
  await page.viewport(820, 1000);
  saved.length = 0;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    saved.push({ name: this.download, address: this.href });
  });
});

afterEach(() => vi.restoreAllMocks());

const savedText = async (): Promise<string> => (await fetch(saved[0]!.address)).text();

describe('taking a copy', () => {
  test('saves the whole notebook in one file, and says when that was', async () => {
    const { screen, notebook } = await showRecords();
    await expect.element(screen.getByText(/No copy of this notebook/)).toBeVisible();
    await screen.getByRole('button', { name: 'Save a backup file' }).click();
    await expect.element(screen.getByText(/Nothing was written since/)).toBeVisible();
    expect(saved[0]?.name).toBe('morning-measure-2026-03-09.json');
    expect(readBackup(await savedText())).toMatchObject({
      ok: true,
      value: { entries: notebook.entries },
    });
  });

  test('saves the table of one log under its title', async () => {
    const { screen } = await showRecords();
    await screen.getByLabelText('Which log').selectOptions('Our beans');
    await screen.getByRole('button', { name: 'Save the table' }).click();
    expect(saved[0]?.name).toBe('our-beans-2026-03-09.csv');
    expect((await savedText()).split('\r\n')[1]).toMatch(/^2026-03-02,,Our beans,Bean A,number,3,/);
  });

  test('a window that keeps nothing says so', async () => {
    const { screen } = await showRecords();
    await expect.element(screen.getByText(/only until it is closed/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Ask the browser to keep it' }).query()).toBeNull();
  });
});

describe('by keyboard alone', () => {
  test('a notebook is put away by a second press, and put back', async () => {
    const { screen, notebook } = await showRecords();
    screen.getByRole('button', { name: 'Put this notebook away' }).element().focus();
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByRole('group', { name: /Put this/ })).toHaveFocus();
    expect(notebook.entries).toHaveLength(6);
    await userEvent.keyboard('{Tab}{Enter}');
    await expect.element(screen.getByText('The notebook is put away.')).toBeVisible();
    expect(notebook.entries).toHaveLength(0);
    screen.getByRole('button', { name: 'Put it back' }).element().focus();
    await userEvent.keyboard('{Enter}');
    await expect.element(screen.getByText('The notebook is back, as it was.')).toBeVisible();
    expect(notebook.entries).toHaveLength(6);
  });

  test('the first press alone does nothing, and leaving gives the focus back', async () => {
    const { screen, notebook } = await showRecords();
    const first = screen.getByRole('button', { name: 'Remove “Our beans”' });
    first.element().focus();
    await userEvent.keyboard('{Enter}{Tab}{Tab}{Enter}');
    await expect.element(first).toHaveFocus();
    expect(notebook.contents.investigations.size).toBe(1);
  });
});

test('an investigation is removed and put back where it was removed', async () => {
  const { screen, notebook } = await showRecords();
  await screen.getByRole('button', { name: 'Remove “Our beans”' }).click();
  await screen.getByRole('button', { name: 'Yes, remove it' }).click();
  await expect.element(screen.getByText(/removed Monday 9 March 2026/)).toBeVisible();
  expect(notebook.contents.investigations.size).toBe(0);
  await screen.getByRole('button', { name: 'Put back “Our beans”' }).click();
  await expect.element(screen.getByText('2 lines')).toBeVisible();
  expect(notebook.contents.removed).toEqual([]);
});

describe('bringing in a table', () => {
  test('three years of rain show their totals within a second, and come in', async () => {
    const { screen, notebook } = await show(BringInPage);
    const began = performance.now();
    await screen.getByLabelText('The table').upload(new File([rainCsv], 'rain_seattle.csv'));
    await expect.element(screen.getByText('1,096 rows would come in.')).toBeVisible();
    // The time of the whole round, with the test's own asking, on a shared two-core machine.
    expect(performance.now() - began).toBeLessThan(1000);
    // tests/reference/rain.json: 1226.0 mm, 48.27 in.
    await expect.element(screen.getByRole('row', { name: '2012 366 1226.0 48.27' })).toBeVisible();
    await screen.getByRole('button', { name: 'Bring in 1,096 rows' }).click();
    await expect.element(screen.getByText('1,096 lines came in')).toBeVisible();
    await expect.element(screen.getByRole('heading', { level: 1 })).toHaveFocus();
    expect(notebook.contents.investigations.size).toBe(1);
  });

  test('a date that is a day either way is asked for with both days', async () => {
    const { screen } = await show(BringInPage);
    await screen.getByLabelText(/copied from a spreadsheet/).fill('day,cm\n3/4/2026,5\n9/4/2026,6');
    await screen.getByRole('button', { name: 'Read it' }).click();
    await screen.getByRole('radio', { name: /Wednesday 4 March 2026/ }).click();
    await expect.element(screen.getByText('2 rows would come in.')).toBeVisible();
    await expect.element(screen.getByText(/From Wednesday 4 March 2026 to/)).toBeVisible();
  });

  test('a row that cannot be read says why, and can be looked at alone', async () => {
    const { screen } = await show(BringInPage);
    await screen
      .getByLabelText(/copied from a spreadsheet/)
      .fill('day,cm\n2026-03-02,5\n2026-03-03,-2\n2026-02-31,4');
    await screen.getByRole('button', { name: 'Read it' }).click();
    await screen.getByRole('radio', { name: 'Not coming in (3)' }).click();
    await expect.element(screen.getByText('“-2” is below 0')).toBeVisible();
    await expect.element(screen.getByText('there is no day “2026-02-31”')).toBeVisible();
    const rows = screen.getByRole('region', { name: 'The rows of the table' });
    await expect.element(rows).not.toHaveTextContent('5 cm');
  });

  test('only fifty rows are drawn at once, and the others can be turned to', async () => {
    const { screen } = await show(BringInPage);
    await screen.getByLabelText('The table').upload(new File([rainCsv], 'rain_seattle.csv'));
    await screen.getByRole('button', { name: 'Rows after' }).click();
    await expect.element(screen.getByText('51 to 100 of 1,097')).toBeVisible();
    await screen.getByRole('button', { name: 'To the last rows' }).click();
    await expect.element(screen.getByText('1,051 to 1,097 of 1,097')).toBeVisible();
    const rows = screen.getByRole('region', { name: 'The rows of the table' });
    expect(rows.element().querySelectorAll('tbody tr')).toHaveLength(47);
  });
});
