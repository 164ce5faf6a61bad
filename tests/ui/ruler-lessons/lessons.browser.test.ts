import '#ui/look';
import { seededRandom } from '#core/base';
import { civilDay } from '#core/calendar';
import type { Entry } from '#core/journal';
import { betweenMarksTask, offZeroTask, wholesAround, type RulerTask } from '#core/lessons';
import { exactPerUnit, formatExactNumber } from '#core/measure';
import {
  BetweenLesson,
  HowLesson,
  howWords,
  rulerRightWords,
  slipWords,
  SpacesLesson,
  twoNumbersHints,
  ZeroLesson,
} from '#ui/ruler-lessons';
import type { Component } from 'svelte';
import { describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { firstSeedOf } from '../../../src/lib/ui/ruler-lessons/task-seed';
import { begun, child, written } from '../../core/journal/entries';
import { aNotebook } from '../records/a-notebook';
import WithNotebook from '../records/WithNotebook.svelte';

vi.mock('$app/state', () => ({ page: { url: new URL('http://localhost/measure/ruler') } }));

type Child = { stage: 'grade-1' | 'grade-2' | 'grade-3'; hand: 'right' | 'left' };
const aChild = ({ stage, hand }: Child): Entry =>
  written(90, {
    ...{ kind: 'person-added', person: child, name: 'Wren', shape: 'leaf', colour: 1 },
    ...{ role: 'child', stage, hand },
  });

const show = async (
  lesson: Component,
  who: Child = { stage: 'grade-2', hand: 'right' },
  width = 820,
) => {
  await page.viewport(width, 1000);
  const notebook = await aNotebook();
  await notebook.bringIn([...begun.filter(({ kind }) => kind !== 'person-added'), aChild(who)]);
  return { notebook, screen: await render(WithNotebook, { notebook, page: lesson }) };
};
type Screen = Awaited<ReturnType<typeof show>>['screen'];

/** The day of the test’s notebook; its logs are in centimetres. */
const seed = firstSeedOf(civilDay('2026-03-09'));
const offZero = (stage: Child['stage'], on = 0): RulerTask =>
  offZeroTask(stage, 'centimetres', seededRandom(seed + on));
const between = (stage: Child['stage']): RulerTask =>
  betweenMarksTask(stage, 'centimetres', seededRandom(seed));

const numberOf = (exact: number, { unit, mark }: RulerTask): string =>
  formatExactNumber(exact, unit, mark);
const say = async (screen: Screen, text: string) => {
  await screen.getByRole('textbox', { name: 'The strip is' }).fill(text);
  await screen.getByRole('button', { name: 'That is it' }).click();
};
const space = (screen: Screen, from: number) =>
  screen.getByRole('button', { name: `Space from ${from} to ${from + 1}`, exact: true });

describe('counting spaces', () => {
  test('every space that is tapped is filled and counted; a second tap takes it back', async () => {
    const { screen } = await show(SpacesLesson);
    const task = offZero('grade-2');
    const first = task.beginsExact / exactPerUnit('cm');
    await space(screen, first).click();
    await expect.element(screen.getByText('1 space', { exact: true })).toBeVisible();
    await space(screen, first + 1).click();
    await expect.element(space(screen, first + 1)).toHaveAttribute('aria-pressed', 'true');
    await expect.element(screen.getByText('2 spaces')).toBeVisible();
    await space(screen, first).click();
    await expect.element(screen.getByText('1 space', { exact: true })).toBeVisible();
  });

  test('the right length is told so, with the measure; another one is another task', async () => {
    const { screen } = await show(SpacesLesson);
    const task = offZero('grade-2');
    await say(screen, numberOf(task.answerExact, task));
    await expect.element(screen.getByText(rulerRightWords['off-zero'])).toBeVisible();
    await expect
      .element(screen.getByText(`${numberOf(task.answerExact, task)} cm`, { exact: true }))
      .toBeVisible();
    await screen.getByRole('button', { name: 'One more' }).click();
    await expect.element(screen.getByText(rulerRightWords['off-zero'])).not.toBeInTheDocument();
    const next = offZero('grade-2', 1);
    await say(screen, numberOf(next.answerExact, next));
    await expect.element(screen.getByText(rulerRightWords['off-zero'])).toBeVisible();
  });

  test('a slip is met with what is right and one question, three steps down, never the number', async () => {
    const { screen } = await show(SpacesLesson);
    const task = offZero('grade-2');
    expect(task.slips.length).toBeGreaterThan(0);
    for (const { slip, exact } of task.slips) {
      await say(screen, numberOf(exact, task));
      const { right, hints } = slipWords[slip];
      await expect.element(screen.getByText(right)).toBeVisible();
      for (const [rung, hint] of hints.entries()) {
        await expect.element(screen.getByText(hint)).toBeVisible();
        const help = screen.getByRole('region', { name: 'Help' }).element().textContent;
        expect(help).not.toMatch(/\d/);
        if (rung < 2) await screen.getByRole('button', { name: 'More help' }).click();
      }
      await expect
        .element(screen.getByRole('button', { name: 'More help' }))
        .not.toBeInTheDocument();
      await screen.getByRole('button', { name: 'I look again' }).click();
      await expect.element(screen.getByText(right)).not.toBeInTheDocument();
    }
  });

  test('text that is no number is asked about on the pad, without a hint', async () => {
    const { screen } = await show(SpacesLesson);
    await say(screen, 'long');
    await expect.element(screen.getByText(/is not a number here/)).toBeVisible();
    await expect.element(screen.getByRole('region', { name: 'Help' })).not.toBeInTheDocument();
  });

  test('by keyboard alone: one stop for the spaces, arrows go along, Space fills', async () => {
    const { screen } = await show(SpacesLesson);
    const group = screen.getByRole('group', { name: 'Spaces of the ruler' }).element();
    const stops = () => [...group.querySelectorAll('button')].filter((each) => each.tabIndex === 0);
    expect(stops()).toHaveLength(1);
    stops()[0]!.focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight} ');
    expect(stops()).toHaveLength(1);
    expect(document.activeElement).toBe(group.querySelectorAll('button')[2]);
    await expect.element(screen.getByText(/^(1 space|a part)$/)).toBeVisible();
    await userEvent.keyboard('{End}');
    expect(document.activeElement).toBe([...group.querySelectorAll('button')].at(-1));
    await userEvent.keyboard('{Home}');
    expect(document.activeElement).toBe(group.querySelector('button'));
  });

  test('on a small telephone every space is 48 pixels wide, and the page is not wider', async () => {
    const { screen } = await show(SpacesLesson, { stage: 'grade-2', hand: 'right' }, 360);
    const group = screen.getByRole('group', { name: 'Spaces of the ruler' }).element();
    for (const button of group.querySelectorAll('button')) {
      const { width, height } = button.getBoundingClientRect();
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(48);
    }
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
  });

  test('a left-handed child has the strip under the ruler, and still taps the spaces', async () => {
    const { screen } = await show(SpacesLesson, { stage: 'grade-2', hand: 'left' });
    const strip = screen.container.querySelector('.strip')!.getBoundingClientRect();
    const body = screen.container.querySelector('.body')!.getBoundingClientRect();
    expect(strip.top).toBeGreaterThanOrEqual(body.bottom - 2);
    const first = offZero('grade-2').beginsExact / exactPerUnit('cm');
    await space(screen, first).click();
    await expect.element(screen.getByText('1 space', { exact: true })).toBeVisible();
  });

  test('inches can be chosen', async () => {
    const { screen } = await show(SpacesLesson);
    await screen.getByRole('button', { name: 'inches' }).click();
    const task = offZeroTask('grade-2', 'inches', seededRandom(seed));
    await say(screen, numberOf(task.answerExact, task));
    await expect.element(screen.getByText(rulerRightWords['off-zero'])).toBeVisible();
  });
});

