import type { EntryOf } from './entry-schema';
import { middleReading } from './middle-reading';
import { line } from './fold-state';
import type { CrossedOut, Reading, Taken, TakenBack } from './notebook';

/** A reading with its corrections, in order: each crosses out what stood before it. */
export function foldReading(
  entry: EntryOf<'reading-taken'>,
  corrections: readonly EntryOf<'reading-corrected'>[],
  takenBack: TakenBack | null,
): Reading {
  const crossedOut: CrossedOut[] = [];
  let taken = takenOf(entry);
  for (const { id: by, at, author, why, to } of corrections) {
    crossedOut.push({ ...taken, by, at, author, ...(why === undefined ? {} : { why }) });
    taken = takenOf(to);
  }
  const { specimen, leaves, weather, note } = entry;
  return {
    ...line(entry, takenBack),
    ...taken,
    specimen,
    crossedOut,
    ...(leaves === undefined ? {} : { leaves }),
    ...(weather === undefined ? {} : { weather }),
    ...(note === undefined ? {} : { note }),
  };
}

function takenOf(body: EntryOf<'reading-corrected'>['to']): Taken {
  const { day, time, measured, again = [], spanDays = 1 } = body;
  const all = [measured, ...again] as const;
  return {
    day,
    ...(time === undefined ? {} : { time }),
    counted: middleReading(all),
    all,
    spanDays,
  };
}
