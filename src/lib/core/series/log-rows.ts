import { addDays, daysBetween, type CivilDay } from '#core/calendar';
import type { Note } from '#core/journal';
import { dayRows } from './day-rows';
import { daysOfLog, extraLinesByDay } from './extra-lines';
import type { BlankRow, BlanksRow, LogRow } from './log-row';
import type { Series } from './series';

/** A blank stretch of more days than this is folded to one row. */
export const foldedOverDays = 7;

/** Days the plan asks nothing of are folded sooner: a weekend is not, a week between is. */
const unplannedFoldedOverDays = 2;

/** A folded stretch of more days than this cannot be opened: it would bury the log. */
export const openedUpToDays = 100;

/**
 * A log as it is read on a page, row by row, the oldest day first. Within a day the lines that
 * count come first, then those with a line through them. Long blank stretches are folded, except
 * those that `opened` names by their first day; today is never folded away.
 *
 * @param notes the notes to be read with the log (notesOfSeries)
 * @example
 * logRows({ specimen: {}, investigation: {}, days: [], points: [] }, [], '2026-03-10', new Set()) // => []
 */
export function logRows(
  series: Series,
  notes: readonly Note[],
  today: CivilDay,
  opened: ReadonlySet<CivilDay>,
): readonly LogRow[] {
  const extraByDay = extraLinesByDay(series, notes);
  const rows: LogRow[] = [];
  let blanks: BlankRow[] = [];
  let before: CivilDay | null = null;
  const closeStretch = (): void => {
    rows.push(...(isFolded(blanks, opened) ? [stretchOf(blanks)] : blanks));
    blanks = [];
  };
  for (const day of daysOfLog(series, extraByDay)) {
    const isApart = before !== null && daysBetween(before, day.day) > 1;
    const ofDay = dayRows(day, extraByDay.get(day.day));
    const only = ofDay[0];
    const isPlainBlank = only?.kind === 'blank' && only.alone && day.day !== today;
    if (isApart || !isPlainBlank) closeStretch();
    if (before !== null && isApart) rows.push(unwritten(before, day.day));
    if (isPlainBlank) blanks.push(only);
    else rows.push(...ofDay);
    before = day.day;
  }
  closeStretch();
  return rows;
}

function isFolded(blanks: readonly BlankRow[], opened: ReadonlySet<CivilDay>): boolean {
  const first = blanks[0];
  if (!first || opened.has(first.day)) return false;
  if (blanks.length > foldedOverDays) return true;
  return blanks.length > unplannedFoldedOverDays && blanks.every((blank) => !blank.planned);
}

const stretchOf = (blanks: readonly BlankRow[]): BlanksRow =>
  stretch(blanks[0]!.day, blanks.at(-1)!.day, {
    planned: blanks.some((blank) => blank.planned),
    canOpen: blanks.length <= openedUpToDays,
  });

/** The days between two days of a log that is not laid out day by day there. */
const unwritten = (before: CivilDay, after: CivilDay): BlanksRow =>
  stretch(addDays(before, 1), addDays(after, -1), { planned: false, canOpen: false });

const stretch = (
  day: CivilDay,
  lastDay: CivilDay,
  { planned, canOpen }: Pick<BlanksRow, 'planned' | 'canOpen'>,
): BlanksRow => ({
  ...{ kind: 'blanks', key: `blanks-${day}`, day, lastDay, planned, canOpen, opensDay: true },
  dayCount: daysBetween(day, lastDay) + 1,
});
