import '#ui/look';
import { addDays, civilDay, weekdayName } from '#core/calendar';
import type { Entry } from '#core/journal';
import { sumAnswer, type ReviewItem, type Sum } from '#core/lessons';
import { ReviewPage, ReviewPaperPage, reviewWords as words } from '#ui/review';
import { foldEntries } from '#core/journal';
import { reviewFor } from '#core/lessons';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { answerOf } from '../../../src/lib/ui/review/answer-of';
import { equationText, storyOf } from '../../../src/lib/ui/review/story-words';
import { begun, child, took } from '../../core/journal/entries';
import { aNotebook } from '../records/a-notebook';
import WithNotebook from '../records/WithNotebook.svelte';

vi.mock('$app/state', () => ({ page: { url: new URL('http://localhost/review') } }));

/** Monday 9 March 2026; a bean was read on each day of the week before. */
const today = civilDay('2026-03-09');
const heights = [2, 3, 5, 9, 11, 13, 14];
const log: readonly Entry[] = heights.map((height, index) =>
  took(200 + index, addDays(civilDay('2026-03-02'), index), height),
);
const options = { stage: 'grade-2', family: 'centimetres' } as const;

beforeEach(() => localStorage.clear());

const show = async (entries: readonly Entry[] = log, width = 820) => {
  await page.viewport(width, 1000);
  const notebook = await aNotebook();
  await notebook.bringIn([...begun, ...entries]);
  const screen = await render(WithNotebook, { notebook, page: ReviewPage });
  return { notebook, screen };
};
type Screen = Awaited<ReturnType<typeof show>>['screen'];

const press = (screen: Screen, name: string) =>
  screen.getByRole('button', { name, exact: true }).click();

const write = async (screen: Screen, text: string) => {
  await screen.getByRole('textbox', { name: words.mine }).fill(text);
  await press(screen, words.say);
};

/** The items of the page, for the child who writes. */
const items = (entries: readonly Entry[] = log): readonly ReviewItem[] =>
  reviewFor(foldEntries([...begun, ...entries]), child, today, options).flatMap((place) =>
    'task' in place ? [place] : [],
  );
const sumItem = (): { readonly sum: Sum } =>
  items().flatMap(({ task }) => (task.of === 'sum' ? [task] : []))[0]!;

/** Goes past everything until the sum stands there. */
const toSum = async (screen: Screen): Promise<Sum> => {
  const { sum } = sumItem();
  await press(screen, words.measure.later);
  for (const { task } of items()) {
    if (task.of === 'sum') break;
    await press(screen, words.skip);
  }
  await expect.element(screen.getByRole('heading', { name: storyOf(sum).ask })).toBeVisible();
  return sum;
};

describe('an item', () => {
  test('that is found rests, and its answer stands there with the unit', async () => {
    const { notebook, screen } = await show();
    const sum = await toSum(screen);
    await write(screen, String(sumAnswer(sum)));
    await expect.element(screen.getByText(words.yes)).toBeVisible();
    await expect.element(screen.getByText(equationText(sum, true), { exact: true })).toBeVisible();
    expect(notebook.contents.reviews.map(({ outcome, answer }) => [outcome, answer])).toEqual([
      ['rest', `${sumAnswer(sum)} cm`],
    ]);
  });

  test('that is not found gets one helping question, another try, and then both look', async () => {
    const { notebook, screen } = await show();
    const sum = await toSum(screen);
    await write(screen, '97');
    await expect.element(screen.getByRole('status')).toBeVisible();
    expect(notebook.contents.reviews).toEqual([]);
    await write(screen, '96');
    await expect.element(screen.getByText(words.together)).toBeVisible();
    await expect.element(screen.getByText(words.comesAgain)).toBeVisible();
    await expect.element(screen.getByText(answerOf({ of: 'sum', sum })).last()).toBeVisible();
    expect(notebook.contents.reviews.map(({ outcome }) => outcome)).toEqual(['again']);
  });

  test('found at the second try rests as well', async () => {
    const { notebook, screen } = await show();
    const sum = await toSum(screen);
    await write(screen, '97');
    await write(screen, String(sumAnswer(sum)));
    await expect.element(screen.getByText(words.yes)).toBeVisible();
    expect(notebook.contents.reviews.map(({ outcome }) => outcome)).toEqual(['rest']);
  });

  test('does not take the same number twice, nor what is no number', async () => {
    const { notebook, screen } = await show();
    await toSum(screen);
    for (const text of ['', 'many', '97', '97', '97']) await write(screen, text);
    await expect.element(screen.getByText(words.lookAgain)).toBeVisible();
    expect(notebook.contents.reviews).toEqual([]);
  });

  test('never shows its answer in blocks or jumps before it is given', async () => {
    const { screen } = await show();
    const sum = await toSum(screen);
    await press(screen, words.help.blocks);
    await press(screen, words.help.jumps);
    const picture = screen.getByRole('img', { name: /^From/ });
    await expect.element(picture).toBeVisible();
    const numbers = [...picture.element().querySelectorAll('text')].map((each) =>
      each.textContent?.replace(/[+−]/, ''),
    );
    expect(numbers).toContain('?');
    expect(numbers).not.toContain(String(sumAnswer(sum)));
    expect(equationText(sum, false)).not.toMatch(new RegExp(`\\b${sumAnswer(sum)}\\b`));
    await expect.element(screen.getByText(equationText(sum, false), { exact: true })).toBeVisible();
  });
});

