import { readFileSync } from 'node:fs';
import { civilDay } from '#core/calendar';
import type { GraphKind, TableChoice } from '#core/graphs';
import {
  foldEntries,
  type DrawingId,
  type DrawingRecord,
  type Entry,
  type Notebook,
  type Specimen,
  type Stamp,
} from '#core/journal';

const { entries } = JSON.parse(readFileSync('demo/sample-notebook.json', 'utf8')) as {
  entries: Entry[];
};

/** The made-up notebook that everyone can look around in. */
export const sampleNotebook: Notebook = foldEntries(entries);

export const sampleLog = (name: string): Specimen => {
  const found = [...sampleNotebook.specimens.values()].find((each) => each.name === name);
  if (!found) throw new Error(`The made-up notebook has no log named ${name}`);
  return found;
};

/** The heights of one plant in centimetres, 11 to 17 March: 1, 2, 3, 4, none, 7 and 9. */
export const weekOf = (...names: readonly string[]): TableChoice => {
  const logs = names.map(sampleLog);
  return {
    ...{ source: 'day-values', investigation: logs[0]!.investigation, mostKinds: null },
    specimens: logs.map(({ id }) => id),
    ...{ from: civilDay('2026-03-11'), to: civilDay('2026-03-17') },
    told: { unit: 'cm', mark: '1 cm', converts: false },
  };
};

/** A drawing as the notebook keeps it: saved and finished at these hours of a made-up day. */
export const drawingRecord = (
  id: string,
  choice: TableChoice,
  more: {
    readonly graph?: GraphKind;
    readonly saved?: readonly { readonly at: string; readonly paper: unknown }[];
    readonly finished?: string;
    readonly author?: DrawingRecord['author'];
  } = {},
): DrawingRecord => ({
  ...{ id: id as DrawingId, investigation: choice.investigation, graph: more.graph ?? 'bar-graph' },
  ...{ choice: { ...choice }, stage: 'grade-2', level: 'frame-given', author: more.author ?? null },
  begunAt: '08' as Stamp,
  versions: (more.saved ?? []).map(({ at, paper }) => ({
    ...{ at: at as Stamp, paper: paper as Record<string, unknown>, ticked: [] },
  })),
  finishedAt: (more.finished ?? null) as Stamp | null,
});

export const withDrawings = (...records: readonly DrawingRecord[]): Notebook => ({
  ...sampleNotebook,
  drawings: new Map(records.map((record) => [record.id, record])),
});
