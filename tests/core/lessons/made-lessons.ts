import { civilDay } from '#core/calendar';
import { readBackup } from '#core/exchange';
import type { GraphKind, TableChoice } from '#core/graphs';
import {
  decodeEntry,
  foldEntries,
  isStamp,
  type DeviceId,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
  type LessonId,
  type Notebook,
  type Stage,
} from '#core/journal';
import { lessonDrafts, lessonOf, type Lesson, type LessonWish } from '#core/lessons';
import { lessonFactsOf, type LessonFacts } from '#core/questions';
import sample from '../../../demo/sample-notebook.json?raw';
import { anId } from '../journal/entries';

const backup = readBackup(sample);
if (!backup.ok) throw new Error(`The sample cannot be read: ${backup.error.kind}`);

export const sampleEntries: readonly JournalEntry[] = backup.value.entries;
export const lessonId = anId<LessonId>(501);

/** Drafts as a device keeps them: through text and through the door of the journal. */
export const kept = (
  drafts: readonly EntryDraft[],
  day: string,
  time: string,
  firstNumber = 1000,
): readonly JournalEntry[] =>
  drafts.map((draft, index) => {
    const at = `${day}T${time}.000Z-${String(index).padStart(5, '0')}`;
    if (!isStamp(at)) throw new Error(`${at} is no stamp`);
    const entry = decodeEntry(
      JSON.parse(
        JSON.stringify({
          ...{ id: anId<EntryId>(firstNumber + index), at, device: anId<DeviceId>(601) },
          ...{ author: null, v: 1, ...draft },
        }),
      ),
    );
    if (!entry.ok) throw new Error(JSON.stringify(entry.error));
    return entry.value;
  });

export interface ToMake {
  /** The day it is made on, after all that was read that day. */
  readonly on: string;
  readonly graph: GraphKind;
  readonly stage: Stage;
  readonly choice: TableChoice;
  readonly wish: LessonWish;
}

/** What was in the made-up notebook at a moment. */
export const entriesUntil = (day: string, time = '17:00:00'): readonly JournalEntry[] =>
  sampleEntries.filter(({ at }) => at < `${day}T${time}`);

export const factsOn = ({ on, graph, stage, choice }: ToMake, notebook: Notebook): LessonFacts => {
  const facts = lessonFactsOf(notebook, choice, graph, stage, civilDay(on));
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
};

/** The entries of a lesson made of the made-up notebook, as that day's notebook writes them. */
export const lessonEntries = (make: ToMake): readonly JournalEntry[] => {
  const facts = factsOn(make, foldEntries(entriesUntil(make.on)));
  const about = { investigation: make.choice.investigation };
  return kept(lessonDrafts(lessonId, about, facts, make.wish), make.on, '17:00:00');
};

export const lessonIn = (entries: readonly JournalEntry[]): Lesson => {
  const notebook = foldEntries(entries);
  const lesson = lessonOf(notebook, notebook.lessons.get(lessonId)!);
  if (!lesson.ok) throw new Error(JSON.stringify(lesson.error));
  return lesson.value;
};
