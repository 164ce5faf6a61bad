import { civilDay } from '#core/calendar';
import { readBackup } from '#core/exchange';
import type { GraphKind, TableChoice } from '#core/graphs';
import {
  foldEntries,
  stampOf,
  type EntryDraft,
  type JournalEntry,
  type LessonId,
} from '#core/journal';
import { lessonDrafts, type PurposeId } from '#core/lessons';
import {
  lessonFactsOf,
  questionsOf,
  type AskedQuestion,
  type LessonFacts,
  type QuestionId,
} from '#core/questions';
import { DeviceMemory, NotebookState, type Clock } from '#notebook';
import { openMemoryJournalStore, type JournalStore } from '#store';
import sample from '../../../demo/sample-notebook.json?raw';
import { sampleLessons } from '../../core/questions/lessons-of-sample';
import { inCm, sampleChoice, sampleNotebook, sampleToday } from '../../core/graphs/sample-logs';
import { anId, bean, begun, heights, took, written } from '../../core/journal/entries';
import { beforeTeaching } from '../../demo/before-teaching';

const backup = readBackup(sample);
if (!backup.ok) throw new Error(`The sample cannot be read: ${backup.error.kind}`);
export const sampleEntries = beforeTeaching(backup.value.entries);

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

/** A bean of our own beside the sample: one step up is far larger than the others. */
export const quickBean: readonly JournalEntry[] = [
  ...begun.slice(2),
  ...[1, 2, 6, 7, 8].map((height, index) => took(20 + index, `2026-03-0${index + 2}`, height)),
];

const factsOf = (graph: GraphKind, choice: TableChoice): LessonFacts => {
  const notebook = foldEntries([...sampleEntries, ...quickBean]);
  const facts = lessonFactsOf(notebook, choice, graph, 'grade-2', sampleToday);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
};

interface Talked {
  readonly facts: LessonFacts;
  readonly purpose: PurposeId;
}

const talked: Readonly<Record<string, Talked>> = {
  weather: {
    facts: sampleLessons['weather-pictures-grade-2']!,
    purpose: 'picture-graph-of-kinds',
  },
  'two beans': { facts: sampleLessons['two-beans-grade-3']!, purpose: 'line-graph-guided' },
  bars: { facts: sampleLessons['window-bean-bars-grade-2']!, purpose: 'value-bars' },
  rain: { facts: sampleLessons['rain-amounts-grade-2']!, purpose: 'line-plot-of-amounts' },
  shadow: { facts: sampleLessons['shadow-grade-2']!, purpose: 'line-graph-guided' },
  growth: {
    facts: factsOf(
      'line-plot',
      sampleChoice('growth-amounts', ['Window bean'], ['2026-03-02', '2026-03-30'], inCm),
    ),
    purpose: 'line-plot-of-amounts',
  },
  'one week': {
    facts: factsOf(
      'bar-graph',
      sampleChoice('day-values', ['Window bean'], ['2026-03-09', '2026-03-12'], inCm),
    ),
    purpose: 'value-bars',
  },
  'quick bean': {
    facts: factsOf('bar-graph', {
      ...{ source: 'day-values', investigation: heights, specimens: [bean], told: inCm },
      ...{ from: civilDay('2026-03-02'), to: civilDay('2026-03-06'), mostKinds: null },
    }),
    purpose: 'value-bars',
  },
};
export const factsCalled = (name: string): LessonFacts => talked[name]!.facts;
export const everyFacts = Object.values(talked).map(({ facts }) => facts);

/** The questions of a sample lesson by their template, the first way each can be asked. */
export const asked = (name: string, ...templates: readonly QuestionId[]): AskedQuestion[] =>
  templates.map((template) => {
    const found = questionsOf(factsCalled(name)).find((each) => each.template === template);
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
  const { facts, purpose } = talked[name]!;
  const about = { investigation: facts.choice.investigation };
  const wish = { purpose, minutes: 30, seed: 1 } as const;
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
  await store.append([...sampleEntries, ...quickBean, ...entries]);
  const notebook = new NotebookState(store, clock, new DeviceMemory());
  await notebook.open();
  notebook.chooseAuthor(wren);
  return notebook;
}
