import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { height, kept, openKeptLog, tabTo, type Written } from './kept-log';
import { pdfPages } from './pdf-shapes';
import { listenForFaults, looks } from './walk';

const pip = '00000000-0000-7000-8000-000000000702';
const graph = '00000000-0000-7000-8000-000000000501';

/** Two bars, drawn by the child of the notebook and said to be done. */
const bars = {
  ...{ kind: 'bar-graph', level: 'frame-given', paper: { columns: 4, rows: 6 }, upright: true },
  ...{ title: 'My two bars', key: null, seriesKey: [], bottom: { label: '', ticks: [] } },
  side: { label: 'height in cm', ticks: [0, 1, 2, 3, 4].map((at) => ({ at, text: String(at) })) },
  places: [
    { at: 1, text: 'Mon 2' },
    { at: 3, text: 'Tue 3' },
  ],
  bars: [
    { at: 1, width: 1, from: 0, to: 2 },
    { at: 3, width: 1, from: 0, to: 4 },
  ],
  ...{ symbols: [], crosses: [], points: [], joins: [], strokes: [] },
};

const countOfDays = {
  ...{ template: 'R2', level: 'read', range: 'G1', slips: [], wholeSet: false },
  blanks: { kind: { kind: 'word', word: 'sun' }, counted: { kind: 'word', word: 'days' } },
  answer: { kind: 'count', count: 3, of: 'days' },
};

const written: readonly Written[] = [
  ...[2, 3, 4, 5, 7].map((value, index) => height(kept.beanA, `2026-03-0${index + 2}`, value)),
  [
    '2026-03-06',
    {
      ...{ kind: 'drawing-begun', drawing: graph, investigation: kept.beans, graph: 'bar-graph' },
      ...{ specimen: kept.beanA, choice: {}, stage: 'grade-2', level: 'frame-given' },
    },
  ],
  ['2026-03-06', { kind: 'drawing-saved', drawing: graph, paper: bars, ticked: [] }],
  ['2026-03-06', { kind: 'drawing-finished', drawing: graph }],
  [
    '2026-03-06',
    {
      ...{ kind: 'question-answered', question: countOfDays, day: '2026-03-06' },
      ...{ answer: '3 days', how: 'alone' },
    },
  ],
  [
    '2026-03-06',
    {
      ...{ kind: 'person-added', person: pip, name: 'Pip', shape: 'snail', colour: 3 },
      ...{ role: 'child', stage: 'grade-1', hand: 'left' },
    },
  ],
];

const openEvidence = async (page: Page): Promise<void> => {
  await page.clock.setSystemTime('2026-03-09T09:00:00-04:00');
  await openKeptLog(page, '/lessons/evidence', { written });
  await page.getByRole('heading', { name: 'Evidence: Wren' }).waitFor();
};

const group = (page: Page, name: string) => page.getByRole('region', { name });

test('a note with a drawing is kept, is a sample, and can be taken back @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openEvidence(page);
  await page.getByRole('button', { name: 'Add a note', exact: true }).click();
  await page.getByLabel('Which skill').selectOption('Draws a bar graph');
  await page.getByLabel('Attach').selectOption('My two bars (Fri 6 Mar 2026)');
  await page.getByLabel('In words').fill('Began at zero without a word from me.');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByText('Written down under “Draws a bar graph”.')).toBeVisible();

  await page.reload();
  const samples = group(page, 'Kept samples');
  await expect(samples.getByText('6 March 2026')).toBeVisible();
  await expect(samples.getByRole('img', { name: /My two bars/ })).toBeVisible();
  await group(page, 'Seen sometimes').getByText('Draws a bar graph', { exact: true }).click();
  await page.getByRole('button', { name: /^Take it back/ }).click();
  await expect(samples.getByText('None chosen yet.', { exact: false })).toBeVisible();
  await page.getByRole('button', { name: 'Undo the last thing' }).click();
  await expect(samples.getByRole('img', { name: /My two bars/ })).toBeVisible();
  expect(faults).toEqual([]);
});

