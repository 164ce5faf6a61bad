import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { pdfPages, type Box, type PdfPage } from './pdf-shapes';
import { beginSeedling, listenForFaults, looks } from './walk';

async function openSample(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: 'Look around a made-up notebook' }).click();
  await expect(page.getByText('A made-up notebook.')).toBeVisible();
}

/** Presses the tab key until this is where the keyboard is. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let presses = 0; presses < 60; presses += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`The tab key does not reach ${target}`);
}

const spaces = (page: Page): Locator =>
  page.getByRole('group', { name: 'Spaces of the ruler' }).getByRole('button');

/** Which spaces lie beside the strip as it is drawn: what an eye would say. */
const besideTheStrip = async (page: Page): Promise<readonly number[]> => {
  await expect(spaces(page).first()).toBeVisible();
  return page.evaluate(() => {
    const strip = document.querySelector('.piece .strip')!.getBoundingClientRect();
    const buttons = [...document.querySelectorAll('[aria-label="Spaces of the ruler"] button')];
    return buttons.flatMap((button, index) => {
      const { left, right } = button.getBoundingClientRect();
      const middle = (left + right) / 2;
      return middle > strip.left && middle < strip.right ? [index] : [];
    });
  });
};

test('a child checks the ruler, counts spaces and reads between the numbers, by taps @phone', async ({
  page,
}) => {
  const faults = listenForFaults(page);
  await beginSeedling(page);
  await page.getByRole('link', { name: 'Measure', exact: true }).click();
  await page.getByRole('link', { name: 'Read a ruler' }).click();

  await page.getByRole('link', { name: 'Does zero touch the table?' }).click();
  await page.getByRole('button', { name: 'There is a gap under the 0.', exact: true }).click();
  await expect(page.getByText('It is in the notebook.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Do one of these with a grown-up.')).toBeVisible();

  await page.getByRole('link', { name: 'All ruler lessons' }).click();
  await page.getByRole('link', { name: 'Count the spaces' }).click();
  const beside = await besideTheStrip(page);
  expect(beside.length).toBeGreaterThan(1);
  for (const index of beside) await spaces(page).nth(index).click();
  await expect(page.getByText(`${beside.length} spaces`, { exact: true })).toBeVisible();
  await page.getByRole('group', { name: 'Figures' }).getByText(String(beside.length)).click();
  await page.getByRole('button', { name: 'That is it' }).click();
  await expect(page.getByText('Yes. That is how many spaces it covers.')).toBeVisible();
  await page.getByRole('button', { name: 'One more' }).click();
  await expect(page.getByRole('textbox', { name: 'The strip is' })).toHaveValue('');

  await page.getByRole('link', { name: 'All ruler lessons' }).click();
  await page.getByRole('link', { name: 'Between the numbers' }).click();
  const pairs = page.getByRole('button', { name: /^\d+ and \d+$/ });
  const named = page.getByText('Yes. The end is between these two.');
  for (let pair = 0; pair < 4 && !(await named.isVisible()); pair += 1)
    await pairs.nth(pair).click();
  await expect(named).toBeVisible();
  const right = page.getByText('Yes. You looked close at the end.');
  for (let whole = 0; whole < 2 && !(await right.isVisible()); whole += 1)
    await page
      .getByRole('button', { name: /^\d+ (in|cm)$/ })
      .nth(whole)
      .click();
  await expect(right).toBeVisible();
  expect(faults).toEqual([]);
});

test('the same by keyboard alone, with a slip and its hints on the way', async ({ page }) => {
  const faults = listenForFaults(page);
  await beginSeedling(page);
  const link = (name: string) => page.getByRole('link', { name, exact: true });
  for (const name of ['Measure', 'Read a ruler', 'Count the spaces']) {
    await tabTo(page, link(name));
    await page.keyboard.press('Enter');
  }
  await tabTo(page, spaces(page).first());
  const beside = await besideTheStrip(page);
  for (let step = 0; step < beside[0]!; step += 1) await page.keyboard.press('ArrowRight');
  for (const index of beside) {
    await expect(spaces(page).nth(index)).toBeFocused();
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowRight');
  }
  await expect(page.getByText(`${beside.length} spaces`, { exact: true })).toBeVisible();

  const text = page.getByRole('textbox', { name: 'The strip is' });
  await tabTo(page, text);
  await page.keyboard.type(String(beside.length + 1));
  await page.keyboard.press('Enter');
  await expect(page.getByText('You began where the strip begins.')).toBeVisible();
  const more = page.getByRole('button', { name: 'More help' });
  for (const hint of ['Count the spaces, not the marks.', 'Hop from mark to mark']) {
    await page.keyboard.press('Shift+Tab');
    await tabTo(page, more);
    await page.keyboard.press('Enter');
    await expect(page.getByText(hint)).toBeVisible();
  }
  const again = page.getByRole('button', { name: 'I look again' });
  await again.focus();
  await page.keyboard.press('Enter');
  await tabTo(page, text);
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(String(beside.length));
  await page.keyboard.press('Enter');
  await expect(page.getByText('Yes. That is how many spaces it covers.')).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'One more' }));
  await page.keyboard.press('Enter');
  await expect(page.getByText('Now write how long it is.')).toBeVisible();
  expect(faults).toEqual([]);
});