describe('a review', () => {
  test('is of one thing at a time, can be left, and goes on where it was left', async () => {
    const first = await show();
    await toSum(first.screen);
    const { sum } = sumItem();
    await write(first.screen, String(sumAnswer(sum)));
    await press(first.screen, words.next);
    await expect.element(first.screen.getByText(words.place(5, 6))).toBeVisible();
    await first.screen.unmount();
    const again = await render(WithNotebook, { notebook: first.notebook, page: ReviewPage });
    await expect.element(again.getByText(words.place(5, 6))).toBeVisible();
  });

  test('that is stopped says so kindly, and one more is there for who likes it', async () => {
    const { notebook, screen } = await show();
    await press(screen, words.measure.later);
    for (const _ of items()) await press(screen, words.skip);
    await press(screen, words.choice.stop);
    await expect.element(screen.getByRole('heading', { name: words.end.stop })).toBeVisible();
    await press(screen, words.end.more);
    await press(screen, words.choice.picks.sum);
    await expect.element(screen.getByRole('textbox', { name: words.mine })).toBeVisible();
    await press(screen, words.skip);
    await expect.element(screen.getByRole('heading', { name: words.end.stop })).toBeVisible();
    expect(notebook.contents.reviews).toEqual([]);
  });

  test('says neither how many were right nor how long it took', async () => {
    const { screen } = await show();
    const sum = await toSum(screen);
    await write(screen, String(sumAnswer(sum)));
    await press(screen, words.next);
    expect(screen.container.textContent).not.toMatch(/score|points|minute|second|right|wrong/i);
  });

  test('asks for no measure once it was taken today', async () => {
    const { screen } = await show([...log, took(300, today, 16)]);
    await expect.element(screen.getByText(words.place(2, 6))).toBeVisible();
  });

  test('of an empty notebook has made-up numbers, and each says so', async () => {
    const { screen } = await show([]);
    await press(screen, words.measure.later);
    const marked: boolean[] = [];
    for (const { task } of items([])) {
      await expect.element(screen.getByRole('button', { name: words.skip })).toBeVisible();
      if (task.of !== 'ruler') {
        await expect.element(screen.getByText(words.practice)).toBeVisible();
        marked.push(true);
      }
      await press(screen, words.skip);
    }
    expect(marked).toHaveLength(2);
  });
});

describe('the story of a sum', () => {
  const sum: Sum = {
    ...{ story: 'grew', thing: 'height', of: 'Bean', specimen: null, unit: 'cm' },
    first: { kind: 'day', day: civilDay('2026-03-02') },
    second: { kind: 'day', day: civilDay('2026-03-06') },
    ...{ start: 8, change: 5, result: 13, unknown: 'change', isPractice: false },
  };

  test.each(['start', 'change', 'result'] as const)(
    'asks for the %s and does not tell it',
    (unknown) => {
      const { told, ask } = storyOf({ ...sum, unknown });
      const said = [...told, ask].join(' ');
      const numbers = (said.match(/\d+/g) ?? []).map(Number);
      expect(numbers).not.toContain(sum[unknown]);
      expect(numbers).toHaveLength(2);
      expect(said).toContain(weekdayName(civilDay('2026-03-02'), 'long'));
    },
  );
});

describe('the printed review', () => {
  test('holds the items of the day on one sheet, and the answers on another that is hidden', async () => {
    await page.viewport(1280, 1000);
    const notebook = await aNotebook();
    await notebook.bringIn([...begun, ...log]);
    const screen = await render(WithNotebook, { notebook, page: ReviewPaperPage });
    const sheets = () => [...screen.container.querySelectorAll<HTMLElement>('.paper-sheet')];
    await expect.poll(() => sheets().length).toBe(2);
    const [forChild, answers] = sheets() as [HTMLElement, HTMLElement];
    const { sum } = sumItem();
    expect(forChild.textContent).toContain(storyOf(sum).ask);
    expect(forChild.textContent).not.toContain(equationText(sum, true));
    expect(answers.checkVisibility()).toBe(false);
    await press(screen, 'Show the answers here');
    expect(answers.checkVisibility()).toBe(true);
    for (const { task } of items()) expect(answers.textContent).toContain(answerOf(task));
    const work = forChild.querySelector('.work')!;
    const last = work.lastElementChild!.getBoundingClientRect().bottom;
    expect(last).toBeLessThanOrEqual(work.getBoundingClientRect().bottom);
  });
});
