import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { pdfPages, type Box, type PdfPage } from './pdf-shapes';
import { putEntries } from './put-entries';
import { listenForFaults, looks } from './walk';

type Line = Readonly<Record<string, unknown>>;
const sample = JSON.parse(readFileSync('demo/sample-notebook.json', 'utf8')) as {
  entries: readonly Line[];
};
const named = (kind: string, name: string, value: string): Line =>
  sample.entries.find((each) => each['kind'] === kind && each[name] === value)!;
const beans = named('investigation-begun', 'quantity', 'plant-height')['investigation'];
const windowBean = named('specimen-added', 'name', 'Window bean')['specimen'];
const shelfBean = named('specimen-added', 'name', 'Shelf bean')['specimen'];

const inCentimetres = { unit: 'cm', mark: '1 cm', converts: false };
const ofBoth = { investigation: beans, specimens: [windowBean, shelfBean], told: null };
const ofWindow = { investigation: beans, specimens: [windowBean], mostKinds: null };

/** Three lessons of the made-up notebook, each with how many squares its frame has across. */
const taught = {
  weather: {
    ...{ graph: 'picture-graph', purpose: 'picture-graph-of-kinds' },
    choice: {
      ...{ ...ofBoth, source: 'weather-days', mostKinds: 3 },
      ...{ from: '2026-03-02', to: '2026-03-30' },
    },
  },
  growth: {
    ...{ graph: 'line-plot', purpose: 'line-plot-of-amounts' },
    choice: {
      ...{ ...ofWindow, source: 'growth-amounts', told: inCentimetres },
      ...{ from: '2026-03-11', to: '2026-03-30' },
    },
  },
  'two plants': {
    ...{ graph: 'bar-graph', purpose: 'bar-graph-of-how-many-days' },
    choice: {
      ...{ ...ofBoth, source: 'specimen-readings', mostKinds: null },
      ...{ from: '2026-03-11', to: '2026-03-24' },
    },
  },
} as const;
type Name = keyof typeof taught;
const stages = ['grade-1', 'grade-2', 'grade-3'] as const;
const minutes = [20, 30] as const;

