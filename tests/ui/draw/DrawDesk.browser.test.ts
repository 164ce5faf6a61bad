import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { DrawDesk } from '#ui/draw';
import { beans, deskFor, oneBean, sky } from './a-graph';

beforeEach(async () => {
  await page.viewport(820, 1180);
});

const column = (name: string) => page.getByRole('slider', { name, exact: true });
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const valueOf = (name: string) => column(name).element().getAttribute('aria-valuetext');

/** A tap so many squares up from the base of a column: squares are measured on the paper itself. */
async function tapUp(container: Element, name: string, squares: number): Promise<void> {
  const sides = container.querySelector('.sides')!.getBoundingClientRect();
  const box = column(name).element().getBoundingClientRect();
  const rows = Number(column(name).element().getAttribute('aria-valuemax'));
  const y = sides.bottom - (squares * sides.height) / rows - box.top;
  await column(name).click({ position: { x: box.width / 2, y } });
}

describe('a bar graph', () => {
  test('is drawn by taps: the bar goes to the line of the paper that was touched', async () => {
    const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
    await tapUp(container, 'sun', 3.1);
    expect(valueOf('sun')).toBe('3 squares up');
    await tapUp(container, 'sun', 1.6);
    expect(valueOf('sun')).toBe('1 1/2 squares up');
    await button('One more').click();
    expect(valueOf('sun')).toBe('2 1/2 squares up');
  });

  test('is drawn by keys alone, and every step can be taken back', async () => {
    await render(DrawDesk, deskFor('bar-graph', sky));
    column('sun').element().focus();
    await userEvent.keyboard('{ArrowUp}{ArrowUp}{ArrowRight}{ArrowUp}/');
    expect([valueOf('sun'), valueOf('cloud')]).toEqual(['2 squares up', '1 1/2 squares up']);
    await userEvent.keyboard('{Control>}z{/Control}');
    await button('Undo').click();
    expect(valueOf('cloud')).toBe('empty');
    await button('Redo').click();
    expect(valueOf('cloud')).toBe('1 square up');
    column('sun').element().focus();
    await userEvent.keyboard('{Delete}');
    expect(valueOf('sun')).toBe('empty');
  });

  test('never shows how high a bar should be while it is open', async () => {
    const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
    expect(container.querySelectorAll('.bar')).toHaveLength(0);
    expect(container.querySelector('[aria-label="The computer’s drawing"]')).toBeNull();
  });

  test('is kept after a pause, and when the page is left', async () => {
    const props = deskFor('bar-graph', sky);
    const { unmount } = await render(DrawDesk, props);
    await button('One more').click();
    await button('One more').click();
    expect(props.kept).toHaveLength(0);
    await expect.poll(() => props.kept.length).toBe(1);
    expect(props.kept[0]!.drawing.bars).toEqual([{ at: 1.5, width: 1, from: 0, to: 2 }]);
    await page.getByRole('checkbox', { name: 'I drew sun' }).click();
    await unmount();
    expect(props.kept.at(-1)!.ticked).toEqual([0]);
  });

  test('shows the computer’s drawing only when the child is done', async () => {
    await render(DrawDesk, deskFor('bar-graph', sky));
    await button('Next').click();
    await page.getByRole('textbox', { name: 'My title' }).fill('Days of our sky');
    await button('I am done').click();
    await expect
      .element(page.getByRole('region', { name: 'The computer’s drawing' }))
      .toBeVisible();
    await button('Go on drawing').click();
    await expect.element(page.getByText('Days of our sky', { exact: true })).toBeVisible();
  });
});

test('laid down, the first row of the table is the first from the top, also for arrow keys', async () => {
  await render(DrawDesk, deskFor('bar-graph', sky));
  await button('One more').click();
  await button('Lay it down').click();
  const topOf = (name: string) => column(name).element().getBoundingClientRect().top;
  expect(topOf('sun')).toBeLessThan(topOf('cloud'));
  expect(topOf('cloud')).toBeLessThan(topOf('rain'));
  expect(valueOf('sun')).toBe('1 square along');
  column('sun').element().focus();
  await userEvent.keyboard('{ArrowDown}{ArrowRight}');
  expect([valueOf('cloud'), valueOf('rain')]).toEqual(['1 square along', 'empty']);
  await button('Stand it up').click();
  expect([valueOf('sun'), valueOf('cloud')]).toEqual(['1 square up', '1 square up']);
});

test('what is drawn is said and stands in a table for those who hear it, a moment later', async () => {
  const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
  await button('One more').click();
  await button('One more').click();
  await expect
    .poll(() => container.querySelector('p[aria-live]')!.textContent)
    .toBe('sun: 2 squares up');
  expect(container.querySelector('table.visually-hidden tbody')!.textContent).toContain(
    '2 squares up',
  );
  expect(container.querySelector('.squares svg')!.getAttribute('aria-label')).toContain(
    'sun: 2 squares up',
  );
});

test('a picture graph: a picture is picked, put into squares, and cut in half', async () => {
  const { container } = await render(DrawDesk, deskFor('picture-graph', sky));
  await button('sun').first().click();
  await page
    .getByRole('group', { name: /How many one picture/ })
    .getByRole('button', { name: '1', exact: true })
    .click();
  await button('Next').click();
  await button('One more').click();
  await button('One more').click();
  await button(/Half/).click();
  expect(valueOf('sun')).toBe('2 pictures, 1 of them a half');
  expect(container.querySelectorAll('.squares .symbol')).toHaveLength(2);
});

