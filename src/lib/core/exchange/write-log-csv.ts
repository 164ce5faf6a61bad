import type { InvestigationId, Note, Notebook } from '#core/journal';
import { logColumns } from './columns';
import { guardText } from './formula-guard';
import { dayMarkLine, kindNoteLine, noteLine, readingLines, type LogLine } from './log-lines';
import { writeCsv } from './write-csv';

/**
 * The log as our own table (see `logColumns`): every line of the investigations asked for, or of
 * all that are not removed. Investigations and specimens stand in the order they were begun, the
 * lines of each by day and time, notes that belong to no specimen behind them.
 * @example
 * writeLogCsv({ investigations: new Map(), specimens: new Map(), logBySpecimen: new Map(), notes: [] }).startsWith('\ufeffday,time,investigation,specimen,state,reading') // => true
 */
export function writeLogCsv(notebook: Notebook, only?: readonly InvestigationId[]): string {
  const wanted = only ?? [...notebook.investigations.keys()];
  const lines = wanted.flatMap((investigation) => investigationLines(notebook, investigation));
  const rest = only ? [] : looseNoteLines(notebook);
  const heading = logColumns.map((column) => column.heading);
  return writeCsv([heading, ...[...lines, ...rest].map(cellsOf)]);
}

function investigationLines(notebook: Notebook, id: InvestigationId): readonly LogLine[] {
  const investigation = notebook.investigations.get(id)?.title ?? '';
  const specimens = [...notebook.specimens.values()].filter((each) => each.investigation === id);
  const ofSpecimens = specimens.flatMap(({ id: specimen, name }) => {
    const log = notebook.logBySpecimen.get(specimen);
    const lines = [
      ...(log?.readings ?? []).flatMap((reading) => readingLines(reading, notebook)),
      ...(log?.dayMarks ?? []).map((mark) => dayMarkLine(mark, notebook)),
      ...(log?.kindNotes ?? []).map((kindNote) => kindNoteLine(kindNote, notebook)),
      ...noteLines(notebook, (note) => note.specimen === specimen),
    ];
    return byDay(lines).map((line) => ({ ...line, investigation, specimen: name }));
  });
  const own = noteLines(notebook, (note) => !note.specimen && note.investigation === id);
  return [...ofSpecimens, ...byDay(own).map((line) => ({ ...line, investigation }))];
}

const noteLines = (notebook: Notebook, belongs: (note: Note) => boolean): readonly LogLine[] =>
  notebook.notes.filter(belongs).map((note) => noteLine(note, notebook));

const looseNoteLines = (notebook: Notebook): readonly LogLine[] =>
  byDay(noteLines(notebook, (note) => !note.specimen && !note.investigation));

/** Sorting keeps lines of one moment in the order they came. */
const byDay = (lines: readonly LogLine[]): readonly LogLine[] =>
  [...lines].sort((left, right) => compareTexts(moment(left), moment(right)));

const moment = ({ day = '', time = '' }: LogLine): string => `${day} ${time}`;
const compareTexts = (left: string, right: string): number =>
  left < right ? -1 : Number(left > right);

const cellsOf = (line: LogLine): readonly string[] =>
  logColumns.map(({ heading, isFree }) =>
    isFree ? guardText(line[heading] ?? '') : (line[heading] ?? ''),
  );
