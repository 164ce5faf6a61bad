import type { EntryOf } from './entry-schema';
import { middleReading } from './middle-reading';
import type { TakenBack } from './line';
import type { CrossedOut, Reading, Taken } from './notebook';

/**
 * A reading with its corrections, in order: each crosses out what stood before it. Entries never
 * change, so a reading that nothing happened to is made once and is the same object ever after.
 */
export function foldReading(
  entry: EntryOf<'reading-taken'>,
  corrections: readonly EntryOf<'reading-corrected'>[],
  takenBack: TakenBack | null,
): Reading {
  if (corrections.length > 0 || takenBack) return makeReading(entry, corrections, takenBack);
  const known = untouched.get(entry);
  if (known) return known;
  const reading = makeReading(entry, corrections, takenBack);
  untouched.set(entry, reading);
  return reading;
}

const untouched = new WeakMap<EntryOf<'reading-taken'>, Reading>();

function makeReading(
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
  // Written field by field: there is one of these for every reading, and spreading is slow.
  const { day, time, counted, all, spanDays } = taken;
  const { id, at, device, author, specimen, leaves, weather, note } = entry;
  const reading: Writable<Reading> = {
    id,
    at,
    device,
    author,
    specimen,
    day,
    counted,
    all,
    spanDays,
    crossedOut,
    takenBack,
  };
  if (time !== undefined) reading.time = time;
  if (leaves !== undefined) reading.leaves = leaves;
  if (weather !== undefined) reading.weather = weather;
  if (note !== undefined) reading.note = note;
  return reading;
}

function takenOf(body: EntryOf<'reading-corrected'>['to']): Taken {
  const { day, time, measured, again, spanDays = 1 } = body;
  const counted = again === undefined ? measured : middleReading([measured, ...again]);
  const all = again === undefined ? [measured] : [measured, ...again];
  return time === undefined
    ? { day, counted, all, spanDays }
    : { day, time, counted, all, spanDays };
}

type Writable<Whole> = { -readonly [Field in keyof Whole]: Whole[Field] };
