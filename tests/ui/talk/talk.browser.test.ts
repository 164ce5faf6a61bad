import '#ui/look';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import { civilDay } from '#core/calendar';
import { drawRight } from '#core/graphs';
import type { DrawingId, JournalEntry, LessonId } from '#core/journal';
import type { AskedQuestion, QuestionId } from '#core/questions';
import type { NotebookState } from '#notebook';
import { answerText, questionText } from '#ui/ladder-words';
import { anId } from '../../core/journal/entries';
import { aNotebook, asked, factsCalled, later, lesson, lessonWith } from './a-talk';
import TalkOf from './TalkOf.svelte';

async function talkAbout(
  name: string,
  questions: readonly AskedQuestion[],
  more: readonly JournalEntry[] = [],
): Promise<NotebookState> {
  localStorage.clear();
  const notebook = await aNotebook([...lessonWith(name, questions), ...more]);
  await render(TalkOf, { notebook });
  return notebook;
}

const theQuestion = (question: AskedQuestion) =>
  page.getByRole('heading', { name: questionText(question) });
const say = page.getByRole('button', { name: 'That is my answer' });
const graph = page.getByRole('listbox', { name: 'The graph' });
const kept = (notebook: NotebookState) =>
  notebook.contents.answers.map(({ question, answer, how, lesson: of }) => ({
    ...{ template: question['template'], answer, how, lesson: of },
  }));
const figures = async (text: string): Promise<void> => {
  for (const figure of text) await page.getByRole('button', { name: figure, exact: true }).click();
};
const one = (name: string, template: QuestionId) => asked(name, template)[0]!;
const bars = 'bars';