const pages = [
  '/measure',
  '/measure/ruler',
  '/measure/ruler/zero',
  '/measure/ruler/spaces',
  '/measure/ruler/between',
  '/measure/ruler/how',
  '/measure/ruler/paper',
];

for (const [scheme, where] of looks) {
  test(`axe finds nothing on the pages of careful measuring, ${scheme} ${where}`, async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme: scheme });
    const faults = listenForFaults(page);
    await openSample(page);
    for (const path of pages) {
      await page.goto(path);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      const turn = page.getByRole('button', { name: 'Grown-up’s side' });
      if (await turn.isVisible()) await turn.click();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map((each) => `${path}: ${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
      const tooWide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect([path, tooWide]).toEqual([path, 0]);
    }
    expect(faults).toEqual([]);
  });
}

/** Half a hundredth: a tenth of a millimetre in two centimetres, less than a pencil line. */
const within = 0.005;
const expectLength = (measuredMm: number, trueMm: number): void =>
  expect(Math.abs(measuredMm / trueMm - 1)).toBeLessThan(within);

/** The lines of each ruler on the page: strokes of one path that all stand upright. */
const rulers = ({ shapes }: PdfPage): readonly (readonly Box[])[] =>
  shapes
    .filter(
      ({ paint, parts }) =>
        paint === 'stroke' &&
        parts.length >= 3 &&
        parts.every(({ width, height }) => width < 0.01 && height > 2 && height < 14),
    )
    .map(({ parts }) => parts);

/** The strips are the only grey things on the sheet. */
const strips = ({ shapes }: PdfPage): readonly Box[] =>
  shapes
    .filter(({ paint, colour }) => paint === 'fill' && colour === '228 228 228')
    .flatMap(({ parts }) => parts)
    .sort((one, other) => other.y - one.y);

/** The black parts of the bars at the foot. */
const barParts = ({ shapes }: PdfPage): readonly number[] =>
  shapes
    .filter(({ paint, colour }) => paint === 'fill' && colour === '0 0 0')
    .flatMap(({ parts }) => parts)
    .filter(({ width, height }) => width > 5 && height > 2)
    .map(({ width }) => width)
    .sort((one, other) => one - other);

/** ISO 216 and ANSI/ASME Y14.1; Chromium rounds a page to whole CSS pixels, a quarter millimetre. */
const sizes = { a4: [210, 297], letter: [215.9, 279.4] } as const;
/** NIST Special Publication 811, appendix B: an inch is 25.4 mm exactly. */
const unitMm = { cm: 10, in: 25.4 } as const;

for (const size of ['a4', 'letter'] as const)
  for (const unit of ['cm', 'in'] as const)
    test(`printed rulers in ${unit} are true on ${size}, and the answers are what they measure`, async ({
      page,
    }) => {
      const faults = listenForFaults(page);
      await openSample(page);
      await page.goto(`/measure/ruler/paper?size=${size}&unit=${unit}&sheet=3`);
      await expect(page.getByRole('heading', { name: 'Read a ruler, sheet 3' })).toBeVisible();
      await page.evaluate(() => document.fonts.ready.then(() => undefined));
      await expect(page.getByRole('cell')).toHaveCount(0);
      await page.getByRole('button', { name: 'Show the answers here' }).click();
      const answers = (await page.getByRole('cell').getByRole('strong').allTextContents()).map(
        (text) => Number.parseFloat(text),
      );
      expect(answers).toHaveLength(6);
      await page.getByRole('button', { name: 'Show the answers here' }).click();
      const printed = pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
      expect(printed).toHaveLength(2);
      for (const { widthMm, heightMm } of printed) {
        expect(Math.abs(widthMm - sizes[size][0])).toBeLessThan(0.3);
        expect(Math.abs(heightMm - sizes[size][1])).toBeLessThan(0.3);
      }

      const [tasks, told] = [printed[0]!, printed[1]!];
      expect(rulers(tasks)).toHaveLength(6);
      for (const lines of rulers(tasks))
        lines
          .slice(1)
          .forEach((line, index) => expectLength(line.x - lines[index]!.x, unitMm[unit]));
      expect(strips(tasks)).toHaveLength(6);
      strips(tasks).forEach(({ width }, index) => {
        if (index < 3) expectLength(width, answers[index]! * unitMm[unit]);
        // The nearest whole unit is at most half a unit away.
        else expect(Math.abs(width / unitMm[unit] - answers[index]!)).toBeLessThan(0.5);
      });
      expect(rulers(told)).toEqual([]);
      expect(strips(told)).toEqual([]);
      for (const sheet of printed) {
        const parts = barParts(sheet);
        expect(parts).toHaveLength(7);
        parts.forEach((width, index) => expectLength(width, index < 5 ? 10 : 25.4));
      }
      expect(faults).toEqual([]);
    });
