import { readBackup } from '#core/exchange';
import { stampOf, type EntryDraft, type JournalEntry, type LessonId } from '#core/journal';
import { lessonDrafts, type PurposeId } from '#core/lessons';
import { questionsOf, type AskedQuestion, type QuestionId } from '#core/questions';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore, type JournalStore } from '#store';
import sample from '../../../demo/sample-notebook.json?raw';
import { sampleLessons } from '../../core/questions/lessons-of-sample';
import { sampleNotebook } from '../../core/graphs/sample-logs';
import { anId, written } from '../../core/journal/entries';

const backup = readBackup(sample);
if (!backup.ok) throw new Error(`The sample cannot be read: ${backup.error.kind}`);
export const sampleEntries: readonly JournalEntry[] = backup.value.entries;

export const personCalled = (name: string) =>
  [...sampleNotebook.people.values()].find((each) => each.name === name)!.id;
export const wren = personCalled('Wren');

/** Saturday 2 May 2026, eight in the morning: the day after the sample's last entry. */
const clock: Clock = {
  nowMs: () => Date.UTC(2026, 4, 2, 8),
  timeZone: () => 'UTC',
  randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
};

export const lesson = anId<LessonId>(950);

/** A later entry of the sample's family, in the order they are written. */
export const later = (number: number, draft: EntryDraft, author = wren): JournalEntry => ({
  ...written(5000 + number, draft, { author }),
  at: stampOf(Date.UTC(2026, 4, 1, 9) + number * 60_000),
});

const purposes: Readonly<Record<string, PurposeId>> = {
  'weather-pictures-grade-2': 'picture-graph-of-kinds',
  'two-beans-grade-3': 'line-graph-guided',
  'rain-amounts-grade-2': 'line-plot-of-amounts',
  'window-bean-bars-grade-2': 'value-bars',
  'shadow-grade-2': 'line-graph-guided',
};

/** The questions of a sample lesson by their template, the first way each can be asked. */
export const asked = (name: string, ...templates: readonly QuestionId[]): AskedQuestion[] =>
  templates.map((template) => {
    const found = questionsOf(sampleLessons[name]!).find((each) => each.template === template);
    if (!found) throw new Error(`${name} asks no ${template}`);
    return found;
  });

/** A lesson with these questions, as the lesson maker writes it. */
export function lessonWith(
  name: string,
  questions: readonly AskedQuestion[],
  id: LessonId = lesson,
  from = 100,
): readonly JournalEntry[] {
  const facts = sampleLessons[name]!;
  const about = { investigation: facts.choice.investigation };
  const wish = { purpose: purposes[name]!, minutes: 30, seed: 1 } as const;
  const drafts = lessonDrafts(id, about, facts, wish);
  const to = { madeOn: facts.today, questions: questions.map((each) => ({ ...each })) };
  return [...drafts, { kind: 'lesson-changed', lesson: id, to } as const].map((draft, index) =>
    later(from + index, draft),
  );
}

/** A notebook in memory with the sample's family and these entries more. */
export async function aNotebook(
  entries: readonly JournalEntry[],
  store: JournalStore = openMemoryJournalStore(),
): Promise<NotebookState> {
  await store.append([...sampleEntries, ...entries]);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  notebook.chooseAuthor(wren);
  return notebook;
}
