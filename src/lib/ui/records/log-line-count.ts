import type { InvestigationId, Notebook } from '#core/journal';

/** How many lines are written in the logs of each investigation, crossed-out ones among them. */
export function countLogLines(
  notebook: Pick<Notebook, 'specimens' | 'logBySpecimen'>,
): ReadonlyMap<InvestigationId, number> {
  const countByInvestigation = new Map<InvestigationId, number>();
  for (const { id, investigation } of notebook.specimens.values()) {
    const log = notebook.logBySpecimen.get(id);
    const count = log ? log.readings.length + log.dayMarks.length + log.kindNotes.length : 0;
    countByInvestigation.set(investigation, (countByInvestigation.get(investigation) ?? 0) + count);
  }
  return countByInvestigation;
}
