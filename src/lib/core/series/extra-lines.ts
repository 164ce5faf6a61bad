import { weekdayOf, type CivilDay } from '#core/calendar';
import type { CrossedOut, Note, Reading } from '#core/journal';
import type { Series, SeriesDay } from './series';

/** What a page of the log shows on a day beside the series: notes, and readings moved away. */
export interface ExtraLines {
  readonly notes: Note[];
  readonly movedAway: { readonly reading: Reading; readonly was: CrossedOut }[];
}

/**
 * The notes to be read with a log: those about its specimen, and those about its investigation
 * as a whole.
 *
 * @example
 * notesOfSeries([], { specimen: { id: 'bean' }, investigation: { id: 'beans' } }) // => []
 */
export const notesOfSeries = (
  notes: readonly Note[],
  { specimen, investigation }: Series,
): readonly Note[] =>
  notes.filter((note) =>
    note.specimen === undefined
      ? note.investigation === investigation.id
      : note.specimen === specimen.id,
  );

export function extraLinesByDay(
  series: Series,
  notes: readonly Note[],
): ReadonlyMap<CivilDay, ExtraLines> {
  const extraByDay = new Map<CivilDay, ExtraLines>();
  const at = (day: CivilDay): ExtraLines => {
    const known = extraByDay.get(day);
    if (known) return known;
    const fresh: ExtraLines = { notes: [], movedAway: [] };
    extraByDay.set(day, fresh);
    return fresh;
  };
  for (const note of notes) at(note.day).notes.push(note);
  for (const reading of series.days.flatMap((day) => day.readings)) {
    const left = reading.crossedOut.filter((was) => was.day !== reading.day);
    // Moved twice to and fro, a day is left once: by the last correction that took it away.
    const lastByDay = new Map(left.map((was) => [was.day, was]));
    for (const was of lastByDay.values()) at(was.day).movedAway.push({ reading, was });
  }
  return extraByDay;
}

/** The days of the series, and those that have only a note or a reading moved away, in order. */
export function daysOfLog(
  series: Series,
  extraByDay: ReadonlyMap<CivilDay, ExtraLines>,
): readonly SeriesDay[] {
  const known = new Set(series.days.map((day) => day.day));
  const others = [...extraByDay.keys()].filter((day) => !known.has(day));
  if (others.length === 0) return series.days;
  const added = others.map((day): SeriesDay => {
    const weekday = weekdayOf(day);
    const planned = series.investigation.weekdays.includes(weekday);
    const lines = { readings: [], words: [], marks: [], crossedOut: [] };
    return { day, weekday, planned, state: 'blank', gapDays: null, ...lines };
  });
  return [...series.days, ...added].sort((left, right) => (left.day < right.day ? -1 : 1));
}
