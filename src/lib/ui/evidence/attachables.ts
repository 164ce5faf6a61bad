import { civilDayAt, formatDay, yearOf, type CivilDay } from '#core/calendar';
import { lastDrawing } from '#core/graphs';
import { momentOfStamp, type DrawingRecord, type Notebook, type PersonId } from '#core/journal';
import type { Evidence, EvidenceOf } from '#core/lessons';
import { graphNames, isGraphKind } from '#ui/graph-words';
import { pieceWords } from './piece-words';

/** Something a note can be attached to, as a choice in a list. */
export interface Attachable {
  /** The id of the drawing, or of the entry of the answer. */
  readonly id: string;
  readonly day: CivilDay;
  readonly name: string;
}

/** A drawing's own title, or else what kind of graph it is and of what. */
export const drawingName = (record: DrawingRecord, { investigations }: Notebook): string => {
  const title = lastDrawing(record.versions)?.title.trim();
  if (title) return title;
  const graph = isGraphKind(record.graph) ? graphNames[record.graph] : 'Drawing';
  const log = investigations.get(record.investigation)?.title;
  return log ? `${graph}: ${log}` : graph;
};

/** The day a drawing was done, or last saved, where the family is. */
export const drawingDay = (
  { finishedAt, versions, begunAt }: DrawingRecord,
  timeZone: string,
): CivilDay => civilDayAt(momentOfStamp(finishedAt ?? versions.at(-1)?.at ?? begunAt), timeZone);

/** The drawings of a child, and those nobody put a name to; the newest first. */
export const drawingsToAttach = (
  notebook: Notebook,
  person: PersonId,
  timeZone: string,
): readonly Attachable[] =>
  [...notebook.drawings.values()]
    .filter(({ author }) => author === person || author === null || !notebook.people.has(author))
    .filter(({ versions }) => lastDrawing(versions) !== null)
    .map((record) => {
      const day = drawingDay(record, timeZone);
      return { id: record.id, day, name: `${drawingName(record, notebook)} (${short(day)})` };
    })
    .reverse();

/** What the child answered and asked, and what nobody put a name to; the newest first. */
export const answersToAttach = (
  notebook: Notebook,
  { skills, nobodys }: Pick<Evidence, 'skills' | 'nobodys'>,
): readonly Attachable[] => {
  const shown = [
    ...skills.flatMap(({ pieces }) =>
      pieces.flatMap(({ day, of }) => of.map((each) => ({ day, of: each }))),
    ),
    ...nobodys.map(({ day, of }) => ({ day, of })),
  ];
  const byId = new Map(
    shown.flatMap(({ day, of }) => {
      const id = answerId(of);
      if (id === null) return [];
      const name = `${clipped(pieceWords(of, notebook).what)} (${short(day)})`;
      return [[id, { id, day, name }] as const];
    }),
  );
  return [...byId.values()].sort((left, right) => (left.day < right.day ? 1 : -1)).slice(0, most);
};

/** The entry a note names when it is about this; null for what is no answer. */
export const answerId = (of: EvidenceOf): string | null =>
  of.kind === 'answer' ||
  of.kind === 'own-answer' ||
  of.kind === 'review' ||
  of.kind === 'own-question'
    ? of.entry
    : null;

/** A list that is longer is no help; older ones are opened from their own card. */
const most = 40;

const short = (day: CivilDay): string => `${formatDay(day, 'short')} ${yearOf(day)}`;

const clipped = (text: string): string => (text.length > 60 ? `${text.slice(0, 58)} …` : text);
