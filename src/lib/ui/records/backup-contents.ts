import {
  foldEntries,
  type EntryId,
  type Investigation,
  type JournalEntry,
  type Notebook,
} from '#core/journal';

/** What is in a backup, held against what is in the notebook already. */
export interface BackupContents {
  readonly lineCount: number;
  readonly newCount: number;
  /** In the order they were begun, removed ones last. */
  readonly investigations: readonly InvestigationInBackup[];
  readonly notUnderstoodCount: number;
}

export interface InvestigationInBackup {
  readonly investigation: Investigation;
  readonly isRemoved: boolean;
  /** Readings, marked days and words in its logs. */
  readonly logLineCount: number;
  readonly newLogLineCount: number;
}

export function backupContents(
  entries: readonly JournalEntry[],
  here: readonly JournalEntry[],
): BackupContents {
  const known = new Set(here.map((entry) => entry.id));
  const inFile = foldEntries(entries);
  const removed = inFile.removed.map(({ investigation }) => investigation);
  const describe = (investigation: Investigation, isRemoved: boolean): InvestigationInBackup => ({
    ...{ investigation, isRemoved },
    ...countLines(inFile, investigation, known),
  });
  return {
    lineCount: inFile.entryCount,
    newCount: entries.filter((entry) => !known.has(entry.id)).length,
    investigations: [
      ...[...inFile.investigations.values()].map((each) => describe(each, false)),
      ...removed.map((each) => describe(each, true)),
    ],
    notUnderstoodCount: inFile.notUnderstoodCount,
  };
}

function countLines(
  inFile: Notebook,
  { id }: Investigation,
  known: ReadonlySet<EntryId>,
): Pick<InvestigationInBackup, 'logLineCount' | 'newLogLineCount'> {
  const specimens = [...inFile.specimens.values()].filter((each) => each.investigation === id);
  const lines = specimens.flatMap((specimen) => {
    const log = inFile.logBySpecimen.get(specimen.id);
    return log ? [...log.readings, ...log.dayMarks, ...log.kindNotes] : [];
  });
  const isNew = (line: { readonly id: EntryId }): boolean => !known.has(line.id);
  return { logLineCount: lines.length, newLogLineCount: lines.filter(isNew).length };
}