describe('an answer that is a number', () => {
  const question = one(bars, 'R1');
  const number = answerText(question.answer).split(' ')[0]!;

  test('is given on the pad with its unit, and kept as alone when it is right at first', async () => {
    const notebook = await talkAbout(bars, [question]);
    await expect.element(theQuestion(question)).toBeVisible();
    await figures(number);
    await page.getByRole('radio', { name: 'cm' }).click();
    await say.click();
    await expect.element(page.getByText('Yes. You read the top of the bar.')).toBeVisible();
    expect(kept(notebook)).toEqual([
      { template: 'R1', answer: answerText(question.answer), how: 'alone', lesson },
    ]);
  });

  test('is given by keys alone: figures, the unit with the arrows, Enter', async () => {
    const notebook = await talkAbout(bars, [question]);
    await page.getByRole('textbox', { name: 'My number' }).click();
    await userEvent.keyboard(number);
    page.getByRole('radio', { name: 'cm' }).element().focus();
    await userEvent.keyboard(' ');
    await page.getByRole('textbox', { name: 'My number' }).click();
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('Yes. You read the top of the bar.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ how: 'alone' }]);
  });

  test('without its unit is asked about, not called anything, and is with help after that', async () => {
    const notebook = await talkAbout(bars, [question]);
    await figures(number);
    await say.click();
    await expect
      .element(page.getByText('A number, good. What does it count? Pick a unit.'))
      .toBeVisible();
    expect(kept(notebook)).toEqual([]);
    await page.getByRole('radio', { name: 'cm' }).click();
    await say.click();
    await expect.element(page.getByText('Yes. You read the top of the bar.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ how: 'with-help' }]);
  });

  test('after the second try the grown-up is offered, and looking together is kept as seen', async () => {
    const notebook = await talkAbout(bars, [question]);
    for (const tried of ['98', '99']) {
      await page.getByRole('button', { name: 'clear' }).click();
      await figures(tried);
      await page.getByRole('radio', { name: 'cm' }).click();
      await say.click();
    }
    await page.getByRole('button', { name: 'With my grown-up' }).click();
    await page.getByText('For the grown-up').click();
    await expect.element(page.getByText(answerText(question.answer)).first()).toBeVisible();
    await page.getByRole('button', { name: 'We looked together' }).click();
    await expect.element(page.getByText('You looked at it together. It is kept.')).toBeVisible();
    expect(kept(notebook)).toEqual([{ template: 'R1', answer: '99 cm', how: 'seen', lesson }]);
  });
});

describe('an answer that is a place of the graph', () => {
  const question = one(bars, 'R3');
  const day = answerText(question.answer);

  test('is tapped, and the nearest column is taken', async () => {
    const notebook = await talkAbout(bars, [question]);
    const option = page.getByRole('option', { name: day });
    const box = option.element().getBoundingClientRect();
    const paper = graph.element().getBoundingClientRect();
    await graph.click({
      position: { x: box.left - paper.left + box.width / 2 + 3, y: paper.height / 2 },
    });
    await expect.element(option).toHaveAttribute('aria-selected', 'true');
    await say.click();
    await expect.element(page.getByText('Yes. You found the bar that is so tall.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'R3', answer: day, how: 'alone' }]);
  });

  test('is found with the arrow keys and given with Enter', async () => {
    const notebook = await talkAbout(bars, [question]);
    graph.element().focus();
    const at = page
      .getByRole('option')
      .elements()
      .findIndex((each) => each.getAttribute('aria-label') === day);
    for (let step = 0; step <= at; step += 1) await userEvent.keyboard('{ArrowRight}');
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText('Yes. You found the bar that is so tall.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ answer: day, how: 'alone' }]);
  });

  test('is chosen from a list where the table is looked at', async () => {
    const notebook = await talkAbout(bars, [question]);
    await page.getByRole('button', { name: 'The table' }).click();
    await page.getByRole('button', { name: day }).click();
    await say.click();
    await expect.element(page.getByText('Yes. You found the day and its number.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ answer: day, how: 'alone' }]);
  });

  test('of two days and how many days that is, is tapped and chosen', async () => {
    const stretch = asked('quick bean', 'C7')[0]!;
    if (stretch.answer.kind !== 'interval') throw new Error('C7 has no interval');
    const { from, to, gapDays } = stretch.answer;
    const notebook = await talkAbout('quick bean', [stretch]);
    for (const each of [from, to]) {
      const name = answerText({ kind: 'day', day: each });
      const option = page.getByRole('option', { name }).element().getBoundingClientRect();
      const paper = graph.element().getBoundingClientRect();
      await graph.click({
        position: { x: option.left - paper.left + option.width / 2, y: paper.height / 2 },
      });
    }
    await say.click();
    await expect.element(page.getByText('Say how many days, too.')).toBeVisible();
    await page.getByRole('button', { name: String(gapDays), exact: true }).click();
    await say.click();
    await expect.element(page.getByText('Yes. That step up is the biggest one.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'C7', how: 'alone' }]);
  });

  test('is a pile of a line plot', async () => {
    const pile = one('growth', 'C9');
    const notebook = await talkAbout('growth', [pile]);
    graph.element().focus();
    const at = page
      .getByRole('option')
      .elements()
      .findIndex((each) => each.getAttribute('aria-label') === answerText(pile.answer));
    expect(at).toBeGreaterThanOrEqual(0);
    for (let step = 0; step <= at; step += 1) await userEvent.keyboard('{ArrowRight}');
    await say.click();
    await expect.element(page.getByText('Yes. That pile is the tallest.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'C9', how: 'alone' }]);
  });
});

describe('answers of several places and of rows', () => {
  test('two days of a question that asks for two are tapped, and one alone is asked about', async () => {
    const question = one('one week', 'C5');
    if (question.answer.kind !== 'days') throw new Error('C5 has no days');
    const notebook = await talkAbout('one week', [question]);
    const [first, second] = question.answer.days;
    const tap = async (day: typeof first): Promise<void> => {
      const name = answerText({ kind: 'day', day: day! });
      const box = page.getByRole('option', { name }).element().getBoundingClientRect();
      const paper = graph.element().getBoundingClientRect();
      await graph.click({ position: { x: box.left - paper.left + box.width / 2, y: 60 } });
    };
    await tap(first);
    await say.click();
    await expect.element(page.getByText('That is one day. Which day goes with it?')).toBeVisible();
    await tap(second);
    await say.click();
    await expect.element(page.getByText('Yes. You looked from one day to the next.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'C5', how: 'with-help' }]);
  });

  test('a row of a picture graph is tapped, and why is told to a grown-up', async () => {
    const question = one('weather', 'Y8');
    const notebook = await talkAbout('weather', [question]);
    const name = answerText(question.answer);
    const box = page.getByRole('option', { name }).element().getBoundingClientRect();
    const paper = graph.element().getBoundingClientRect();
    await graph.click({ position: { x: 90, y: box.top - paper.top + box.height / 2 } });
    await say.click();
    await expect.element(page.getByText('Say why you think so, too.')).toBeVisible();
    await page.getByText('For the grown-up').click();
    await page.getByRole('button', { name: 'Alone' }).click();
    await expect
      .poll(() => kept(notebook))
      .toMatchObject([{ template: 'Y8', answer: name, how: 'alone' }]);
  });
});

describe('an answer that is an order', () => {
  test('is tapped one after the other, and the last can be taken back', async () => {
    const question = one('shadow', 'C6');
    if (question.answer.kind !== 'order') throw new Error('C6 has no order');
    const names = question.answer.things.map(answerText);
    const notebook = await talkAbout('shadow', [question]);
    const thing = (name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) });
    await thing(names.at(-1)!).click();
    await say.click();
    await expect.element(page.getByText('Put them all in order first.')).toBeVisible();
    await page.getByRole('button', { name: 'Take one back' }).click();
    for (const name of names) await thing(name).click();
    await say.click();
    await expect.element(page.getByText('Yes. You began with the least.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'C6', how: 'alone' }]);
  });
});

describe('an answer in words', () => {
  const plot = 'rain';

  test('of a question to read is chosen from three sentences or more', async () => {
    const question = one(plot, 'R5');
    const notebook = await talkAbout(plot, [question]);
    const choices = page.getByRole('list').last().getByRole('listitem');
    expect(choices.elements().length).toBeGreaterThanOrEqual(4);
    await page.getByRole('button', { name: answerText(question.answer), exact: true }).click();
    await say.click();
    await expect.poll(() => kept(notebook).length).toBe(1);
    expect(kept(notebook)).toMatchObject([{ template: 'R5', how: 'alone' }]);
  });

  test('of a question behind the data is told to a grown-up, who says how it went', async () => {
    const question = one(bars, 'H1');
    const notebook = await talkAbout(bars, [question]);
    await page.getByRole('button', { name: answerText(question.answer), exact: true }).click();
    await say.click();
    await expect.element(page.getByText('Tell it to your grown-up.')).toBeVisible();
    expect(kept(notebook)).toEqual([]);
    await page.getByText('For the grown-up').click();
    await page.getByRole('button', { name: 'With some help' }).click();
    await expect.element(page.getByText('Thank you. Your answer is kept.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([{ template: 'H1', how: 'with-help' }]);
  });

  test('may be said in the child’s own way, written or not', async () => {
    const notebook = await talkAbout(bars, [one(bars, 'H1')]);
    await page.getByRole('button', { name: 'I say it my own way.', exact: true }).click();
    await page.getByRole('textbox').fill('where the bean comes out');
    await say.click();
    await page.getByText('For the grown-up').click();
    await page.getByRole('button', { name: 'Alone' }).click();
    await expect.element(page.getByText('Thank you. Your answer is kept.')).toBeVisible();
    expect(kept(notebook)).toMatchObject([
      { template: 'H1', answer: 'where the bean comes out', how: 'alone' },
    ]);
  });
});

describe('the talk', () => {
  test('puts a question off, and it comes back', async () => {
    const [first, second] = asked(bars, 'R1', 'R3') as [AskedQuestion, AskedQuestion];
    await talkAbout(bars, [first, second]);
    await page.getByRole('button', { name: 'Not now' }).click();
    await expect.element(theQuestion(second)).toBeVisible();
    await page.getByRole('button', { name: 'Not now' }).click();
    await expect.element(page.getByText('Some are left for later.')).toBeVisible();
    await page.getByRole('button', { name: 'Go to those now' }).click();
    await expect.element(theQuestion(first)).toBeVisible();
  });

  test('counts nothing and calls nothing wrong', async () => {
    const question = one(bars, 'R1');
    await talkAbout(bars, [question]);
    await figures('99');
    await page.getByRole('radio', { name: 'cm' }).click();
    await say.click();
    await expect.element(page.getByRole('status').last()).toBeVisible();
    expect(document.body.textContent).not.toMatch(/wrong|score|points|\d+ of \d+|✗|★/i);
  });

  test('reads nothing aloud by itself', async () => {
    let spoken = 0;
    const speak = speechSynthesis.speak.bind(speechSynthesis);
    speechSynthesis.speak = (utterance) => {
      spoken += 1;
      speak(utterance);
    };
    await talkAbout(bars, [one(bars, 'R1')]);
    await expect.element(theQuestion(one(bars, 'R1'))).toBeVisible();
    expect(spoken).toBe(0);
    speechSynthesis.speak = speak;
  });
});

describe('while the child is drawing the same log', () => {
  const facts = factsCalled('bars');
  const drawing = anId<DrawingId>(960);
  const begun = later(300, {
    ...{ kind: 'drawing-begun', drawing, graph: 'bar-graph', stage: 'grade-2' },
    ...{ investigation: facts.choice.investigation, level: 'frame-given' },
    choice: { ...facts.choice },
  });

  test('no graph is shown, and what only a graph can answer waits for the drawing', async () => {
    const [first, ofGraph] = asked(bars, 'R1', 'R7') as [AskedQuestion, AskedQuestion];
    await talkAbout(bars, [first, ofGraph], [begun]);
    await expect.element(theQuestion(first)).toBeVisible();
    await expect.element(page.getByRole('region', { name: 'The table' })).toBeVisible();
    expect(document.querySelector('.drawing-picture')).toBeNull();
    await page.getByRole('button', { name: 'Not now' }).click();
    await expect.element(page.getByText(/Finish your drawing first/)).toBeVisible();
    await expect
      .element(page.getByRole('link', { name: 'Go to my drawing' }))
      .toHaveAttribute('href', expect.stringContaining(drawing));
  });

  test('the child’s own drawing is shown once it is finished', async () => {
    const paper = { ...drawRight(facts.right), title: 'Tall and taller' };
    await talkAbout(bars, asked(bars, 'R3'), [
      begun,
      later(301, { kind: 'drawing-saved', drawing, paper, ticked: [] }),
      later(302, { kind: 'drawing-finished', drawing }),
    ]);
    await expect.element(page.getByText('Tall and taller')).toBeVisible();
    await expect.element(page.getByRole('button', { name: 'My graph' })).toBeVisible();
    await expect.element(graph).toBeVisible();
  });
});

describe('a question of one’s own', () => {
  const given = [1, 2, 3].flatMap((number) => {
    const id = anId<LessonId>(970 + number);
    return [
      ...lessonWith(bars, asked(bars, 'R1'), id, 400 + number * 10),
      later(405 + number * 10, { kind: 'lesson-given', lesson: id, day: civilDay('2026-05-01') }),
    ];
  });

  test('is offered after three lessons, written, and comes up the next time', async () => {
    localStorage.clear();
    const notebook = await aNotebook(given);
    const { unmount } = await render(TalkOf, { notebook });
    await page.getByRole('button', { name: 'Make up a question' }).click();
    await page.getByRole('button', { name: 'Keep my question' }).click();
    await expect.element(page.getByText('Write your question first.')).toBeVisible();
    await page.getByRole('button', { name: 'How tall was it on …' }).click();
    await page.getByLabelText('My question').fill('How tall was it on Monday?');
    await page.getByLabelText('What is the answer?').fill('5 cm');
    await page.getByRole('button', { name: 'Keep my question' }).click();
    await expect.element(page.getByText('Ask for two things at a time.')).toBeVisible();
    await page.getByLabelText('My question').fill('How many more than on Friday?');
    await page.getByRole('button', { name: 'Keep my question' }).click();
    await expect
      .element(page.getByText('Your question is kept. It comes up next time.'))
      .toBeVisible();
    expect(notebook.contents.ownQuestions).toMatchObject([
      { level: 'read', text: 'How tall was it on Monday?', answer: '5 cm' },
      { level: 'between', text: 'How many more than on Friday?' },
    ]);
    await unmount();
    await render(TalkOf, { notebook });
    await page.getByRole('button', { name: 'Not now' }).click();
    const heading = page.getByRole('heading', { name: 'How tall was it on Monday?' });
    await expect.element(heading).toBeVisible();
    await page.getByRole('textbox').fill('5 CM.');
    await say.click();
    await expect.element(page.getByText('Yes. That is what the writer says, too.')).toBeVisible();
    expect(notebook.contents.answers).toMatchObject([
      {
        how: 'alone',
        question: { own: { level: 'read', text: 'How tall was it on Monday?' } },
      },
    ]);
  });
});
