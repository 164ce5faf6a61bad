import { daysFrom, daysBetween, weekdayOf, type CivilDay, type ClockTime } from '#core/calendar';
import type {
  DayMark,
  DayState,
  EntryId,
  Investigation,
  KindNote,
  Notebook,
  Reading,
  Specimen,
  SpecimenId,
} from '#core/journal';
import type { MarkId, Unit } from '#core/measure';

/**
 * One specimen's log laid out on the calendar: every day in order, measured or not, and the
 * numbers alone as points. The states of a day never merge, and only numbers become points.
 */
export interface Series {
  readonly specimen: Specimen;
  readonly investigation: Investigation;
  readonly days: readonly SeriesDay[];
  readonly points: readonly SeriesPoint[];
}

export interface SeriesDay {
  readonly day: CivilDay;
  /** 1 is Monday, 7 is Sunday. */
  readonly weekday: number;
  /** Whether the plan asks for a reading on this day of the week. */
  readonly planned: boolean;
  /** A number wins over a word, a word over a mark; `blank` is a day nothing was written for. */
  readonly state: 'number' | 'word' | DayState | 'blank';
  /** Days since the day of the number before, where this day has one and there is one before. */
  readonly gapDays: number | null;
  readonly readings: readonly Reading[];
  readonly words: readonly KindNote[];
  readonly marks: readonly DayMark[];
  /** Lines that were taken back, or overtaken by a later mark: shown with a line through them. */
  readonly crossedOut: readonly (Reading | KindNote | DayMark)[];
}

export interface SeriesPoint {
  readonly day: CivilDay;
  readonly time?: ClockTime;
  readonly exact: number;
  readonly unit: Unit;
  readonly mark: MarkId;
  /** How many days a rain total covers; 1 for every other reading. */
  readonly spanDays: number;
  readonly reading: EntryId;
}

/** A log left alone for longer than this is not filled up with blank days until today. */
export const quietDays = 14;

/**
 * The series of one specimen, or null for a specimen the notebook does not know.
 *
 * It runs from the day the specimen was started (or the first line, if that is earlier) to the
 * day it or its investigation ended, or else to `today` while somebody wrote in it in the last fourteen days; and
 * always as far as its last line.
 *
 * @param today the day it is where the family is
 * @example
 * seriesOf(foldEntries([]), 'no-such-bean', '2026-03-10') // => null
 */
export function seriesOf(
  notebook: Notebook,
  specimenId: SpecimenId,
  today: CivilDay,
): Series | null {
  const specimen = notebook.specimens.get(specimenId);
  const investigation = specimen && findInvestigation(notebook, specimen);
  if (!specimen || !investigation) return null;
  const linesByDay = groupByDay(notebook, specimenId);
  const points = pointsOf(linesByDay);
  const endedOn = specimen.ended?.day ?? investigation.ended?.day ?? null;
  const range = rangeOf(specimen.startedOn, endedOn, [...linesByDay.keys()], today);
  let lastNumberDay: CivilDay | null = null;
  const days = daysFrom(range.first, range.last).map((day): SeriesDay => {
    const lines = linesByDay.get(day) ?? noLines;
    const state = stateOf(lines);
    const gapDays = state === 'number' && lastNumberDay ? daysBetween(lastNumberDay, day) : null;
    if (state === 'number') lastNumberDay = day;
    const weekday = weekdayOf(day);
    return {
      ...lines,
      ...{ day, weekday, planned: investigation.weekdays.includes(weekday), state, gapDays },
    };
  });
  return { specimen, investigation, days, points };
}

/** The investigation of a specimen, also while it is removed. */
const findInvestigation = (notebook: Notebook, specimen: Specimen): Investigation | undefined =>
  notebook.investigations.get(specimen.investigation) ??
  notebook.removed.find((each) => each.investigation.id === specimen.investigation)?.investigation;

function groupByDay(notebook: Notebook, specimen: SpecimenId): Map<CivilDay, DayLines> {
  const log = notebook.logBySpecimen.get(specimen);
  const linesByDay = new Map<CivilDay, MutableDayLines>();
  const at = (day: CivilDay): MutableDayLines => {
    const known = linesByDay.get(day);
    if (known) return known;
    const fresh: MutableDayLines = { readings: [], words: [], marks: [], crossedOut: [] };
    linesByDay.set(day, fresh);
    return fresh;
  };
  for (const reading of log?.readings ?? []) {
    const lines = at(reading.day);
    (reading.takenBack ? lines.crossedOut : lines.readings).push(reading);
  }
  for (const note of log?.kindNotes ?? []) {
    const lines = at(note.day);
    (note.takenBack ? lines.crossedOut : lines.words).push(note);
  }
  for (const mark of log?.dayMarks ?? []) {
    const lines = at(mark.day);
    (mark.takenBack ? lines.crossedOut : lines.marks).push(mark);
  }
  for (const lines of linesByDay.values()) {
    lines.readings.sort(byTime);
    crossOutOvertaken(lines);
  }
  return linesByDay;
}

/** The last mark of a time of day stands; those before it are crossed out. */
function crossOutOvertaken(lines: MutableDayLines): void {
  const lastAt = new Map(lines.marks.map((mark) => [mark.time, mark]));
  lines.crossedOut.push(...lines.marks.filter((mark) => lastAt.get(mark.time) !== mark));
  lines.marks = lines.marks.filter((mark) => lastAt.get(mark.time) === mark);
}

const stateOf = (lines: DayLines): SeriesDay['state'] => {
  if (lines.readings.length > 0) return 'number';
  if (lines.words.length > 0) return 'word';
  return lines.marks.at(-1)?.state ?? 'blank';
};

const pointsOf = (linesByDay: ReadonlyMap<CivilDay, DayLines>): SeriesPoint[] =>
  [...linesByDay]
    .sort(([left], [right]) => (left < right ? -1 : 1))
    .flatMap(([day, lines]) =>
      lines.readings.map(({ id, time, counted, spanDays }) => ({
        ...{ day, spanDays, reading: id },
        ...{ exact: counted.exact, unit: counted.unit, mark: counted.mark },
        ...(time === undefined ? {} : { time }),
      })),
    );

function rangeOf(
  startedOn: CivilDay,
  endedOn: CivilDay | null,
  written: readonly CivilDay[],
  today: CivilDay,
) {
  const inOrder = [startedOn, ...written].sort();
  const first = inOrder[0]!;
  const lastLine = inOrder.at(-1)!;
  const stop = endedOn ?? (daysBetween(lastLine, today) <= quietDays ? today : lastLine);
  return { first, last: stop > lastLine ? stop : lastLine };
}

/** By the time of day, those without a time last, else in the order they were written. */
const byTime = (left: Reading, right: Reading): number =>
  left.time === right.time ? 0 : (left.time ?? '99:99') < (right.time ?? '99:99') ? -1 : 1;

interface DayLines {
  readonly readings: readonly Reading[];
  readonly words: readonly KindNote[];
  readonly marks: readonly DayMark[];
  readonly crossedOut: readonly (Reading | KindNote | DayMark)[];
}

type MutableDayLines = { -readonly [Field in keyof DayLines]: DayLines[Field][number][] };

const noLines: DayLines = { readings: [], words: [], marks: [], crossedOut: [] };
