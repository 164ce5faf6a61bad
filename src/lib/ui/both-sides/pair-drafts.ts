import type { CivilDay, ClockTime } from '#core/calendar';
import type { EntryId, Reading, SpecimenId } from '#core/journal';
import type { Measured } from '#core/measure';
import type { WritableDraft } from '#notebook';

/** Both sides of one height, read at one moment. */
export interface TwoNumbers {
  /** In the log's own unit. */
  readonly own: Measured;
  readonly other: Measured;
}

/** A new reading and its other side: the second names the first, so the first brings its id. */
export const newPair = (
  { own, other }: TwoNumbers,
  about: {
    readonly id: EntryId;
    readonly specimen: SpecimenId;
    readonly day: CivilDay;
    readonly time: ClockTime | null;
  },
): readonly WritableDraft[] => {
  const { id, specimen, day, time } = about;
  return [
    {
      ...{ id, kind: 'reading-taken', specimen, day, measured: own },
      ...(time === null ? {} : { time }),
    },
    { kind: 'other-side-read', reading: id, measured: other },
  ];
};

/** Both sides read again: a number that stayed is not crossed out. */
export const pairAgain = (
  { own, other }: TwoNumbers,
  { id, day, time, counted, all }: Reading,
): readonly WritableDraft[] => {
  const stays = all.length === 1 && counted.exact === own.exact && counted.unit === own.unit;
  const to = { day, measured: own, ...(time === undefined ? {} : { time }) };
  const correction: WritableDraft = {
    kind: 'reading-corrected',
    reading: id,
    to,
    why: lookedAgain,
  };
  return [
    ...(stays ? [] : [correction]),
    { kind: 'other-side-read', reading: id, measured: other },
  ];
};

const lookedAgain = 'read both sides again';
