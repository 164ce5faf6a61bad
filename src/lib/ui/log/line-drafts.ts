import type { CivilDay, ClockTime } from '#core/calendar';
import type { EntryDraft, EntryId, Notebook, Reading } from '#core/journal';
import type { Measured } from '#core/measure';
import type { ReadingDraft } from '#ui/entry';

/** A reading as it is to stand after a correction. */
export interface FixedReading {
  readonly day: CivilDay;
  readonly time: ClockTime | null;
  readonly all: readonly [Measured, ...Measured[]];
  readonly spanDays: number;
}

/**
 * What a reading is to be, from what stands on the pad: an empty pad keeps the number, for then it
 * is the day or the time that is fixed. Null while the pad cannot be read.
 */
export function fixedReading(old: Reading, pad: ReadingDraft): FixedReading | null {
  const isEmpty = pad.text.trim() === '' && pad.reads.length === 0;
  const all = isEmpty ? old.all : pad.all;
  const [first, ...rest] = all ?? [];
  const { day, clockTime: time, spanDays } = pad;
  if (!first || spanDays === 'odd') return null;
  return { day, time, all: [first, ...rest], spanDays };
}

/** The entry that corrects a reading: the old value stays, crossed out, with the reason. */
export function correctionDraft(reading: Reading, to: FixedReading, why: string): EntryDraft {
  const [measured, ...again] = to.all;
  return {
    kind: 'reading-corrected',
    reading: reading.id,
    to: {
      day: to.day,
      measured,
      ...(to.time === null ? {} : { time: to.time }),
      ...(again.length === 0 ? {} : { again }),
      ...(to.spanDays > 1 ? { spanDays: to.spanDays } : {}),
    },
    ...reason(why),
  };
}

/**
 * The reading whose number entries have written or changed, by its id; null where they did not.
 * A number that only moved to another day was asked about when it was new.
 *
 * @param ids the ids the entries were given, in their order
 * @param before the notebook as it was without them
 */
export function numberWritten(
  drafts: readonly EntryDraft[],
  ids: readonly EntryId[],
  before: Notebook,
): EntryId | null {
  for (const [index, draft] of drafts.entries()) {
    if (draft.kind === 'reading-taken') return ids[index] ?? null;
    if (draft.kind !== 'reading-corrected') continue;
    const old = [...before.logBySpecimen.values()]
      .flatMap(({ readings }) => readings)
      .find(({ id }) => id === draft.reading);
    const all = [draft.to.measured, ...(draft.to.again ?? [])];
    if (!old || all.length !== old.all.length) return draft.reading;
    if (!old.all.every((measured, at) => isSame(measured, all[at]!))) return draft.reading;
  }
  return null;
}

/** Whether a correction would leave the reading as it is. */
export const isUnchanged = (reading: Reading, to: FixedReading): boolean =>
  reading.day === to.day &&
  (reading.time ?? null) === to.time &&
  reading.spanDays === to.spanDays &&
  reading.all.length === to.all.length &&
  reading.all.every((measured, index) => isSame(measured, to.all[index]!));

/** The entry that takes a line back: it stays readable, crossed out, with the reason. */
export const takingBackDraft = (entry: EntryId, why: string): EntryDraft => ({
  kind: 'entry-taken-back',
  entry,
  ...reason(why),
});

const isSame = (left: Measured, right: Measured): boolean =>
  left.exact === right.exact && left.unit === right.unit && left.mark === right.mark;

const reason = (why: string): { readonly why?: string } =>
  why.trim() === '' ? {} : { why: why.trim().slice(0, longestWhy) };

/** As long as a journal keeps a reason. */
export const longestWhy = 500;
