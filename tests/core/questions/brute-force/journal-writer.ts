import {
  stampOf,
  type DeviceId,
  type Entry,
  type EntryDraft,
  type EntryId,
  type InvestigationId,
  type PersonId,
  type Quantity,
  type SpecimenId,
} from '#core/journal';
import type { CivilDay, ClockTime } from '#core/calendar';
import type { MarkId, Measured, Unit } from '#core/measure';

const anId = <Id extends string>(number: number): Id =>
  `00000000-0000-7000-8000-${String(number).padStart(12, '0')}` as Id;

export const madeInvestigation = anId<InvestigationId>(801);
export const madeSpecimen = (index: number): SpecimenId => anId<SpecimenId>(901 + index);
export const madePeople = [701, 702, 703].map((each) => anId<PersonId>(each));

/** Lengths in whole nanometres, and things as they are. (1 inch is 2.54 cm by definition.) */
export const sizeOfUnit: Readonly<Record<Unit, number>> = {
  ...{ in: 25_400_000, ft: 304_800_000, yd: 914_400_000 },
  ...{ mm: 1_000_000, cm: 10_000_000, m: 1_000_000_000, count: 1 },
};

/** "1/2 in" is half an inch; "1" one thing. */
export const sizeOfMark = (mark: MarkId): number => {
  const [number = '1', unit] = mark.split(' ');
  const [top, bottom] = number.split('/').map(Number);
  return ((top ?? 1) / (bottom ?? 1)) * sizeOfUnit[(unit ?? 'count') as Unit];
};

/** So many marks of a ruler, read in a unit. */
export const marksRead = (times: number, unit: Unit, mark: MarkId): Measured => {
  const exact = Math.round(times * sizeOfMark(mark));
  return { text: String(exact / sizeOfUnit[unit]), unit, mark, exact };
};

export interface JournalWriter {
  readonly entries: Entry[];
  /** Writes an entry, later than all before it. */
  write(draft: EntryDraft, author?: PersonId | null): EntryId;
}

const firstMorning = Date.UTC(2026, 0, 5, 8);
const device = anId<DeviceId>(601);

export const journalWriter = (): JournalWriter => {
  const entries: Entry[] = [];
  return {
    entries,
    write: (draft, author = madePeople[0] ?? null) => {
      const id = anId<EntryId>(entries.length + 1);
      const at = stampOf(firstMorning + entries.length * 60_000);
      entries.push({ id, at, device, author, v: 1, ...draft } as Entry);
      return id;
    },
  };
};

export interface MadePlan {
  readonly quantity: Quantity;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly kinds?: readonly string[];
  readonly weekdays: readonly number[];
  readonly where?: string;
}

/** The people, the plan and the specimens of a journal. */
export const beginJournal = (
  { write }: JournalWriter,
  { kinds = [], where = '', weekdays, ...plan }: MadePlan,
  specimens: readonly { name: string; startedOn: string; standHeight?: Measured }[],
): void => {
  madePeople.forEach((person, index) => {
    const name = ['Wren', 'Pip', 'Ada'][index]!;
    const look = { shape: 'leaf', colour: index, stage: 'grade-2', hand: 'right' } as const;
    const role = index === 2 ? 'grown-up' : 'child';
    write({ kind: 'person-added', person, name, role, ...look });
  });
  write({
    ...{ kind: 'investigation-begun', investigation: madeInvestigation, ...plan, where },
    ...{ title: 'Ours', question: '', tool: 'ruler', when: 'morning', origin: 'ours' },
    ...{ kinds: [...kinds], weekdays: [...weekdays] },
  });
  specimens.forEach(({ name, startedOn, standHeight }, index) => {
    write({
      ...{ kind: 'specimen-added', specimen: madeSpecimen(index) },
      ...{ investigation: madeInvestigation, name, startedOn: startedOn as CivilDay },
      ...(standHeight ? { standHeight } : {}),
    });
  });
};

export const aDayText = (text: string): CivilDay => text as CivilDay;
export const aTimeText = (text: string): ClockTime => text as ClockTime;
