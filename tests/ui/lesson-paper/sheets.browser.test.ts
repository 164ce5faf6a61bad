import '#ui/look';
import { beforeEach, describe, expect, test } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import ChildSheets from '../../../src/lib/ui/lesson-paper/ChildSheets.svelte';
import GrownUpSheets from '../../../src/lib/ui/lesson-paper/GrownUpSheets.svelte';
import WordCards from '../../../src/lib/ui/lesson-paper/WordCards.svelte';
import { wordIds } from '#core/lessons';
import { answerText, easierText, questionText } from '#ui/ladder-words';
import { watchForText, wordText } from '#ui/lesson-words';
import { paperLesson } from './paper-lessons';

beforeEach(async () => {
  await page.viewport(1200, 1000);
});

const about = { name: 'Window bean', isMadeUp: true, standards: ['2.MD.A.4' as const] };
const sheetsNamed = (whose: string) => page.getByRole('region', { name: whose, exact: true });
const textOf = (whose: string): string =>
  sheetsNamed(whose).element().textContent.replace(/\s+/g, ' ');
const showChild = (lesson = paperLesson('week'), more = {}) =>
  render(ChildSheets, {
    ...{ lesson, title: 'Our bean', size: 'letter' as const, level: 'frame-given' as const },
    ...{ isLeftHanded: false, isMadeUp: true, ...more },
  });
const showGrownUp = (lesson = paperLesson('week'), isCovered = false) =>
  render(GrownUpSheets, { lesson, title: 'Our bean', size: 'letter', about, isCovered });

describe('the child’s sheets', () => {
  test('have every question with its room, the one sentence, and no answer in words', async () => {
    const lesson = paperLesson('week');
    await showChild(lesson);
    await expect.element(sheetsNamed('The child’s sheets')).toBeVisible();
    const text = textOf('The child’s sheets');
    for (const each of lesson.questions) {
      if (each.kind === 'own' || each.question.template === 'H9') continue;
      expect(text).toContain(questionText(each.question));
      expect(text).not.toContain(easierText(each.question));
      if (each.question.answer.kind === 'idea')
        expect(text).not.toContain(answerText(each.question.answer));
    }
    expect(text).toContain('Our graph tells us');
    expect(text).toContain('Nickname');
    expect(text).toContain('Practice numbers, not ours');
  });

  test('rule lines as wide as the grade writes: 5/8, 1/2 and 3/8 of an inch', async () => {
    for (const [stage, inches] of [
      ['grade-1', 5 / 8],
      ['grade-2', 1 / 2],
      ['grade-3', 3 / 8],
    ] as const) {
      const shown = await showChild(paperLesson('weather', { stage }));
      await expect.element(sheetsNamed('The child’s sheets')).toBeVisible();
      const line = document.querySelector('.lesson-sheet .sentence .line')!;
      // A tenth of a millimetre: what a CSS length in millimetres is rounded to.
      expect(Math.abs(parseFloat(getComputedStyle(line).height) / 96 - inches)).toBeLessThan(0.004);
      await shown.unmount();
    }
  });

  test('say that half is drawn already, where it is', async () => {
    await showChild(paperLesson('week', { minutes: 20 }), { level: 'half-drawn' });
    await expect.element(page.getByText('Draw the rest from the table.').first()).toBeVisible();
    await expect.element(page.getByRole('img', { name: /4 bars/ })).toBeVisible();
  });
});

describe('the grown-up’s sheets', () => {
  test('have the purpose’s standard, each answer, the mistakes to watch for, and the example marked', async () => {
    const lesson = paperLesson('week');
    await showGrownUp(lesson);
    await expect.element(sheetsNamed('The grown-up’s sheets')).toBeVisible();
    const text = textOf('The grown-up’s sheets');
    for (const each of lesson.questions)
      if (each.kind === 'asked')
        expect(text.toLowerCase()).toContain(answerText(each.question.answer).toLowerCase());
    for (const id of lesson.plan.watchFor) expect(text).toContain(watchForText(id));
    expect(text).toContain('2.MD.A.4');
    expect(text).toContain('Practice numbers, not ours. Draw this one yourself');
    await expect.element(page.getByRole('img', { name: /6 bars/ })).toBeVisible();
  });

  test('are covered while the child draws, and ready for the printer all the same', async () => {
    await showGrownUp(paperLesson('week'), true);
    await expect.element(page.getByText(/drawing of this log is still open/)).toBeVisible();
    await expect.poll(() => document.querySelectorAll('.lesson-sheet').length).toBe(2);
    expect(document.querySelector('.lesson-sheet')!.checkVisibility()).toBe(false);
    await page.getByRole('button', { name: 'Show it to me' }).click();
    await expect.element(sheetsNamed('The grown-up’s sheets')).toBeVisible();
  });
});

test('word cards have the word, what it means and a picture', async () => {
  const { words } = paperLesson('week').plan;
  await render(WordCards, { words, size: 'a4' });
  const cards = page.getByRole('listitem');
  await expect.element(cards.first()).toBeVisible();
  expect(cards.elements().map((card) => card.querySelector('.word')?.textContent)).toEqual(
    words.map((id) => wordText(id).word),
  );
  for (const card of cards.elements()) expect(card.querySelector('svg path')).not.toBeNull();
});

test('every word of a day has its picture', async () => {
  await render(WordCards, { words: wordIds, size: 'a4' });
  const cards = page.getByRole('listitem');
  await expect.element(cards.first()).toBeVisible();
  for (const card of cards.elements())
    expect([card.textContent, card.querySelector('svg path') !== null]).toEqual([
      card.textContent,
      true,
    ]);
});
