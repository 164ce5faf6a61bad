import { civilDay, parseClockTime } from '#core/calendar';
import {
  foldEntries,
  type EntryDraft,
  type EntryId,
  type Notebook,
  type PersonId,
  type Quantity,
} from '#core/journal';
import type { MarkId, Measured, Unit } from '#core/measure';
import { specimenId, sibling, thing } from '../graphs/small-notebook';
import { anId, child, read, written } from '../journal/entries';

/** A day of March 2026, and what was read on it; the other side of the ruler; what stood before. */
export interface HandReading {
  readonly on: number;
  readonly at?: string;
  readonly value: number;
  readonly by?: PersonId;
  readonly leaves?: number;
  readonly other?: Measured;
  readonly mendedTo?: number;
}

export interface HandPlan {
  readonly quantity?: Quantity;
  readonly unit?: Unit;
  readonly mark?: MarkId;
  readonly where?: string;
  readonly pot?: Measured;
  /** Written before any reading, and after all of them. */
  readonly before?: readonly EntryDraft[];
  readonly after?: readonly EntryDraft[];
}

export const march = (date: number) => civilDay(`2026-03-${String(date).padStart(2, '0')}`);

/** One a day from 2 March on; null is a day that nobody wrote on. */
export const oneADay = (values: readonly (number | null)[]): readonly HandReading[] =>
  values.flatMap((value, index) => (value === null ? [] : [{ on: index + 2, value }]));

/** A notebook of a few readings, each written out by hand. */
export const handBook = (
  logs: Readonly<Record<string, readonly HandReading[]>>,
  plan: HandPlan = {},
): Notebook => {
  const { quantity = 'plant-height', unit = 'cm', mark = '1 cm', where = '', pot } = plan;
  const person = { colour: 0, role: 'child', stage: 'grade-2', hand: 'right' } as const;
  let number = 0;
  const entryOf = (draft: EntryDraft, author: PersonId = child) =>
    written((number += 1), draft, { author });
  const begun = [
    entryOf({ kind: 'person-added', person: child, name: 'Wren', shape: 'leaf', ...person }),
    entryOf({ kind: 'person-added', person: sibling, name: 'Pip', shape: 'snail', ...person }),
    entryOf({
      ...{ kind: 'investigation-begun', investigation: thing, title: 'Ours', question: '' },
      ...{ quantity, unit, mark, kinds: [], weekdays: [1, 2, 3, 4, 5, 6, 7] },
      ...{ where, tool: '', when: '', origin: 'ours' },
    }),
    ...Object.keys(logs).map((name, index) =>
      entryOf({
        ...{ kind: 'specimen-added', specimen: specimenId(index), investigation: thing, name },
        startedOn: march(1),
        ...(pot ? { standHeight: pot } : {}),
      }),
    ),
    ...(plan.before ?? []).map((draft) => entryOf(draft)),
  ];
  const taken = Object.values(logs).flatMap((readings, index) =>
    readings.flatMap(({ on, at, value, by, leaves, other, mendedTo }) => {
      const what = { day: march(on), measured: read(value, unit, mark), ...timeOf(at) };
      const reading = entryOf(
        {
          ...{ kind: 'reading-taken', specimen: specimenId(index), ...what },
          ...(leaves === undefined ? {} : { leaves }),
        },
        by,
      );
      const id = anId<EntryId>(number);
      return [
        reading,
        ...(other ? [entryOf({ kind: 'other-side-read', reading: id, measured: other })] : []),
        ...(mendedTo === undefined
          ? []
          : [
              entryOf({
                ...{ kind: 'reading-corrected', reading: id, why: 'I looked again' },
                to: { ...what, measured: read(mendedTo, unit, mark) },
              }),
            ]),
      ];
    }),
  );
  return foldEntries([...begun, ...taken, ...(plan.after ?? []).map((draft) => entryOf(draft))]);
};

const timeOf = (at: string | undefined) => {
  const time = at === undefined ? null : parseClockTime(at);
  if (time && !time.ok) throw new Error(`${at} is no time`);
  return time ? { time: time.value } : {};
};
