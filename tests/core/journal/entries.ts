import { civilDay } from '#core/calendar';
import {
  stampOf,
  type Entry,
  type EntryDraft,
  type EntryId,
  type JournalEntry,
} from '#core/journal';
import type { DeviceId, InvestigationId, PersonId, SpecimenId } from '#core/journal';
import type { MarkId, Measured, Unit } from '#core/measure';
import { exactPerUnit } from '#core/measure';

/** Ids by number, so that a failing test can be read. */
export const anId = <Id extends string>(number: number): Id =>
  `00000000-0000-7000-8000-${String(number).padStart(12, '0')}` as Id;

export const bean = anId<SpecimenId>(901);
export const heights = anId<InvestigationId>(801);
export const child = anId<PersonId>(701);
export const tablet = anId<DeviceId>(601);
export const phone = anId<DeviceId>(602);

const firstMorning = Date.UTC(2026, 2, 2, 8);

/** An entry as a device would have written it, `minute` minutes after the first morning. */
export function written(
  number: number,
  draft: EntryDraft,
  where: { minute?: number; device?: DeviceId; author?: PersonId | null } = {},
): Entry {
  const { minute = number, device = tablet, author = child } = where;
  return {
    id: anId<EntryId>(number),
    at: stampOf(firstMorning + minute * 60_000),
    device,
    author,
    v: 1,
    ...draft,
  } as Entry;
}

export const read = (value: number, unit: Unit = 'cm', mark: MarkId = '1 cm'): Measured => ({
  text: String(value),
  unit,
  mark,
  exact: Math.round(value * exactPerUnit(unit)),
});

export const took = (
  number: number,
  day: string,
  value: number,
  where?: Parameters<typeof written>[2],
): Entry =>
  written(
    number,
    { kind: 'reading-taken', specimen: bean, day: civilDay(day), measured: read(value) },
    where,
  );

export const takenBack = (number: number, entry: number): Entry =>
  written(number, { kind: 'entry-taken-back', entry: anId<EntryId>(entry) });

/** An investigation with one bean, as entries 1 to 4. */
export const begun: readonly JournalEntry[] = [
  written(1, { kind: 'notebook-begun', title: 'Our notebook' }),
  written(2, {
    kind: 'person-added',
    person: child,
    name: 'Wren',
    shape: 'leaf',
    colour: 2,
    role: 'child',
    stage: 'grade-2',
    hand: 'right',
  }),
  written(3, {
    kind: 'investigation-begun',
    investigation: heights,
    title: 'Our beans',
    question: 'How tall will it grow?',
    quantity: 'plant-height',
    unit: 'cm',
    mark: '1 cm',
    kinds: [],
    weekdays: [1, 2, 3, 4, 5],
    where: 'from the soil to the tip',
    tool: 'ruler',
    when: 'morning',
    origin: 'ours',
  }),
  written(4, {
    kind: 'specimen-added',
    specimen: bean,
    investigation: heights,
    name: 'Bean A',
    startedOn: civilDay('2026-03-02'),
  }),
];
