import sample from '../../../demo/sample-notebook.json';
import type { JournalEntry, LessonId, Specimen } from '#core/journal';
import {
  lessonDrafts,
  lessonOf,
  purposesReady,
  type Lesson,
  type PurposeId,
  type PurposeOffer,
} from '#core/lessons';
import { lessonFactsOf } from '#core/questions';
import { NotebookState } from '#notebook';
import { newMemoryShelf, openMemoryJournalStore } from '#store';
import { fixedClock, memoryOf } from '../records/a-notebook';
import { beforeTeaching } from '../../demo/before-teaching';

/** Noon of Monday 4 May 2026: the made-up notebook is complete. */
const clock = { ...fixedClock(), nowMs: () => Date.UTC(2026, 4, 4, 12) };

/** The made-up notebook in memory; given a shelf, another window on it. */
export async function sampleNotebook(shelf = newMemoryShelf()): Promise<NotebookState> {
  const notebook = new NotebookState(openMemoryJournalStore(shelf), clock, memoryOf());
  await notebook.open();
  if (notebook.entries.length === 0) {
    await notebook.bringIn(beforeTeaching(sample.entries as unknown as readonly JournalEntry[]));
  }
  return notebook;
}

export const logNamed = (notebook: NotebookState, name: string): Specimen =>
  [...notebook.contents.specimens.values()].find((each) => each.name === name)!;

export const aboutLog = (notebook: NotebookState, name: string) => {
  const { investigation, id } = logNamed(notebook, name);
  return { investigation, specimen: id };
};

/** Makes a lesson as the page does, with a seed of its own. */
export async function aLesson(
  notebook: NotebookState,
  {
    log = 'Window bean',
    purpose = 'value-bars' as PurposeId,
    seed = 7,
    minutes = 30 as 20 | 30 | 40,
  } = {},
): Promise<LessonId> {
  const about = aboutLog(notebook, log);
  const offers = purposesReady(notebook.contents, about, 'grade-2', notebook.today);
  const { choice, purpose: offered } = offers.find(
    (each) => each.purpose.id === purpose,
  ) as PurposeOffer;
  const facts = lessonFactsOf(notebook.contents, choice, offered.graph, 'grade-2', notebook.today);
  if (!facts.ok) throw new Error(facts.error.kind);
  const id = notebook.newId<LessonId>();
  await notebook.write(...lessonDrafts(id, about, facts.value, { purpose, minutes, seed }));
  return id;
}

export const lessonIn = (notebook: NotebookState, id: LessonId): Lesson => {
  const lesson = lessonOf(notebook.contents, notebook.contents.lessons.get(id)!);
  if (!lesson.ok) throw new Error(lesson.error.kind);
  return lesson.value;
};

/** From now on nothing can be saved. */
export const fillTheDisk = ({ store }: NotebookState): void => {
  store.append = () =>
    Promise.resolve({ ok: false, error: { kind: 'no-room', detail: 'full' } } as const);
};
