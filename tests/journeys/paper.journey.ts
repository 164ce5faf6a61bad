import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { pdfPages, type Box, type PdfPage } from './pdf-shapes';
import { listenForFaults, looks } from './walk';

/** Half a hundredth: a tenth of a millimetre in two centimetres, less than a pencil line. */
const within = 0.005;
const expectLength = (measuredMm: number, trueMm: number): void =>
  expect(Math.abs(measuredMm / trueMm - 1)).toBeLessThan(within);

const sample = JSON.parse(readFileSync('demo/sample-notebook.json', 'utf8')) as {
  entries: Record<string, string>[];
};
const entry = (kind: string, name: string, value: string) =>
  sample.entries.find((each) => each['kind'] === kind && each[name] === value)!;
const beans = entry('investigation-begun', 'quantity', 'plant-height')['investigation']!;
const windowBean = entry('specimen-added', 'name', 'Window bean')['specimen']!;
const shelfBean = entry('specimen-added', 'name', 'Shelf bean')['specimen']!;
const rain = entry('investigation-begun', 'quantity', 'rain')['investigation']!;
const gauge = entry('specimen-added', 'investigation', rain)['specimen']!;

const address = (
  [graph, stage]: readonly [string, string],
  choice: Record<string, unknown>,
  more: string,
): string =>
  `/draw/paper?${new URLSearchParams({ graph, stage, choice: JSON.stringify(choice) })}&${more}`;

const inCentimetres = { unit: 'cm', mark: '1 cm', converts: false };
const ofBean = { investigation: beans, specimens: [windowBean], mostKinds: null };
/** The window bean of the made-up notebook, 11 to 17 March: 1, 2, 3, 4, nothing, 7 and 9 cm. */
const week = { ...ofBean, from: '2026-03-11', to: '2026-03-17', told: inCentimetres };
const heights = { ...week, source: 'day-values' };
const graphs = [
  { name: 'Bar graph', of: ['bar-graph', 'grade-2'], choice: heights },
  {
    name: 'Line graph',
    of: ['line-graph', 'grade-3'],
    choice: { ...week, source: 'days-in-order' },
  },
  {
    name: 'Line plot',
    of: ['line-plot', 'grade-2'],
    choice: { ...week, source: 'growth-amounts' },
  },
  {
    name: 'Picture graph',
    of: ['picture-graph', 'grade-3'],
    choice: {
      ...{ source: 'wet-days', investigation: rain, specimens: [gauge] },
      ...{ from: '2026-04-01', to: '2026-04-10', told: null, mostKinds: 4 },
    },
  },
] as const;

async function openSample(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'Look around a made-up notebook' }).click();
  await expect(page.getByText('A made-up notebook.')).toBeVisible();
}

async function printed(page: Page, path: string): Promise<readonly PdfPage[]> {
  await page.goto(path);
  await expect(page.getByRole('region', { name: 'The sheet' })).toBeVisible();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  return pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
}

/** Lines of one path that all stand upright, or all lie: the squares of the paper. */
const ruling = ({ shapes }: PdfPage, lies: boolean): readonly Box[] => {
  const found = shapes.find(
    ({ paint, parts }) =>
      paint === 'stroke' &&
      parts.length >= 3 &&
      parts.every(({ width, height }) => (lies ? height < 0.01 : width < 0.01)),
  );
  if (!found) throw new Error('There are no squares on this page');
  return found.parts;
};

const gapsOf = (lines: readonly Box[], side: 'x' | 'y'): readonly number[] =>
  lines.slice(1).map((line, index) => Math.abs(line[side] - lines[index]![side]));

/** The black parts of the bars at the foot: those of the upper bar, and those of the lower. */
const checkBars = ({ shapes }: PdfPage): readonly (readonly Box[])[] => {
  const black = shapes
    .filter(({ paint, colour }) => paint === 'fill' && colour === '0 0 0')
    .flatMap(({ parts }) => parts)
    .filter(({ width, height }) => width > 5 && height > 2);
  const levels = [...new Set(black.map(({ y }) => y.toFixed(1)))];
  return levels
    .sort((one, other) => Number(other) - Number(one))
    .map((level) => black.filter(({ y }) => y.toFixed(1) === level));
};