const nameTwo = (screen: Screen, lower: number) =>
  screen.getByRole('button', { name: `${lower} and ${lower + 1}`, exact: true }).click();

describe('between the numbers', () => {
  test('a younger child names the two numbers, then the nearer one', async () => {
    const { screen } = await show(BetweenLesson);
    const task = between('grade-2');
    const [lower, upper] = wholesAround(task);
    await nameTwo(screen, lower);
    const nearer = task.answerExact / exactPerUnit('cm');
    const farther = nearer === lower ? upper : lower;
    await screen.getByRole('button', { name: `${farther} cm`, exact: true }).click();
    await expect.element(screen.getByText(slipWords['farther-whole'].hints[0])).toBeVisible();
    await screen.getByRole('button', { name: `${nearer} cm`, exact: true }).click();
    await expect.element(screen.getByText(rulerRightWords['between-marks'])).toBeVisible();
  });

  test('two numbers that are not beside the end are asked about, without a number', async () => {
    const { screen } = await show(BetweenLesson);
    const [lower] = wholesAround(between('grade-2'));
    const pairs = screen.getByRole('button', { name: /^\d+ and \d+$/ });
    expect(pairs.elements()).toHaveLength(4);
    const others = pairs.elements().map(({ textContent }) => Number.parseInt(textContent, 10));
    await nameTwo(
      screen,
      others.find((each) => each !== lower)!,
    );
    await expect.element(screen.getByText(twoNumbersHints[0])).toBeVisible();
    expect(screen.getByRole('region', { name: 'Help' }).element().textContent).not.toMatch(/\d/);
    await expect.element(screen.getByRole('textbox')).not.toBeInTheDocument();
  });

  test('a third grader then writes the part', async () => {
    const { screen } = await show(BetweenLesson, { stage: 'grade-3', hand: 'right' });
    const task = between('grade-3');
    await nameTwo(screen, wholesAround(task)[0]);
    const { slip, exact } = task.slips[0]!;
    await say(screen, numberOf(exact, task));
    await expect.element(screen.getByText(slipWords[slip].right)).toBeVisible();
    await say(screen, numberOf(task.answerExact, task));
    await expect.element(screen.getByText(rulerRightWords['between-marks'])).toBeVisible();
  });
});

