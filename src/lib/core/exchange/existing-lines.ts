import type { EntryId, Note, Reading, SpecimenLog, Taken, TakenBack } from '#core/journal';
import { isLengthUnit, type Unit } from '#core/measure';
import type { LineWord } from './columns';
import { countedOf } from './counted-of';
import type { RowContent } from './row-content';

/** What is in the notebook already: a specimen's log, and where notes are read, its notes. */
export type ExistingLog = SpecimenLog & { readonly notes?: readonly Note[] };

/** A line of the log by what it says, or said before it was corrected. */
export interface ExistingLine {
  readonly entry: EntryId;
  /** How each thing it ever said stands now. What a family struck out is still known. */
  readonly wordByKey: ReadonlyMap<string, LineWord>;
}

export const existingLinesOf = ({
  readings,
  dayMarks,
  kindNotes,
  notes = [],
}: ExistingLog): readonly ExistingLine[] => [
  ...readings.map((reading) => ({ entry: reading.id, wordByKey: wordByReadingKey(reading) })),
  ...dayMarks.map((mark) => lineOf(mark, { ...mark, kind: 'state' })),
  ...kindNotes.map((kindNote) => lineOf(kindNote, { ...kindNote, kind: 'kind-word' })),
  ...notes.map((note) => lineOf(note, { ...note, kind: 'note' })),
];

/** Equal keys say the same: one day, one time, one value, in whatever unit it was written. */
export function keyOfContent(content: RowContent): string {
  if (content.kind === 'reading') {
    const { exact, unit } = countedOf(content);
    return readingKey(content.day, content.time, exact, unit);
  }
  if (content.kind === 'state') return `${content.day}|${content.time ?? ''}|is|${content.state}`;
  if (content.kind === 'kind-word') return `${content.day}||word|${content.word}`;
  return `${content.day}||note|${content.text}`;
}

function wordByReadingKey(reading: Reading): ReadonlyMap<string, LineWord> {
  const wordByKey = new Map<string, LineWord>();
  for (const older of reading.crossedOut) wordByKey.set(takenKey(older), 'crossed out');
  return wordByKey.set(takenKey(reading), reading.takenBack ? 'taken back' : 'counts');
}

const lineOf = (
  { id, takenBack }: { readonly id: EntryId; readonly takenBack: TakenBack | null },
  content: RowContent,
): ExistingLine => ({
  entry: id,
  wordByKey: new Map([[keyOfContent(content), takenBack ? 'taken back' : 'counts']]),
});

const takenKey = ({ day, time, counted }: Taken): string =>
  readingKey(day, time, counted.exact, counted.unit);

const readingKey = (day: string, time: string | undefined, exact: number, unit: Unit): string =>
  `${day}|${time ?? ''}|${isLengthUnit(unit) ? 'nm' : 'things'}|${exact}`;
