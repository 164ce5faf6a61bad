import '#ui/look';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { EntryDraft, LessonId, Reading } from '#core/journal';
import { answerText, questionText } from '#ui/ladder-words';
import { PlanPage } from '#ui/lessons';
import { newMemoryShelf } from '#store';
import { aLesson, aboutLog, lessonIn, logNamed, fillTheDisk, sampleNotebook } from './a-lesson';
import LessonIn from './LessonIn.svelte';

vi.mock('$app/navigation', () => ({ goto: vi.fn(() => Promise.resolve()) }));

beforeEach(async () => {
  await page.viewport(1000, 1400);
});

type Notebook = Awaited<ReturnType<typeof sampleNotebook>>;
const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
const part = (name: string) => page.getByRole('region', { name });
const show = (notebook: Notebook, id: LessonId) =>
  render(LessonIn, { notebook, id, page: PlanPage });
const askedIn = (notebook: Notebook, id: LessonId) =>
  lessonIn(notebook, id).questions.flatMap((each) => (each.kind === 'asked' ? each.question : []));

describe('the parts of a plan', () => {
  test('are put into own words, left out, and brought back', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    await part('What to accept').getByRole('button', { name: 'Change' }).click();
    await page.getByLabelText('Your words for “What to accept”').fill('Any bar\nthat is near');
    await button('Keep these words').click();
    const lines = part('What to accept').getByRole('listitem');
    await expect.element(lines.first()).toHaveTextContent('Any bar');
    expect(lines.elements()).toHaveLength(2);
    await expect.element(part('What to accept').getByText('Your words')).toBeVisible();

    await part('What to accept').getByRole('button', { name: 'Change' }).click();
    await button('The plan’s words again').click();
    await expect.element(part('What to accept')).not.toHaveTextContent('that is near');

    await part('When to stop').getByRole('button', { name: 'Change' }).click();
    await button('Leave it out').last().click();
    await expect.element(part('When to stop')).toHaveTextContent('Left out of this lesson.');
    await button('Put it back').click();
    await expect.element(part('When to stop').getByRole('listitem').first()).toBeVisible();
  });

  test('what was typed stays when it cannot be saved', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    fillTheDisk(notebook);
    await part('What to accept').getByRole('button', { name: 'Change' }).click();
    const words = page.getByLabelText('Your words for “What to accept”');
    await words.fill('Any bar');
    await button('Keep these words').click();
    await expect.poll(() => notebook.trouble?.kind).toBe('no-room');
    await expect.element(words).toHaveValue('Any bar');
    await button('Add a question of your own').click();
    await page.getByLabelText('Your question').fill('Which day was wet?');
    await button('Add it').click();
    await expect.element(page.getByLabelText('Your question')).toHaveValue('Which day was wet?');
  });

  test('changed in two windows at once lose nothing, not even what is half typed', async () => {
    const shelf = newMemoryShelf();
    const notebook = await sampleNotebook(shelf);
    const id = await aLesson(notebook);
    const other = await sampleNotebook(shelf);
    await show(notebook, id);
    await part('What to accept').getByRole('button', { name: 'Change' }).click();
    await page.getByLabelText('Your words for “What to accept”').fill('Half typed');
    await other.write({
      ...{ kind: 'lesson-changed', lesson: id, to: { texts: { materials: 'Only a pencil' } } },
    });
    await expect.element(part('Lay ready')).toHaveTextContent('Only a pencil');
    await button('Keep these words').click();
    await expect.element(part('What to accept')).toHaveTextContent('Half typed');
    expect(lessonIn(other, id).changes.texts).toEqual({
      ...{ materials: 'Only a pencil', accept: 'Half typed' },
    });
  });

  test('the cautions have no button to change them', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook, { purpose: 'picture-graph-of-kinds' });
    await show(notebook, id);
    await expect.element(part('With care')).toBeVisible();
    expect(part('With care').getByRole('listitem').elements().length).toBeGreaterThan(0);
    expect(part('With care').getByRole('button').elements()).toHaveLength(0);
  });

  test('the name is changed, and is the plan’s own again', async () => {
    const notebook = await sampleNotebook();
    await show(notebook, await aLesson(notebook));
    const planned = page.getByRole('heading', { level: 1 }).element().textContent;
    await button('Change the name').click();
    await page.getByLabelText('Name of the lesson').fill('Bars for Pip');
    await button('Keep this name').click();
    await expect.element(page.getByRole('heading', { level: 1 })).toHaveTextContent('Bars for Pip');
    await notebook.undo();
    await expect.element(page.getByRole('heading', { level: 1 })).toHaveTextContent(planned);
  });
});