const idOf = (number: number): string =>
  `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;
const every = (Object.keys(taught) as readonly Name[]).flatMap((name) =>
  stages
    // A line plot is taught from grade 2 on.
    .filter((stage) => name !== 'growth' || stage !== 'grade-1')
    .flatMap((stage) => minutes.map((each) => ({ name, stage, minutes: each }))),
);
const made = every.map((lesson, index) => ({ ...lesson, id: idOf(71_000 + index) }));
const lessonId = (name: Name, stage: (typeof stages)[number], long: 20 | 30 = 30): string =>
  made.find((each) => each.name === name && each.stage === stage && each.minutes === long)!.id;

const entriesOf = (more: readonly Line[] = []): readonly Line[] => {
  const written = made.map(({ name, stage, minutes: long, id: lesson }) => ({
    ...{ kind: 'lesson-made', lesson, investigation: beans, ...taught[name] },
    ...{ stage, minutes: long, seed: 11 },
  }));
  const { device, author } = sample.entries.at(-1)!;
  return [
    ...sample.entries,
    ...[...written, ...more].map((body, index) => ({
      ...{ id: idOf(81_000 + index), device, author, v: 1 },
      at: `2026-05-01T14:00:00.${String(index).padStart(3, '0')}Z-00000`,
      ...body,
    })),
  ];
};

const address = (id: string, more: string): string => `/lessons/paper?lesson=${id}&${more}`;
const sheets = (page: Page, whose: string) =>
  page.getByRole('region', { name: whose, exact: true });
const childs = 'The child’s sheets';
const grownUps = 'The grown-up’s sheets';

async function open(page: Page, path: string): Promise<void> {
  await page.goto(path);
  // The last of the three kinds to come.
  await expect(page.locator('.lesson-sheet').first()).toBeAttached();
  if (!path.includes('sheets='))
    for (const kind of ['grown-up’s sheets: Sheet 1', 'Word cards: Sheet 1'])
      await expect(page.locator(`.lesson-sheet[aria-label*="${kind}"]`)).toBeAttached();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

async function printed(page: Page, path: string): Promise<readonly PdfPage[]> {
  await open(page, path);
  return pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
}

/** Half a hundredth: a tenth of a millimetre in two centimetres, less than a pencil line. */
const expectLength = (measuredMm: number, trueMm: number): void =>
  expect(Math.abs(measuredMm / trueMm - 1)).toBeLessThan(0.005);

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

const expectSquares = (page: PdfPage, squareMm: number): void => {
  for (const [lies, side] of [
    [false, 'x'],
    [true, 'y'],
  ] as const) {
    const lines = ruling(page, lies);
    for (const [index, line] of lines.slice(1).entries())
      expectLength(Math.abs(line[side] - lines[index]![side]), squareMm);
  }
};

/** The black parts of the check bars: widths of a centimetre, and of an inch. */
const expectTrueBars = ({ shapes }: PdfPage): void => {
  const widths = shapes
    .filter(({ paint, colour }) => paint === 'fill' && colour === '0 0 0')
    .flatMap(({ parts }) => parts)
    .filter(({ width, height }) => width > 5 && height > 2)
    .map(({ width }) => width)
    .sort((one, other) => one - other);
  expect(widths).toHaveLength(7);
  for (const width of widths.slice(0, 5)) expectLength(width, 10);
  for (const width of widths.slice(5)) expectLength(width, 25.4);
};

/** What is wrong with how sheets are filled: past their edges, or with a heading at their foot. */
const faultsOfSheets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.lesson-sheet')].flatMap((sheet) => {
      const name = sheet.getAttribute('aria-label') ?? '';
      const work = sheet.querySelector('.work')!.getBoundingClientRect();
      const inside = [...sheet.querySelectorAll('.work *')].map((each) => ({
        box: each.getBoundingClientRect(),
        each,
      }));
      const past = inside.filter(
        ({ box }) => box.right > work.right + 1 || box.bottom > work.bottom + 1,
      );
      const columns = [...sheet.querySelectorAll('.columns > div')];
      const last = columns.filter((column) => {
        const leaf = [...column.querySelectorAll('h3, p, svg')].at(-1);
        return leaf?.tagName === 'H3';
      });
      return [
        ...past.map(({ each }) => `${name}: past its edge: ${each.outerHTML.slice(0, 80)}`),
        ...last.map(() => `${name}: a heading stands last`),
      ];
    }),
  );

/** ISO 216 and ANSI/ASME Y14.1; Chromium rounds a page to whole CSS pixels, a quarter millimetre. */
const sizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;
const namesOf = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.lesson-sheet')
    .evaluateAll((all) => all.map((each) => each.getAttribute('aria-label') ?? ''));

for (const size of ['letter', 'a4'] as const)
  test(`every lesson on ${size}: as many pages as sheets, at true scale, nothing cut off, no heading last`, async ({
    page,
  }) => {
    test.setTimeout(240_000);
    const faults = listenForFaults(page);
    await putEntries(page, entriesOf());
    for (const { id, name, stage, minutes: long } of made) {
      const pages = await printed(page, address(id, `size=${size}`));
      const names = await namesOf(page);
      const told = [name, stage, long];
      expect([...told, pages.length]).toEqual([...told, names.length]);
      expect([...told, await faultsOfSheets(page)]).toEqual([...told, []]);
      for (const { widthMm, heightMm } of pages) {
        expect(Math.abs(widthMm - sizes[size][0])).toBeLessThan(0.3);
        expect(Math.abs(heightMm - sizes[size][1])).toBeLessThan(0.3);
      }
      // The child's one or two, the grown-up's two sides at most, and the cards.
      const [ofChild, ofGrownUp] = [childs, grownUps].map(
        (whose) => names.filter((each) => each.startsWith(whose)).length,
      );
      expect([...told, ofChild! <= 2, ofGrownUp! <= 2]).toEqual([...told, true, true]);
      expect(names.at(-1)).toBe('Word cards: Sheet 1 of 1');
      expectSquares(pages[0]!, 10);
      expectTrueBars(pages[0]!);
    }
    // A short lesson of few kinds is one sheet for the child.
    await open(page, address(lessonId('weather', 'grade-3', 20), `size=${size}&sheets=child`));
    expect(await namesOf(page)).toHaveLength(1);
    expect(faults).toEqual([]);
  });

test('answers, slips and the finished graph stand on the grown-up’s sheets, and nowhere on the child’s', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await putEntries(page, entriesOf());
  for (const name of Object.keys(taught) as readonly Name[]) {
    await open(page, address(lessonId(name, 'grade-2'), 'size=letter'));
    const child = sheets(page, childs);
    const grownUp = sheets(page, grownUps);
    await expect(grownUp.getByText('Answer:').first()).toBeVisible();
    await expect(grownUp.getByRole('heading', { name: 'The finished graph' })).toBeVisible();
    await expect(child).toContainText('Our graph tells us');
    for (const word of ['Answer', 'Easier', 'Further', 'First hint', 'finished'])
      await expect(child).not.toContainText(word);
    // Its frame is blank: the picture in it says so to who hears it.
    await expect(child.getByRole('img', { name: /nothing drawn yet/ })).toHaveCount(1);
    const asked = await child.locator('.asked > p').allTextContents();
    const answered = await grownUp.locator('.question .answer').allTextContents();
    expect(asked).toHaveLength(answered.length);
    // Made-up numbers are marked on both.
    await expect(child.getByText('Practice numbers, not ours').first()).toBeVisible();
    await expect(grownUp.getByText('Practice numbers, not ours').first()).toBeVisible();
  }
});

test('the paper and the sheets are chosen, and only those are printed', async ({ page }) => {
  await putEntries(page, entriesOf());
  await open(page, address(lessonId('weather', 'grade-2'), ''));
  const choice = (name: string) => page.getByRole('link', { name, exact: true });
  await expect(choice('A4')).toHaveAttribute('aria-current');
  await choice('Letter').click();
  await choice('Yours, with answers').click();
  await choice('Word cards').click();
  await expect(sheets(page, grownUps)).toHaveCount(0);
  await expect(choice('The child’s')).toHaveAttribute('aria-current');
  const pages = pdfPages(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength((await namesOf(page)).length);
  expect(Math.abs(pages[0]!.widthMm - sizes.letter[0])).toBeLessThan(0.3);
  await choice('Only squares').click();
  await expect(sheets(page, childs).locator('.lesson-frame .squares text')).toHaveCount(0);
});

test('what the grown-up changed in the plan stands on paper', async ({ page }) => {
  const lesson = lessonId('weather', 'grade-2');
  const own = [{ level: 'read', text: 'Which row has a boot in it?', answer: 'None of them' }];
  const to = { title: 'Our skies', texts: { accept: 'Any sun at all', 'stop-when': '' }, own };
  await putEntries(page, entriesOf([{ kind: 'lesson-changed', lesson, to }]));
  await open(page, address(lesson, 'size=a4'));
  const [child, grownUp] = [sheets(page, childs), sheets(page, grownUps)];
  await expect(child.getByRole('heading', { name: 'Our skies' }).first()).toBeVisible();
  await expect(child).toContainText('Which row has a boot in it?');
  await expect(child).not.toContainText('None of them');
  await expect(grownUp).toContainText('None of them');
  await expect(grownUp).toContainText('Any sun at all');
  await expect(grownUp.getByRole('heading', { name: 'What to accept' })).toBeVisible();
  await expect(grownUp.getByRole('heading', { name: 'When to stop' })).toHaveCount(0);
});

test('while a drawing of the log is open, the grown-up’s sheets are printed unseen', async ({
  page,
}) => {
  const drawing = {
    ...{ kind: 'drawing-begun', drawing: idOf(90_001), investigation: beans },
    ...{ graph: 'picture-graph', choice: taught.weather.choice },
    ...{ stage: 'grade-2', level: 'frame-given' },
  };
  await putEntries(page, entriesOf([drawing]));
  await open(page, address(lessonId('weather', 'grade-2'), 'size=letter'));
  await expect(sheets(page, childs)).toBeVisible();
  await expect(sheets(page, grownUps)).toBeHidden();
  await expect(page.getByText(/drawing of this log is still open/)).toBeVisible();
  const pages = pdfPages(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength((await namesOf(page)).length);
  expect(pages.length).toBeGreaterThan(3);
  await expect(sheets(page, grownUps)).toBeHidden();
  await page.getByRole('button', { name: 'Show it to me' }).click();
  await expect(sheets(page, grownUps)).toBeVisible();
});

for (const [scheme, where] of looks)
  test(`a lesson on paper leaves axe nothing to find on a ${scheme} screen, and fits it ${where}`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme: scheme });
    const faults = listenForFaults(page);
    await putEntries(page, entriesOf());
    for (const name of ['growth', 'two plants'] as const) {
      await open(page, address(lessonId(name, 'grade-2'), 'size=letter'));
      await expect(sheets(page, 'Word cards')).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(tooWide).toBe(0);
    }
    expect(faults).toEqual([]);
  });

test('a lesson is printed by keyboard alone, and one that is not there is said kindly', async ({
  page,
}) => {
  await putEntries(page, entriesOf());
  await open(page, address(lessonId('growth', 'grade-2'), ''));
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  const button = page.getByRole('button', { name: 'Print these sheets' });
  for (let presses = 0; presses < 60; presses += 1) {
    if (await button.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
  await expect(page.locator('body')).toHaveAttribute('data-printed', 'yes');
  await page.goto(address(idOf(99_999), ''));
  await expect(page.getByText(/not in this notebook/)).toBeVisible();
});
