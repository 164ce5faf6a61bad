import { isLengthUnit, type Measured } from '#core/measure';
import type { DayMark, KindNote, Note, Notebook, Reading, Taken, TakenBack } from '#core/journal';
import { momentOfStamp, type PersonId, type Stamp } from '#core/journal';
import { wordByState, type LineWord, type LogHeading } from './columns';
import { plainDecimal } from './plain-decimal';

/** One line of a log as the cells of our own table; a cell that is not named is empty. */
export type LogLine = Readonly<Partial<Record<LogHeading, string>>>;

/**
 * The lines a reading has: each older reading that was crossed out, oldest first, then the last.
 * `who` wrote down that very line; `line who` crossed it out.
 */
export function readingLines(reading: Reading, notebook: Notebook): readonly LogLine[] {
  const { leaves, weather, note = '' } = reading;
  const beside = {
    leaves: leaves === undefined ? '' : String(leaves),
    weather: weather ?? '',
    note,
  };
  let writer = reading.author;
  const crossedOut = reading.crossedOut.map((older) => {
    const who = nickname(notebook, writer);
    writer = older.author;
    return { ...takenCells(older), who, ...beside, ...ending('crossed out', older, notebook) };
  });
  const last = { ...takenCells(reading), who: nickname(notebook, writer), ...beside };
  return [...crossedOut, { ...last, ...standing(reading.takenBack, notebook) }];
}

export const dayMarkLine = (mark: DayMark, notebook: Notebook): LogLine => ({
  day: mark.day,
  time: mark.time ?? '',
  state: wordByState[mark.state],
  why: mark.why ?? '',
  who: nickname(notebook, mark.author),
  ...standing(mark.takenBack, notebook),
});

export const kindNoteLine = (kindNote: KindNote, notebook: Notebook): LogLine => ({
  day: kindNote.day,
  state: 'word',
  word: kindNote.word,
  who: nickname(notebook, kindNote.author),
  ...standing(kindNote.takenBack, notebook),
});

export const noteLine = (note: Note, notebook: Notebook): LogLine => ({
  day: note.day,
  state: 'note',
  note: note.text,
  who: nickname(notebook, note.author),
  ...standing(note.takenBack, notebook),
});

function takenCells({ day, time, counted, all, spanDays }: Taken): LogLine {
  return {
    time: time ?? '',
    ...{
      day,
      state: 'number',
      reading: counted.text,
      unit: counted.unit,
      mark: counted.mark,
    },
    value: plainDecimal(counted.exact, counted.unit),
    cm: isLengthUnit(counted.unit) ? plainDecimal(counted.exact, 'cm') : '',
    'span days': spanDays === 1 ? '' : String(spanDays),
    'all readings': all.length === 1 ? '' : all.map(writtenWithMark).join('; '),
  };
}

const writtenWithMark = ({ text, unit, mark }: Measured): string => `${text} ${unit} to ${mark}`;

const standing = (takenBack: TakenBack | null, notebook: Notebook): LogLine =>
  takenBack ? ending('taken back', takenBack, notebook) : { line: 'counts' };

const ending = (
  line: LineWord,
  { why = '', author, at }: { why?: string; author: PersonId | null; at: Stamp },
  notebook: Notebook,
): LogLine => ({
  line,
  'line why': why,
  'line who': nickname(notebook, author),
  'line when': new Date(momentOfStamp(at)).toISOString(),
});

const nickname = (notebook: Notebook, person: PersonId | null): string =>
  (person && notebook.people.get(person)?.name) ?? '';