describe('does zero touch the table?', () => {
  test('the answer is kept, and a gap has three ways out', async () => {
    const { notebook, screen } = await show(ZeroLesson);
    await screen.getByRole('button', { name: 'There is a gap under the 0.', exact: true }).click();
    await expect.element(screen.getByText('It is in the notebook.')).toBeVisible();
    expect(screen.getByRole('listitem').elements()).toHaveLength(3);
    expect(notebook.contents.rulerChecks).toMatchObject([
      { day: '2026-03-09', zeroAtEdge: false, takenBack: null },
    ]);
  });

  test('the next check is the one that counts, and both are kept', async () => {
    const { notebook, screen } = await show(ZeroLesson);
    await notebook.write({
      ...{ kind: 'ruler-checked', day: civilDay('2026-03-09'), zeroAtEdge: false },
    });
    await screen.getByRole('button', { name: 'Look at a ruler again' }).click();
    await screen.getByRole('button', { name: 'The 0 touches the table.', exact: true }).click();
    await expect
      .element(screen.getByRole('heading', { name: /stand your ruler on the soil/ }))
      .toBeVisible();
    expect(notebook.contents.rulerChecks.map(({ zeroAtEdge }) => zeroAtEdge)).toEqual([
      false,
      true,
    ]);
  });
});

test('how to measure is shown one picture at a time, forward and back', async () => {
  const { screen } = await show(HowLesson);
  const heading = () => screen.getByRole('heading', { level: 2 });
  for (const [index, { text }] of howWords.entries()) {
    await expect.element(heading()).toHaveTextContent(`${index + 1}. ${text}`);
    if (index < 4) await screen.getByRole('button', { name: 'Next' }).click();
  }
  await screen.getByRole('button', { name: 'Back' }).click();
  await expect.element(heading()).toHaveTextContent(`4. ${howWords[3].text}`);
});
