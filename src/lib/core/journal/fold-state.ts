import type { EntryOf } from './entry-schema';
import { emptyFoldCare, type FoldCare } from './fold-care';
import { emptyFoldTeaching, type FoldTeaching } from './fold-teaching';
import type { DrawingId, EntryId, InvestigationId, PersonId, SpecimenId } from './id';
import type { TakenBack } from './line';
import type * as notebook from './notebook';

/** The notebook while it is being added up; it never leaves the fold. */
export interface FoldState {
  title: string | null;
  readonly people: Map<PersonId, notebook.Person>;
  readonly investigations: Map<InvestigationId, notebook.Investigation>;
  readonly specimens: Map<SpecimenId, notebook.Specimen>;
  readonly logBySpecimen: Map<SpecimenId, FoldLog>;
  readonly notes: notebook.Note[];
  readonly drawings: Map<DrawingId, notebook.DrawingRecord>;
  readonly drawingSavedById: Map<DrawingId, EntryOf<'drawing-saved'>[]>;
  readonly drawingFinishedById: Map<DrawingId, EntryOf<'drawing-finished'>>;
  readonly care: FoldCare;
  readonly teaching: FoldTeaching;
  readonly readingsTaken: TakenReading[];
  readonly correctionsByReading: Map<EntryId, EntryOf<'reading-corrected'>[]>;
  readonly removalsByInvestigation: Map<InvestigationId, EntryOf<'investigation-removed'>[]>;
}

export const emptyFoldState = (): FoldState => ({
  title: null,
  people: new Map(),
  investigations: new Map(),
  specimens: new Map(),
  logBySpecimen: new Map(),
  notes: [],
  drawings: new Map(),
  drawingSavedById: new Map(),
  drawingFinishedById: new Map(),
  care: emptyFoldCare(),
  teaching: emptyFoldTeaching(),
  readingsTaken: [],
  correctionsByReading: new Map(),
  removalsByInvestigation: new Map(),
});

/** The log of a specimen, begun when its first line is written. */
export function logOf(state: FoldState, specimen: SpecimenId): FoldLog {
  const known = state.logBySpecimen.get(specimen);
  if (known) return known;
  const log: FoldLog = { readings: [], dayMarks: [], kindNotes: [] };
  state.logBySpecimen.set(specimen, log);
  return log;
}

interface FoldLog {
  readonly readings: notebook.Reading[];
  readonly dayMarks: notebook.DayMark[];
  readonly kindNotes: notebook.KindNote[];
}

interface TakenReading {
  readonly entry: EntryOf<'reading-taken'>;
  readonly takenBack: TakenBack | null;
}