describe('the questions of a plan', () => {
  test('stand without their answers until those are asked for', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    const [first] = askedIn(notebook, id);
    const answer = page.getByText(answerText(first!.answer), { exact: true }).first();
    await expect.element(page.getByText(questionText(first!)).first()).toBeVisible();
    await expect.element(answer).not.toBeVisible();
    await button('Open all answers').click();
    await expect.element(answer).toBeVisible();
  });

  test('one is swapped for another, one is left out, and undo brings it back', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    const before = askedIn(notebook, id);
    const between = before.findIndex(({ level }) => level === 'between');
    await button('Another in its place').nth(between).click();
    await button('Take this one').first().click();
    await expect.poll(() => askedIn(notebook, id)).not.toEqual(before);
    // The keys go on from where they were.
    await expect.poll(() => document.activeElement?.textContent).toBe('Another in its place');
    const swapped = askedIn(notebook, id);
    expect(swapped).toHaveLength(before.length);
    expect(swapped[between]!.level).toBe('between');
    await part('Talk').getByRole('button', { name: 'Leave it out' }).first().click();
    await expect.poll(() => askedIn(notebook, id)).toHaveLength(before.length - 1);
    await notebook.undo();
    await expect.poll(() => askedIn(notebook, id)).toEqual(swapped);
  });

  test('one of the grown-up’s own is added with its answer, never an empty one', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    await button('Add a question of your own').click();
    await button('Add it').click();
    await expect.element(page.getByRole('alert')).toHaveTextContent('Write the question first.');
    await page.getByLabelText('Your question').fill('Which day were we away?');
    await page.getByLabelText('Its answer, or what you would accept').fill('The Sunday');
    await button('Add it').click();
    await expect.element(page.getByText('Which day were we away?')).toBeVisible();
    expect(lessonIn(notebook, id).changes.own).toEqual([
      { level: 'read', text: 'Which day were we away?', answer: 'The Sunday' },
    ]);
  });

  test('another set is chosen by one press', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    const before = askedIn(notebook, id);
    await button('Another set of questions').click();
    await expect.poll(() => askedIn(notebook, id)).not.toEqual(before);
    await expect.element(page.getByText('Other questions were chosen.')).toBeVisible();
  });

  test('all left out: the page says what can be done', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook, { minutes: 20 });
    await show(notebook, id);
    await notebook.write({ kind: 'lesson-changed', lesson: id, to: { questions: [] } });
    await expect.element(page.getByText(/^No question is in this lesson/)).toBeVisible();
  });

  test('one whose number was put right since is told plainly, and can be replaced', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await show(notebook, id);
    const { from, to } = lessonIn(notebook, id).facts.choice;
    const readings = notebook.contents.logBySpecimen
      .get(logNamed(notebook, 'Window bean').id)!
      .readings.filter(({ day, takenBack }) => day >= from && day <= to && !takenBack);
    const putRight = ({ id: reading, day, counted }: Reading): EntryDraft => ({
      ...{ kind: 'reading-corrected', reading, why: 'Read again' },
      to: {
        day,
        measured: { ...counted, text: String(counted.exact / 1e7 + 1), exact: counted.exact + 1e7 },
      },
    });
    await notebook.write(...readings.map((reading) => putRight(reading)));
    const { withdrawn } = lessonIn(notebook, id);
    expect(withdrawn.length).toBeGreaterThan(0);
    await expect.element(page.getByText(/taken out: /)).toBeVisible();
    for (const question of withdrawn) {
      await expect.element(page.getByText(questionText(question)).first()).toBeVisible();
    }
    await button('Leave it out for good').first().click();
    await expect.poll(() => lessonIn(notebook, id).withdrawn.length).toBe(withdrawn.length - 1);
  });
});

describe('the finished graph', () => {
  test('is in sight only when it is asked for, and is covered anew when a drawing is begun', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const { container } = await show(notebook, id);
    const pictures = () => container.querySelectorAll('figure.drawing-picture').length;
    // Only the worked example on practice numbers.
    expect(pictures()).toBe(1);
    await button('Show it to me').click();
    expect(pictures()).toBe(2);
    const { choice, graph, stage } = lessonIn(notebook, id).facts;
    await notebook.write({
      ...{ kind: 'drawing-begun', drawing: notebook.newId(), ...aboutLog(notebook, 'Window bean') },
      ...{ graph, stage, level: 'frame-given', choice: { ...choice } },
    });
    await expect.poll(pictures).toBe(1);
    await expect.element(page.getByText(/drawing of this log is still open/)).toBeVisible();
  });
});
