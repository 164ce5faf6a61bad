import type { DayState, DoubtAnswer, EntryDraft, Reading } from '#core/journal';
import type { Measured } from '#core/measure';
import type { Doubt } from '#core/series';
import { answerWords, type DoubtDeed } from '#ui/doubt-words';
import { readingInOtherUnit } from './other-unit';

/** What an answer writes, in one go. All of it can be undone, and nothing is erased. */
export function doubtDrafts(
  deed: DoubtDeed,
  doubt: Doubt,
  reading: Reading,
): readonly EntryDraft[] {
  switch (deed) {
    case 'read-so':
    case 'look-again':
      return [answered(reading, doubt, deed)];
    case 'other-unit': {
      const all = readingInOtherUnit(reading, doubt);
      const why = doubt.kind === 'other-side' ? whyOtherSide : whyOtherUnit;
      return [
        answered(reading, doubt, deed),
        ...(all ? [correctionOf(reading, { all, time: reading.time ?? null }, why)] : []),
      ];
    }
    case 'no-plant':
      return [takenBack(reading, answerWords(deed, doubt)), markOf(reading, 'lost')];
    case 'missed':
      return [takenBack(reading, answerWords(deed, doubt)), markOf(reading, 'missed')];
    case 'no-sun':
      return [takenBack(reading, answerWords(deed, doubt)), markOf(reading, 'no-sun')];
    case 'other-plant':
      return doubt.kind === 'other-plant'
        ? [takenBack(reading, answerWords(deed, doubt)), takenFor(doubt.specimen, reading)]
        : [];
  }
}

/**
 * What a second look writes: the new number beside the old, which gets a line through it; or,
 * where it is the same once more, that it was read so.
 */
export function lookedAgainDrafts(
  reading: Reading,
  doubt: Doubt['kind'],
  to: Pick<Reading, 'all'> & { readonly time: Reading['time'] | null },
): readonly EntryDraft[] {
  const isSame =
    to.all.length === reading.all.length &&
    to.all.every((measured, index) => isSameReading(measured, reading.all[index])) &&
    (to.time ?? null) === (reading.time ?? null);
  return isSame
    ? [answered(reading, { kind: doubt }, 'read-so')]
    : [correctionOf(reading, to, whyLookedAgain)];
}

export const whyLookedAgain = 'looked again';
export const whyOtherSide = 'the other side of the ruler';
export const whyOtherUnit = 'a different unit';

const answered = (
  { id }: Reading,
  { kind }: Pick<Doubt, 'kind'>,
  answer: DoubtAnswer,
): EntryDraft => ({ kind: 'doubt-answered', reading: id, doubt: kind, answer });

const takenBack = ({ id }: Reading, why: string): EntryDraft => ({
  ...{ kind: 'entry-taken-back', entry: id, why },
});

const markOf = ({ specimen, day, time }: Reading, state: DayState): EntryDraft => ({
  ...{ kind: 'day-marked', specimen, day, state },
  ...(time === undefined ? {} : { time }),
});

function takenFor(specimen: Reading['specimen'], reading: Reading): EntryDraft {
  const { leaves, weather, note } = reading;
  return {
    ...{ kind: 'reading-taken', specimen, ...takenBody(reading, reading.all, reading.time) },
    ...(leaves === undefined ? {} : { leaves }),
    ...(weather === undefined ? {} : { weather }),
    ...(note === undefined ? {} : { note }),
  };
}

const correctionOf = (
  reading: Reading,
  { all, time }: Parameters<typeof lookedAgainDrafts>[2],
  why: string,
): EntryDraft => ({
  ...{ kind: 'reading-corrected', reading: reading.id, why },
  to: takenBody(reading, all, time ?? undefined),
});

/** The day stays the day it was taken on. */
function takenBody(
  { day, spanDays }: Reading,
  [measured, ...again]: readonly Measured[],
  time: Reading['time'],
) {
  if (!measured) throw new Error('A reading has a number');
  return {
    ...{ day, measured },
    ...(time === undefined ? {} : { time }),
    ...(again.length === 0 ? {} : { again }),
    ...(spanDays > 1 ? { spanDays } : {}),
  };
}

const isSameReading = (one: Measured, other: Measured | undefined): boolean =>
  one.exact === other?.exact && one.unit === other.unit;