test('one child is looked at, then the other, never both; no page of the child tells', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openEvidence(page);
  const said = 'Counted on from seven.';
  await page.getByText('Reads a graph', { exact: true }).first().click();
  await page.getByRole('button', { name: /^Add a note about it/ }).click();
  await page.getByLabel('In words').fill(said);
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(group(page, 'Seen sometimes').getByText(said)).toBeVisible();

  await page.getByRole('link', { name: 'Pip' }).click();
  await expect(page.getByRole('heading', { name: 'Evidence: Pip' })).toBeVisible();
  await expect(page.getByText(said)).toHaveCount(0);
  await expect(group(page, 'Seen often').getByRole('listitem')).toHaveCount(0);
  await expect(group(page, 'Seen sometimes').getByRole('listitem')).toHaveCount(0);
  for (const path of ['/today', '/log', '/draw', '/measure']) {
    await page.goto(path);
    await page.getByRole('heading').first().waitFor();
    await expect(page.getByText(said)).toHaveCount(0);
    await expect(page.getByText(/Seen often|Seen sometimes/)).toHaveCount(0);
  }
  expect(faults).toEqual([]);
});

test('a skill that was not seen leads to a lesson that would show it', async ({ page }) => {
  await openEvidence(page);
  await group(page, 'Not seen yet').getByText('Compares lengths', { exact: true }).click();
  await page
    .getByRole('link', { name: 'Find how much taller it got, with jumps on a number line' })
    .click();
  await expect(page).toHaveURL(new RegExp(`/lessons\\?of=${kept.beanA}$`));
});

test('a note is written by the keyboard alone', async ({ page }) => {
  await openEvidence(page);
  await tabTo(page, 'Add a note', 'button');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Which skill')).toBeFocused();
  // A letter chooses in a list.
  await page.keyboard.type('Looks');
  await expect(page.getByLabel('Which skill')).toHaveValue('looks-beyond');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: 'With help' })).toBeChecked();
  await tabTo(page, /^In words/, 'textbox');
  await page.keyboard.type('Said a range and why.');
  await tabTo(page, 'Write it down', 'button');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Written down under “Looks beyond, with a because”.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Add a note', exact: true })).toBeFocused();
  await expect(
    group(page, 'Seen sometimes').getByText('Looks beyond, with a because', { exact: true }),
  ).toBeVisible();
});

for (const [scheme, where] of looks) {
  test(`axe finds nothing with everything open and nothing scrolls sideways, ${scheme} ${where}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await page.addInitScript(() => sessionStorage.setItem('morning-measure:sample', 'yes'));
    await page.goto('/lessons/evidence');
    await page.getByRole('heading', { level: 1 }).waitFor();
    for (const name of ['Keeps a log', 'Compares two units', 'Draws a bar graph']) {
      await page.getByText(name, { exact: true }).first().click();
    }
    await page.getByText('What the codes are').click();
    await page.getByRole('button', { name: 'Add a note', exact: true }).click();
    await page.getByLabel('Which skill').waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBe(0);
  });
}

test('it prints as a dated page, with no button on it and no page blank', async ({ page }) => {
  await openEvidence(page);
  for (const format of ['Letter', 'A4'] as const) {
    const pages = pdfPages(await page.pdf({ format }));
    expect(pages.map(({ hasLetters }) => hasLetters)).toEqual(pages.map(() => true));
    expect(pages.length).toBeLessThanOrEqual(2);
  }
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(/^As of Monday 9 March 2026\./)).toBeVisible();
  await expect(page.getByText(/check your own rules/).first()).toBeVisible();
  await expect(
    page.getByRole('row', { name: /Reads a graph 2\.MD\.D\.10 Alone: 6 March 2026/ }),
  ).toBeVisible();
  const controls = page.locator('main').locator('button, input, select, summary');
  expect(await controls.filter({ visible: true }).count()).toBe(0);
});