/** The long thin lines round a bar. */
const outlineOf = ({ shapes }: PdfPage, bar: readonly Box[]): Box =>
  shapes
    .filter(({ paint }) => paint === 'stroke')
    .flatMap(({ parts }) => parts)
    .find(({ y, height, width }) => height < 0.01 && width > 50 && Math.abs(y - bar[0]!.y) < 0.3)!;

const expectTrueBars = (page: PdfPage): void => {
  const bars = checkBars(page);
  expect(bars.map((bar) => bar.length)).toEqual([5, 2]);
  const [centimetres, inches] = [bars[0]!, bars[1]!];
  for (const { width } of centimetres) expectLength(width, 10);
  for (const { width } of inches) expectLength(width, 25.4);
  expectLength(outlineOf(page, centimetres).width, 100);
  expectLength(outlineOf(page, inches).width, 101.6);
};

const expectSquares = (page: PdfPage, squareMm: number): void => {
  for (const gap of gapsOf(ruling(page, false), 'x')) expectLength(gap, squareMm);
  for (const gap of gapsOf(ruling(page, true), 'y')) expectLength(gap, squareMm);
};

/** ISO 216 and ANSI/ASME Y14.1; Chromium rounds a page to whole CSS pixels, a quarter millimetre. */
const sizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;

for (const size of ['a4', 'letter'] as const) {
  test(`a centimetre and an inch on a printed ${size} sheet are a centimetre and an inch`, async ({
    page,
  }) => {
    const pages = await printed(page, `/draw/paper?size=${size}`);
    expect(pages).toHaveLength(1);
    expect(Math.abs(pages[0]!.widthMm - sizes[size][0])).toBeLessThan(0.3);
    expect(Math.abs(pages[0]!.heightMm - sizes[size][1])).toBeLessThan(0.3);
    expectTrueBars(pages[0]!);
    expectSquares(pages[0]!, 10);
    // A whole page of them, from one edge to the other.
    const across = ruling(pages[0]!, false);
    expectLength(across.at(-1)!.x - across[0]!.x, 10 * (across.length - 1));
    expect(across.length).toBeGreaterThan(15);
  });

  test(`every sheet of every graph is one true ${size} page`, async ({ page }) => {
    test.setTimeout(180_000);
    const faults = listenForFaults(page);
    await openSample(page);
    for (const { name, of, choice } of graphs)
      for (const sheet of ['empty-paper', 'scale-given', 'frame-given', 'finished'])
        for (const way of name === 'Bar graph' || name === 'Picture graph'
          ? ['standing', 'lying']
          : ['standing']) {
          const more = `sheet=${sheet}&size=${size}&way=${way}`;
          const pages = await printed(page, address(of, choice, more));
          await expect(page.getByRole('heading', { level: 2 })).toContainText(name);
          await expect(page.getByText('For the grown-up')).toHaveCount(
            sheet === 'finished' ? 1 : 0,
          );
          expect([more, name, pages.length]).toEqual([more, name, 1]);
          const sides = [pages[0]!.widthMm, pages[0]!.heightMm].sort((one, other) => one - other);
          expect(Math.abs(sides[0]! - sizes[size][0])).toBeLessThan(0.3);
          expect(Math.abs(sides[1]! - sizes[size][1])).toBeLessThan(0.3);
          expectTrueBars(pages[0]!);
          expectSquares(pages[0]!, 10);
        }
    expect(faults).toEqual([]);
  });
}

test('a sheet that was made to fit the page is found out by its bars', async ({ page }) => {
  await printed(page, '/draw/paper?size=letter');
  const [sheet] = pdfPages(await page.pdf({ preferCSSPageSize: true, scale: 0.95 }));
  const [centimetres, inches] = checkBars(sheet!);
  expectLength(outlineOf(sheet!, centimetres!).width, 95);
  expectLength(outlineOf(sheet!, inches!).width, 96.52);
});

