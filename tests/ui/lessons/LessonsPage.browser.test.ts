import '#ui/look';
import { goto } from '$app/navigation';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { InvestigationId, LessonId, PersonId, SpecimenId } from '#core/journal';
import { LessonsPage } from '#ui/lessons';
import type { NotebookState } from '#notebook';
import { aNotebook } from '../records/a-notebook';
import WithNotebook from '../records/WithNotebook.svelte';
import { aLesson, aboutLog, lessonIn, logNamed, fillTheDisk, sampleNotebook } from './a-lesson';
import OpenLessonOf from './OpenLessonOf.svelte';

const address = vi.hoisted(() => ({ url: new URL('http://localhost/lessons') }));
vi.mock('$app/state', () => ({ page: address }));
vi.mock('$app/navigation', () => ({ goto: vi.fn(() => Promise.resolve()) }));

beforeEach(async () => {
  vi.mocked(goto).mockClear();
  address.url = new URL('http://localhost/lessons');
  await page.viewport(1280, 1400);
});

const show = (notebook: NotebookState) => render(WithNotebook, { notebook, page: LessonsPage });
const showLog = (notebook: NotebookState, name: string) => {
  address.url = new URL(`http://localhost/lessons?of=${logNamed(notebook, name).id}`);
  return show(notebook);
};
const offer = (name: RegExp) => page.getByRole('listitem').filter({ hasText: name });
const makes = () => page.getByRole('button', { name: 'Make this lesson' });

/** A bean with three readings, one a day, and a second-grade child. */
async function youngLog(): Promise<NotebookState> {
  const notebook = await aNotebook();
  const investigation = notebook.newId<InvestigationId>();
  const specimen = notebook.newId<SpecimenId>();
  const days = ['2026-03-05', '2026-03-06', '2026-03-07'] as const;
  await notebook.write(
    {
      ...{ kind: 'person-added', person: notebook.newId<PersonId>(), name: 'Wren', shape: 'leaf' },
      ...{ colour: 2, role: 'child', stage: 'grade-3', hand: 'right' },
    },
    {
      ...{ kind: 'investigation-begun', investigation, title: 'Our bean', question: 'How tall?' },
      ...{ quantity: 'plant-height', unit: 'cm', mark: '1 cm', kinds: [], where: '', tool: '' },
      ...{ weekdays: [1, 2, 3, 4, 5, 6, 7], when: '', origin: 'ours' },
    },
    {
      ...{ kind: 'specimen-added', specimen, investigation, name: 'Bean' },
      startedOn: '2026-03-05' as never,
    },
    ...days.map((day, index) => ({
      ...{ kind: 'reading-taken' as const, specimen, day: day as never },
      measured: {
        ...{ text: `${index + 2}`, unit: 'cm' as const, mark: '1 cm' as const },
        exact: (index + 2) * 1e7,
      },
    })),
  );
  return notebook;
}

describe('an empty notebook', () => {
  test('is met kindly, with two ways to go on', async () => {
    await show(await aNotebook());
    await expect.element(page.getByText(/there is no log yet/)).toBeVisible();
    await expect
      .element(page.getByRole('link', { name: 'Begin to measure' }))
      .toHaveAttribute('href', '/begin');
    await expect
      .element(page.getByRole('button', { name: 'Look around a made-up notebook' }))
      .toBeVisible();
  });
});

