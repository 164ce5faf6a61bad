import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { evidenceOf } from '#core/lessons';
import type { LessonId } from '#core/journal';
import { answerText, questionText } from '#ui/ladder-words';
import { RunPage } from '#ui/lessons';
import { aLesson, lessonIn, sampleNotebook } from './a-lesson';
import LessonIn from './LessonIn.svelte';

beforeEach(async () => {
  await page.viewport(820, 1180);
});

type Notebook = Awaited<ReturnType<typeof sampleNotebook>>;
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const heading = () => page.getByRole('heading', { level: 2 });
const show = (notebook: Notebook, id: LessonId) =>
  render(LessonIn, { notebook, id, page: RunPage });
const goTo = async (name: string | RegExp): Promise<void> => {
  for (let step = 0; step < 20; step += 1) {
    const { textContent } = heading().element();
    if (typeof name === 'string' ? textContent === name : name.test(textContent)) return;
    await button('Next').click();
  }
  throw new Error(`There is no screen ${name}`);
};

describe('a lesson that is given', () => {
  test('goes on and back one thing a screen, the heading read out, with no clock', async () => {
    const notebook = await sampleNotebook();
    const { container } = await show(notebook, await aLesson(notebook));
    await expect.element(button('Back')).toBeDisabled();
    await button('Next').click();
    expect(document.activeElement).toBe(heading().element());
    await expect.element(page.getByText('About 4 minutes')).toBeVisible();
    expect(container.querySelector('[role="timer"], time, progress')).toBeNull();
    const opener = heading().element().textContent;
    await button('Next').click();
    await button('Back').click();
    expect(heading().element().textContent).toBe(opener);
  });

  test('keeps its place when the page is made anew, and can begin again', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const first = await show(notebook, id);
    await goTo(/Question 2 of/);
    await first.unmount();
    await show(notebook, id);
    await expect.element(heading()).toHaveTextContent(/Question 2 of/);
    await button('From the beginning').click();
    await expect.element(page.getByText(/^Step 1 of/)).toBeVisible();
  });

  test('shows the title of the worked example only after it was wondered about', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const { title } = lessonIn(notebook, id).plan.example.drawing;
    const { container } = await show(notebook, id);
    await goTo(/wonder/i);
    expect(container.textContent).not.toContain(title);
    await button('Uncover the title').click();
    expect(container.textContent).toContain(title);
  });

  test('has its answers behind a press', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    await goTo(/Question 1 of/);
    const [first] = lessonIn(notebook, id).questions;
    if (first?.kind !== 'asked') throw new Error('No question');
    const answer = page.getByText(answerText(first.question.answer), { exact: true }).first();
    await expect.element(answer).not.toBeVisible();
    await page.getByText('Answer, slips, easier, further').click();
    await expect.element(answer).toBeVisible();
  });

  test('of twenty minutes has two questions, and more for who wants them', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook, { minutes: 20 });
    const { spare } = lessonIn(notebook, id);
    await show(notebook, id);
    await goTo('Question 2 of 2');
    await page.getByText('More questions, if the child wants them').click();
    await expect.element(page.getByText(questionText(spare[0]!))).toBeVisible();
  });

  test('is written as given once, however often it is pressed', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    await goTo('The end');
    const given = button('Write that it was given today').element() as HTMLButtonElement;
    given.click();
    given.click();
    await expect.element(page.getByText('It is written: given today.')).toBeVisible();
    expect(notebook.contents.lessons.get(id)!.givenOn).toEqual(['2026-05-04']);
    await expect.poll(() => button(/given today/).elements()).toHaveLength(0);
  });

  test('is run to its end by keys alone', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook, { minutes: 20 });
    await show(notebook, id);
    (button('Next').element() as HTMLButtonElement).focus();
    for (let step = 0; step < 20; step += 1) {
      if (heading().element().textContent === 'The end') break;
      while (document.activeElement?.textContent?.trim() !== 'Next') await userEvent.tab();
      await userEvent.keyboard('{Enter}');
    }
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => notebook.contents.lessons.get(id)!.givenOn).toHaveLength(1);
  });
});

describe('a note of how an answer went', () => {
  test('names the child, shows as evidence, and is taken back by a second press', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    await goTo(/Question 1 of/);
    const pip = [...notebook.contents.people.values()].find(({ name }) => name === 'Pip')!;
    const seen = () =>
      evidenceOf(notebook.contents, pip.id, 'grade-2', 'UTC').skills.flatMap(({ pieces }) =>
        pieces.filter(({ of }) => of.some((each) => each.kind === 'answer')),
      );
    await page.getByRole('radio', { name: 'Pip' }).click();
    await button('With help').click();
    await expect.element(button('With help')).toHaveAttribute('aria-pressed', 'true');
    expect(seen().map(({ how }) => how)).toContain('with-help');
    await button('Alone').click();
    await expect.element(button('Alone')).toHaveAttribute('aria-pressed', 'true');
    expect(new Set(seen().map(({ how }) => how))).toEqual(new Set(['alone']));
    await button('Alone').click();
    await expect.element(button('Alone')).toHaveAttribute('aria-pressed', 'false');
    expect(seen()).toEqual([]);
  });

  test('is not needed: a lesson run without one writes nothing about any child', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    const before = notebook.contents.evidence.length;
    await goTo('The end');
    expect(notebook.contents.evidence).toHaveLength(before);
    expect(notebook.contents.answers).toHaveLength(0);
  });
});