test('bars of a plant’s heights are as tall on paper as the plant was', async ({ page }) => {
  await openSample(page);
  const [sheet] = await printed(page, address(['bar-graph', 'grade-2'], heights, 'sheet=finished'));
  const bars = sheet!.shapes
    .filter(({ paint, colour }) => paint === 'fill' && colour === '228 228 228')
    .flatMap(({ parts }) => parts)
    .sort((one, other) => one.x - other.x);
  expect(bars).toHaveLength(6);
  [10, 20, 30, 40, 70, 90].forEach((tallMm, index) => expectLength(bars[index]!.height, tallMm));
});

test('squares too many for centimetres are smaller, and the sheet says so', async ({ page }) => {
  await openSample(page);
  const choice = {
    ...{ source: 'day-values', investigation: rain, specimens: [gauge], mostKinds: null },
    ...{
      from: '2026-04-01',
      to: '2026-04-18',
      told: { unit: 'mm', mark: '1 mm', converts: false },
    },
  };
  const more = 'sheet=finished&size=letter&way=standing';
  const [sheet] = await printed(page, address(['bar-graph', 'grade-3'], choice, more));
  await expect(page.getByText('One square is 8 mm wide.')).toBeVisible();
  expectSquares(sheet!, 8);
  expectTrueBars(sheet!);
});

test('a night-time screen prints black on white', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const [sheet] = await printed(page, '/draw/paper?size=a4');
  const grounds = sheet!.shapes.filter(
    ({ paint, parts }) =>
      paint === 'fill' && parts.some(({ width, height }) => width > 120 && height > 100),
  );
  expect(grounds.length).toBeGreaterThan(0);
  expect(new Set(grounds.map(({ colour }) => colour))).toEqual(new Set(['255 255 255']));
  expectTrueBars(sheet!);
});