describe('what a lesson can be for', () => {
  test('stands in plain words with the code of its standard, those ready today first', async () => {
    const notebook = await sampleNotebook();
    await showLog(notebook, 'Window bean');
    const headings = page.getByRole('heading', { level: 3 }).elements();
    const named = headings.map(({ textContent }) => textContent);
    expect(named.slice(0, 2)).toEqual(['Ready today', 'Not ready yet']);
    const bars = offer(/Show each measure as a bar/);
    await expect.element(bars.getByText('2.MD.A.4')).toBeVisible();
    await expect.element(bars.getByText(/how much longer/)).toBeVisible();
  });

  test('what is not ready says how much more, and what can be done instead', async () => {
    await show(await youngLog());
    await expect.element(page.getByText(/No graph lesson of this log is ready yet/)).toBeVisible();
    expect(makes().elements()).toHaveLength(0);
    const bars = offer(/Show each measure as a bar/);
    await expect.element(bars.getByText('1 more day with a number.')).toBeVisible();
    await expect.element(bars.getByRole('link', { name: 'Begin a shadow day' })).toBeVisible();
    await expect.element(page.getByRole('link', { name: 'Read a ruler' })).toBeVisible();
  });

  test('the grade of the child is chosen already, and another one offers other lessons', async () => {
    await show(await youngLog());
    await expect.element(page.getByRole('radio', { name: /Third grade/ })).toBeChecked();
    const third = page.getByRole('heading', { level: 4 }).elements().length;
    await page.getByRole('radio', { name: /First grade/ }).click();
    expect(page.getByRole('heading', { level: 4 }).elements().length).toBeLessThan(third);
  });

  test('one press makes it and opens its plan, with the table and minutes that were chosen', async () => {
    const notebook = await sampleNotebook();
    await showLog(notebook, 'Window bean');
    await page.getByRole('radio', { name: '40 minutes' }).click();
    const kinds = offer(/with pictures/);
    await kinds.getByRole('combobox').selectOptions('1');
    const chosen = kinds.getByRole('combobox').element() as HTMLSelectElement;
    expect(chosen.selectedOptions[0]!.textContent).toContain('The weather');
    await kinds.getByRole('button', { name: 'Make this lesson' }).click();
    await expect.poll(() => vi.mocked(goto).mock.calls).toHaveLength(1);
    const [id] = [...notebook.contents.lessons.keys()];
    expect(vi.mocked(goto)).toHaveBeenCalledWith(`/lessons/plan?lesson=${id}`);
    const { record, facts } = lessonIn(notebook, id!);
    expect([record.minutes, record.stage, facts.choice.source]).toEqual([
      ...[40, 'grade-2', 'weather-days'],
    ]);
  });

  test('when there is no room to save it, nothing is made and the page stays', async () => {
    const notebook = await sampleNotebook();
    await showLog(notebook, 'Yard gauge');
    fillTheDisk(notebook);
    await makes().first().click();
    await expect.poll(() => notebook.trouble?.kind).toBe('no-room');
    expect(vi.mocked(goto)).not.toHaveBeenCalled();
    expect(notebook.contents.lessons.size).toBe(0);
    await expect.element(makes().first()).toBeEnabled();
  });
});

describe('lessons made before', () => {
  test('stand with the days they were given on, and lead to plan, teaching, paper and talk', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    await notebook.write({ kind: 'lesson-given', lesson: id, day: notebook.today });
    await notebook.write({ kind: 'lesson-changed', lesson: id, to: { title: 'Bars for Pip' } });
    await show(notebook);
    const made = page.getByRole('region', { name: 'Lessons made before' });
    await expect.element(made.getByRole('heading', { name: 'Bars for Pip' })).toBeVisible();
    await expect.element(made.getByText(/Given on Mon 4 May/)).toBeVisible();
    const links = made.getByRole('link').elements() as HTMLAnchorElement[];
    expect(links.map((link) => link.getAttribute('href'))).toEqual(
      ['/lessons/plan', '/lessons/run', '/lessons/paper', '/talk'].map(
        (path) => `${path}?lesson=${id}`,
      ),
    );
  });

  test('one whose log was removed is kept, and says so', async () => {
    const notebook = await sampleNotebook();
    await aLesson(notebook);
    const { investigation } = aboutLog(notebook, 'Window bean');
    await notebook.write({ kind: 'investigation-removed', investigation });
    await show(notebook);
    const made = page.getByRole('region', { name: 'Lessons made before' });
    await expect.element(made.getByText(/put back under Records/)).toBeVisible();
    expect(made.getByRole('link').elements()).toHaveLength(0);
  });
});

describe('the lesson an address asks for', () => {
  const open = (notebook: NotebookState, id: string) => {
    address.url = new URL(`http://localhost/lessons/plan?lesson=${encodeURIComponent(id)}`);
    return render(OpenLessonOf, { notebook });
  };

  test('is opened', async () => {
    const notebook = await sampleNotebook();
    await open(notebook, await aLesson(notebook));
    await expect.element(page.getByText('Opened: value-bars')).toBeVisible();
  });

  test.each(['', 'nonsense', '<b>', '00000000-0000-7000-8000-000000000001'])(
    'that is not in the notebook is said kindly: “%s”',
    async (id) => {
      await open(await sampleNotebook(), id);
      await expect.element(page.getByText(/is not in this notebook/)).toBeVisible();
      await expect.element(page.getByRole('link', { name: 'All lessons' })).toBeVisible();
    },
  );

  test('whose log has gone says where it can be put back', async () => {
    const notebook = await sampleNotebook();
    const id = await aLesson(notebook);
    const { investigation } = aboutLog(notebook, 'Window bean');
    await notebook.write({ kind: 'investigation-removed', investigation });
    await open(notebook, id);
    await expect.element(page.getByText(/put back under Records/)).toBeVisible();
    await notebook.undo();
    await expect.element(page.getByText('Opened: value-bars')).toBeVisible();
  });

  test('of a later program is kept and said so', async () => {
    const notebook = await sampleNotebook();
    const id = notebook.newId<LessonId>();
    const { investigation } = aboutLog(notebook, 'Window bean');
    await notebook.write({
      ...{ kind: 'lesson-made', lesson: id, investigation, graph: 'hologram', choice: {} },
      ...{ purpose: 'to-amaze', minutes: 30, stage: 'grade-2', seed: 1 },
    });
    await open(notebook, id);
    await expect.element(page.getByText(/newer Morning Measure/)).toBeVisible();
  });
});