test('a line plot: each tap puts one mark on top, one of two taps by a shaking hand', async () => {
  await render(DrawDesk, deskFor('line-plot', beans));
  await column('4').click();
  await new Promise((done) => setTimeout(done, 300));
  await column('4').click();
  expect(valueOf('4')).toBe('2 marks');
  await column('6').dblClick();
  expect(valueOf('6')).toBe('1 mark');
  await button('One less').click();
  expect(valueOf('6')).toBe('empty');
});

test('a line graph: points are put over their days and joined, with dots over a gap', async () => {
  const props = deskFor('line-graph', oneBean);
  const { container } = await render(DrawDesk, props);
  await tapUp(container, 'Mon 2', 1);
  await tapUp(container, 'Tue 3', 2);
  await tapUp(container, 'Thu 5', 4);
  await button('Next').click();
  await button('Join the next two').click();
  await button(/Dotted line/).click();
  await column('Tue 3').click();
  await column('Thu 5').click();
  expect(container.querySelectorAll('.join')).toHaveLength(2);
  await expect
    .poll(() => props.kept.at(-1)?.drawing.joins.map(({ line }) => line))
    .toEqual(['solid', 'dashed']);
});

test('on empty paper the child writes names, numbers and a label', async () => {
  const props = deskFor('bar-graph', sky, 'empty-paper');
  await render(DrawDesk, props);
  await button('cloud').click();
  await button('sun').click();
  await button('Next').click();
  await page.getByRole('textbox', { name: 'Number at line 0' }).fill('0');
  await button('Next line').click();
  await button('2').click();
  await button('Count on').click();
  await button('Count on').click();
  await button('Next').last().click();
  await page.getByRole('textbox', { name: 'My label' }).fill('days');
  await expect
    .poll(() => props.kept.at(-1)?.drawing.side)
    .toEqual({
      label: 'days',
      ticks: [
        { at: 0, text: '0' },
        { at: 1, text: '2' },
        { at: 2, text: '4' },
      ],
    });
  expect(props.kept.at(-1)!.drawing.places.map(({ text }) => text)).toEqual(['cloud', 'sun']);
});

describe('looking at it together', () => {
  const looked = (container: Element) =>
    [...container.querySelectorAll('.looked')].map((each) => each.className || each.tagName);

  test('says what is right first, then one thing, with more help only when asked for', async () => {
    const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
    await tapUp(container, 'sun', 4);
    await tapUp(container, 'cloud', 3);
    await button('Look with me').click();
    const panel = page.getByRole('region', { name: 'Look with me' });
    await expect.element(panel).toBeVisible();
    expect(panel.element().querySelectorAll('.notice.ask')).toHaveLength(1);
    const hint = () => panel.element().querySelector('strong')!.textContent!.trim();
    const hints = [hint()];
    await button('More help').click();
    hints.push(hint());
    await button('More help').click();
    hints.push(hint());
    expect(new Set(hints).size).toBe(3);
    await expect.element(button('More help')).not.toBeInTheDocument();
    // The number the bar should have is in the table; no hint says it.
    expect(hints.join(' ')).not.toMatch(/\d|wrong|mistake/i);
    expect(looked(container).length).toBeGreaterThan(0);
  });

  test('a matter of taste is offered after the praise, and marks nothing on the paper', async () => {
    const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
    await tapUp(container, 'sun', 4);
    await tapUp(container, 'cloud', 2);
    await button('Title').click();
    // A title that is there, but does not name what was counted.
    await page.getByRole('textbox', { name: 'My title' }).fill('Blue hats');
    await button('Look with me').click();
    const panel = page.getByRole('region', { name: 'Look with me' });
    await expect.element(panel.getByText('One more thing you could add.')).toBeVisible();
    await expect.element(panel.getByText('All the parts are there.')).toBeVisible();
    expect(panel.element().querySelectorAll('.notice.ask')).toHaveLength(0);
    expect(looked(container)).toEqual([]);
    await expect.element(button('I am done')).toBeEnabled();
  });

  test('planted mistakes are led to right by the hints alone', async () => {
    const { container } = await render(DrawDesk, deskFor('bar-graph', sky));
    // One bar is one too high, and there is no title.
    await tapUp(container, 'sun', 4);
    await tapUp(container, 'cloud', 3);
    const panel = page.getByRole('region', { name: 'Look with me' });
    const seen: string[] = [];
    for (let round = 0; round < 4; round += 1) {
      await button('Look with me').click();
      if (!panel.element().querySelector('.notice.ask')) break;
      const lookAtTitle = container.querySelector('.title.looked');
      const lookAtBar = container.querySelector('.bar.looked');
      seen.push(lookAtTitle ? 'title' : lookAtBar ? 'bar' : 'other');
      await button('I will try').click();
      if (lookAtTitle) {
        await page.getByRole('textbox', { name: 'My title' }).fill('Our sky in days');
      } else {
        await tapUp(container, 'cloud', 2);
      }
    }
    expect(seen.toSorted()).toEqual(['bar', 'title']);
    await expect.element(page.getByText('All the parts are there.')).toBeVisible();
  });
});