for (const [scheme, where] of looks) {
  test(`the sheet is chosen and seen on a ${scheme} screen, and axe finds nothing ${where}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await openSample(page);
    await page.goto(address(['bar-graph', 'grade-2'], heights, 'size=a4'));
    await page.getByRole('link', { name: 'Finished, for you' }).click();
    await expect(page.getByText('For the grown-up')).toBeVisible();
    await page.getByRole('link', { name: 'Lying down' }).click();
    await expect(page.getByRole('link', { name: 'Lying down' })).toHaveAttribute('aria-current');
    await expect(page.getByRole('img', { name: /Bar graph .*6 bars/ })).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
    const tooWide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(tooWide).toBe(0);
  });
}

/**
 * A child begins a drawing of the window bean’s heights and leaves it open. The made-up notebook
 * forgets it when a page is loaded anew: from here on the way goes by links.
 */
async function leaveADrawingOpen(page: Page, graph = 'Bar graph'): Promise<void> {
  await page.goto(`/draw?of=${windowBean}`);
  await page
    .getByRole('article', { name: graph })
    .getByRole('button', { name: 'Each day’s measure', exact: true })
    .click();
  await expect(page.getByRole('button', { name: 'Next', exact: true })).toBeVisible();
}

const sheetOnScreen = (page: Page) => page.getByRole('region', { name: 'The sheet' });
const finished = (page: Page) => sheetOnScreen(page).getByText('One right way to draw it.');

/** From any sheet, by the list of all of them, to the finished one of a log's first table. */
async function openOffer(page: Page, log: string, kind: string): Promise<void> {
  await page.getByRole('link', { name: 'All sheets' }).click();
  await page.getByRole('heading', { name: log, level: 3 }).click();
  await page
    .getByRole('region', { name: `${kind}, ${log}` })
    .getByRole('link')
    .first()
    .click();
  await expect(page.getByRole('heading', { name: 'Tables that are ready' })).toHaveCount(0);
  await page.getByRole('link', { name: 'Finished, for you' }).click();
}

test('while a drawing is open the finished graph is printed unseen, and seen only when asked for', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openSample(page);
  await leaveADrawingOpen(page);
  await page.getByRole('link', { name: 'Draw it on paper instead' }).click();
  // What the child draws on is seen at once.
  await expect(sheetOnScreen(page)).toBeVisible();

  await page.getByRole('link', { name: 'Finished, for you' }).click();
  await expect(page.getByText(/drawing of this log is still open/)).toBeVisible();
  await expect(sheetOnScreen(page)).toBeHidden();
  await expect(page.getByRole('img', { name: /bars/ })).toHaveCount(0);

  // It comes out of the printer all the same, bars and all, and stays unseen.
  const [sheet] = pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  expectTrueBars(sheet!);
  expect(
    sheet!.shapes.filter(({ paint, colour }) => paint === 'fill' && colour === '228 228 228')
      .length,
  ).toBeGreaterThan(3);
  await expect(sheetOnScreen(page)).toBeHidden();

  const show = page.getByRole('button', { name: 'Show it to me' });
  await show.click();
  await expect(sheetOnScreen(page)).toBeVisible();
  await expect(page.getByText('For the grown-up', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Hide it again' }).click();
  await expect(sheetOnScreen(page)).toBeHidden();

  // Seen once, it is not seen by itself the next time; nor by any other way to the same log.
  await show.click();
  await page.getByRole('link', { name: 'Empty squares' }).click();
  await expect(sheetOnScreen(page)).toBeVisible();
  await page.getByRole('link', { name: 'Finished, for you' }).click();
  await expect(sheetOnScreen(page)).toBeHidden();
  for (const kind of ['Picture graph', 'Line plot (X plot)', 'Line graph']) {
    await openOffer(page, 'Window bean', kind);
    await expect(show).toBeVisible();
    await expect(sheetOnScreen(page)).toBeHidden();
  }
  // The rain is another log: nobody draws it.
  await openOffer(page, 'Yard gauge', 'Bar graph');
  await expect(finished(page)).toBeVisible();
  await expect(show).toHaveCount(0);
  expect(faults).toEqual([]);
});

test('once the child is done, the finished graph is shown without asking', async ({ page }) => {
  await openSample(page);
  await leaveADrawingOpen(page);
  await page.getByRole('button', { name: 'Title', exact: true }).click();
  await page.getByRole('textbox', { name: 'My title' }).fill('How tall was our bean?');
  await page.getByRole('button', { name: 'I am done', exact: true }).click();
  await page.getByRole('link', { name: 'Draw it on paper instead' }).click();
  await page.getByRole('link', { name: 'Finished, for you' }).click();
  await expect(finished(page)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Show it to me' })).toHaveCount(0);
  // What the child left is a sheet of its own.
  await page.getByRole('link', { name: 'The child’s drawing' }).click();
  await expect(sheetOnScreen(page).getByText('How tall was our bean?')).toBeVisible();
});

test('every log offers its tables, each on an empty sheet, with numbers, finished', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await openSample(page);
  await page.goto('/draw/paper');
  await expect(page.getByRole('heading', { name: 'Squares to draw on' })).toBeVisible();
  for (const [log, kinds] of [
    ['Window bean', ['Picture graph', 'Bar graph', 'Line plot (X plot)', 'Line graph']],
    ['Yard gauge', ['Picture graph', 'Bar graph', 'Line plot (X plot)']],
  ] as const) {
    await page.getByRole('heading', { name: log, level: 3 }).click();
    for (const kind of kinds) {
      const offers = page.getByRole('region', { name: `${kind}, ${log}` });
      await expect(offers.getByRole('link').first()).toBeVisible();
    }
  }
  await page
    .getByRole('region', { name: 'Line graph, Window bean' })
    .getByRole('link', { name: 'Walking through the days' })
    .first()
    .click();
  await expect(page.getByRole('heading', { name: 'Line graph: Window bean' })).toBeVisible();
  for (const sheet of ['Empty squares', 'With numbers', 'Finished, for you'])
    await expect(page.getByRole('link', { name: sheet, exact: true })).toBeVisible();
  await page.getByRole('link', { name: 'With numbers', exact: true }).click();
  await expect(page.getByRole('link', { name: 'With numbers', exact: true })).toHaveAttribute(
    'aria-current',
  );
  await page.getByRole('link', { name: 'All sheets' }).click();
  await expect(page.getByRole('heading', { name: 'Tables that are ready' })).toBeVisible();
  expect(faults).toEqual([]);
});

test('two plants of twenty days have their graph and their table on one sheet', async ({
  page,
}) => {
  await openSample(page);
  const choice = {
    ...{ ...week, specimens: [windowBean, shelfBean], source: 'days-in-order', to: '2026-03-30' },
  };
  for (const size of ['a4', 'letter'])
    for (const sheet of ['empty-paper', 'scale-given', 'frame-given', 'finished']) {
      const more = `sheet=${sheet}&size=${size}`;
      const pages = await printed(page, address(['line-graph', 'grade-3'], choice, more));
      expect([more, pages.length]).toEqual([more, 1]);
      expectTrueBars(pages[0]!);
      // Every day has its row, and no letter is smaller than 11 points (14.67 CSS pixels).
      const table = page.getByRole('table', { name: /The table/ });
      await expect(table.locator('tbody tr')).toHaveCount(20);
      const smallest = await table
        .locator('th, td')
        .evaluateAll((cells) =>
          Math.min(...cells.map((cell) => parseFloat(getComputedStyle(cell).fontSize))),
        );
      expect(smallest).toBeGreaterThan(14.6);
    }
});

for (const [scheme, where] of looks) {
  test(`the list of sheets, and a covered and an uncovered sheet, leave axe nothing to find on a ${scheme} screen ${where}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await openSample(page);
    const findsNothing = async (): Promise<void> => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(tooWide).toBe(0);
    };
    for (const { of, choice } of graphs) {
      await page.goto(address(of, choice, 'size=letter&sheet=scale-given'));
      await expect(sheetOnScreen(page)).toBeVisible();
      await findsNothing();
    }
    await leaveADrawingOpen(page);
    await page.getByRole('link', { name: 'Draw it on paper instead' }).click();
    await page.getByRole('link', { name: 'Finished, for you' }).click();
    await expect(page.getByRole('button', { name: 'Show it to me' })).toBeVisible();
    await findsNothing();
    await page.getByRole('button', { name: 'Show it to me' }).click();
    await expect(finished(page)).toBeVisible();
    await findsNothing();
    await page.getByRole('link', { name: 'All sheets' }).click();
    await page.getByRole('heading', { name: 'Window bean', level: 3 }).click();
    await expect(page.getByRole('heading', { name: 'Saved drawings' })).toBeVisible();
    await expect(page.getByRole('region', { name: 'Bar graph, Window bean' })).toBeVisible();
    await findsNothing();
  });
}

test('a table is chosen, its sheet and its paper, by keyboard alone', async ({ page }) => {
  await openSample(page);
  await page.goto('/draw/paper');
  const reach = async (wanted: ReturnType<Page['locator']>): Promise<void> => {
    for (let tabs = 0; tabs < 60; tabs += 1) {
      if (await wanted.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`The keyboard never reached ${wanted.toString()}`);
  };
  await reach(page.locator('summary', { hasText: 'Window bean' }));
  await page.keyboard.press('Enter');
  const offers = page.getByRole('region', { name: 'Bar graph, Window bean' });
  await reach(offers.getByRole('link', { name: 'Each day’s measure' }).first());
  await page.keyboard.press('Enter');
  await reach(page.getByRole('link', { name: 'With numbers', exact: true }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'With numbers', exact: true })).toBeFocused();
  await reach(page.getByRole('link', { name: 'A4' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'A4' })).toHaveAttribute('aria-current');
  await reach(page.getByRole('button', { name: 'Print this sheet' }));
});
