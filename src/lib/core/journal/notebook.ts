import type { CivilDay, ClockTime } from '#core/calendar';
import type { MarkId, Measured, Unit } from '#core/measure';
import type { CareOfNotebook } from './care';
import type { DrawingId, EntryId, InvestigationId, PersonId, SpecimenId } from './id';
import type { Line } from './line';
import type { TeachingOfNotebook } from './teaching';
import type { Stamp } from './stamp';
import type * as words from './vocabulary';

/** The notebook as it stands: what a journal's entries add up to. See SPEC.md. */
export interface Notebook extends CareOfNotebook, TeachingOfNotebook {
  readonly title: string | null;
  readonly people: ReadonlyMap<PersonId, Person>;
  /** In the order they were begun. Removed ones are not here. */
  readonly investigations: ReadonlyMap<InvestigationId, Investigation>;
  readonly specimens: ReadonlyMap<SpecimenId, Specimen>;
  readonly logBySpecimen: ReadonlyMap<SpecimenId, SpecimenLog>;
  readonly notes: readonly Note[];
  /** In the order they were begun. */
  readonly drawings: ReadonlyMap<DrawingId, DrawingRecord>;
  /** Investigations that were removed and can be put back by taking back the entries named. */
  readonly removed: readonly RemovedInvestigation[];
  readonly entryCount: number;
  /** How many entries a later program wrote, which this one keeps but cannot show. */
  readonly notUnderstoodCount: number;
  readonly lastStamp: Stamp | null;
}

export interface Person {
  readonly id: PersonId;
  readonly name: string;
  readonly shape: words.Shape;
  readonly colour: number;
  readonly role: words.Role;
  readonly stage: words.Stage;
  readonly hand: words.Hand;
}

export interface Investigation {
  readonly id: InvestigationId;
  readonly title: string;
  readonly question: string;
  readonly quantity: words.Quantity;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly kinds: readonly string[];
  readonly weekdays: readonly number[];
  readonly where: string;
  readonly tool: string;
  readonly when: string;
  readonly origin: words.Origin;
  readonly begunAt: Stamp;
  readonly ended: { readonly day: CivilDay; readonly found?: string } | null;
}

export interface Specimen {
  readonly id: SpecimenId;
  readonly investigation: InvestigationId;
  readonly name: string;
  readonly startedOn: CivilDay;
  readonly standHeight?: Measured;
  readonly ended: {
    readonly day: CivilDay;
    readonly how: words.Ending;
    readonly why?: string;
  } | null;
}

/** Everything written for one specimen, in the order it was written. */
export interface SpecimenLog {
  readonly readings: readonly Reading[];
  readonly dayMarks: readonly DayMark[];
  readonly kindNotes: readonly KindNote[];
}

export interface Reading extends Line, Taken {
  readonly specimen: SpecimenId;
  readonly leaves?: number;
  readonly weather?: words.WeatherWord;
  readonly note?: string;
  /** What was read before each correction, oldest first. */
  readonly crossedOut: readonly CrossedOut[];
}

/** The part of a reading that can be corrected. */
export interface Taken {
  readonly day: CivilDay;
  readonly time?: ClockTime;
  /** The reading that counts: the middle one where several were taken. */
  readonly counted: Measured;
  readonly all: readonly Measured[];
  /** How many days a rain total covers; 1 for every other reading. */
  readonly spanDays: number;
}

export interface CrossedOut extends Taken {
  /** The correction that crossed it out. */
  readonly by: EntryId;
  readonly at: Stamp;
  readonly author: PersonId | null;
  readonly why?: string;
}

export interface DayMark extends Line {
  readonly specimen: SpecimenId;
  readonly time?: ClockTime;
  readonly state: words.DayState;
  readonly why?: string;
}

export interface KindNote extends Line {
  readonly specimen: SpecimenId;
  readonly word: string;
}

export interface Note extends Line {
  readonly investigation?: InvestigationId;
  readonly specimen?: SpecimenId;
  readonly text: string;
}

/** A drawing of a graph, with every version that was saved. Its paper is decoded by graphs. */
export interface DrawingRecord {
  readonly id: DrawingId;
  readonly investigation: InvestigationId;
  readonly specimen?: SpecimenId;
  readonly graph: string;
  readonly choice: Readonly<Record<string, unknown>>;
  readonly stage: words.Stage;
  readonly level: string;
  readonly author: PersonId | null;
  readonly begunAt: Stamp;
  /** Oldest first. */
  readonly versions: readonly DrawingVersion[];
  /** When the child said it was done; null while it can still grow. */
  readonly finishedAt: Stamp | null;
}

export interface DrawingVersion {
  readonly at: Stamp;
  readonly paper: Readonly<Record<string, unknown>>;
  readonly ticked: readonly number[];
}

export interface RemovedInvestigation {
  readonly investigation: Investigation;
  /** Every removal that stands: two devices may each have removed it. */
  readonly removals: readonly EntryId[];
  readonly at: Stamp;
}
