import { writeBackup, writeLogCsv } from '#core/exchange';
import { foldEntries } from '#core/journal';
import { sampleJournal } from './sample-family';

/** The made-up notebook as the files it is given out as. */
export function sampleFiles(): { readonly backup: string; readonly csv: string } {
  const entries = sampleJournal();
  const madeAtMs = Date.parse('2026-05-01T09:00:00Z');
  return {
    backup: writeBackup(entries, madeAtMs),
    csv: writeLogCsv(foldEntries(entries)),
  };
}
