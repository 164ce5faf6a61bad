import { civilDay, parseClockTime } from '#core/calendar';
import {
  foldEntries,
  type DayState,
  type EntryDraft,
  type InvestigationId,
  type Notebook,
  type PersonId,
  type Quantity,
  type SpecimenId,
  type WeatherWord,
} from '#core/journal';
import { parseMeasured, type MarkId, type Measured, type Unit } from '#core/measure';
import { anId, child, written } from '../journal/entries';

/** One line of a log: a number as it was written, a state, or a word. */
export interface Line {
  readonly day: string;
  readonly read?: string;
  readonly unit?: Unit;
  readonly mark?: MarkId;
  readonly again?: readonly string[];
  readonly time?: string;
  readonly spanDays?: number;
  readonly weather?: WeatherWord;
  readonly author?: PersonId;
  readonly state?: DayState;
  readonly word?: string;
}

interface Plan {
  readonly quantity?: Quantity;
  readonly unit?: Unit;
  readonly mark?: MarkId;
  readonly kinds?: readonly string[];
  readonly weekdays?: readonly number[];
  readonly startedOn?: string;
}

export const thing = anId<InvestigationId>(801);
export const sibling = anId<PersonId>(702);
export const specimenId = (index: number): SpecimenId => anId<SpecimenId>(901 + index);

/** A notebook of one investigation, with a log for each name. */
export const notebookOf = (
  linesByName: Readonly<Record<string, readonly Line[]>>,
  plan: Plan = {},
): Notebook => {
  const { quantity = 'plant-height', unit = 'cm', mark = '1 cm' } = plan;
  const { kinds = [], weekdays = [1, 2, 3, 4, 5, 6, 7], startedOn = '2026-03-02' } = plan;
  const person = { colour: 0, role: 'child', stage: 'grade-2', hand: 'right' } as const;
  const drafts: EntryDraft[] = [
    { kind: 'person-added', person: child, name: 'Wren', shape: 'leaf', ...person },
    { kind: 'person-added', person: sibling, name: 'Pip', shape: 'snail', ...person },
    {
      ...{ kind: 'investigation-begun', investigation: thing, title: 'Ours', question: '' },
      ...{ quantity, unit, mark, kinds: [...kinds], weekdays: [...weekdays] },
      ...{ where: '', tool: '', when: '', origin: 'ours' },
    },
    ...Object.keys(linesByName).map((name, index): EntryDraft => ({
      ...{ kind: 'specimen-added', specimen: specimenId(index), investigation: thing, name },
      startedOn: civilDay(startedOn),
    })),
  ];
  const lines = Object.values(linesByName).flatMap((each, index) =>
    each.map((line) => ({ line, draft: draftOf(line, specimenId(index), { unit, mark }) })),
  );
  return foldEntries([
    ...drafts.map((draft, index) => written(index + 1, draft)),
    ...lines.map(({ line, draft }, index) =>
      written(drafts.length + index + 1, draft, { author: line.author ?? child }),
    ),
  ]);
};

const draftOf = (
  line: Line,
  specimen: SpecimenId,
  plan: { readonly unit: Unit; readonly mark: MarkId },
): EntryDraft => {
  const day = civilDay(line.day);
  const time = line.time === undefined ? undefined : parseClockTime(line.time);
  if (time && !time.ok) throw new Error(`${line.time} is no time`);
  const at = time ? { time: time.value } : {};
  if (line.word !== undefined) return { kind: 'kind-noted', specimen, day, word: line.word };
  if (line.state !== undefined) {
    return { kind: 'day-marked', specimen, day, state: line.state, ...at };
  }
  const how = { unit: line.unit ?? plan.unit, ...(line.unit ? {} : { mark: plan.mark }) };
  const measured = (text: string): Measured => {
    const result = parseMeasured(text, line.mark ? { ...how, mark: line.mark } : how);
    if (!result.ok) throw new Error(`${text} is no reading: ${result.error.kind}`);
    return result.value;
  };
  return {
    ...{ kind: 'reading-taken', specimen, day, measured: measured(line.read ?? '') },
    ...at,
    ...(line.again ? { again: line.again.map(measured) } : {}),
    ...(line.spanDays ? { spanDays: line.spanDays } : {}),
    ...(line.weather ? { weather: line.weather } : {}),
  };
};
