import type { ExistingLog } from '#core/exchange';
import type { Notebook, SpecimenId } from '#core/journal';

/** What a specimen's log holds already, its notes among it. */
export function existingLogOf(notebook: Notebook, specimen: SpecimenId): ExistingLog {
  const log = notebook.logBySpecimen.get(specimen);
  return {
    readings: log?.readings ?? [],
    dayMarks: log?.dayMarks ?? [],
    kindNotes: log?.kindNotes ?? [],
    notes: notebook.notes.filter((note) => note.specimen === specimen),
  };
}
