import { weekdayOf, type CivilDay } from '#core/calendar';
import type { ExistingLog, PreviewRow, RowContent } from '#core/exchange';
import type { Measured } from '#core/measure';

/** What is worth knowing about the rows that would come in, before they do. */
export interface PreviewFacts {
  readonly comingIn: number;
  readonly days: { readonly first: CivilDay; readonly last: CivilDay } | null;
  readonly range: { readonly least: Measured; readonly greatest: Measured } | null;
  /** A number read as most of them were: the unit and mark for a new investigation. */
  readonly usual: Measured | null;
  /** The words of the days and how often each comes, in the order they first come. */
  readonly words: readonly { readonly word: string; readonly count: number }[];
  /** The days of the week on which anything stands, Monday 1 to Sunday 7. */
  readonly weekdays: readonly number[];
  /** How many days are later than today. */
  readonly daysToCome: number;
  /** How many days have another number in the log already: both would stand there. */
  readonly daysWithAnother: number;
}

export function previewFacts(
  rows: readonly PreviewRow[],
  existing: ExistingLog | null,
  today: CivilDay,
): PreviewFacts {
  const contents = rows.filter(comesIn).map(({ what }) => what);
  const readings = contents.filter((each) => each.kind === 'reading');
  const numbers = readings.map(({ measured }) => measured);
  const words = contents.filter((each) => each.kind === 'kind-word').map(({ word }) => word);
  const readBefore = new Set(
    existing?.readings.filter(({ takenBack }) => takenBack === null).map(({ day }) => day),
  );
  const days = new Set(contents.map(({ day }) => day));
  const again = new Set(readings.map(({ day }) => day).filter((day) => readBefore.has(day)));
  return {
    comingIn: contents.length,
    days: firstAndLast(days),
    range: rangeOf(numbers),
    usual: usualOf(numbers),
    words: [...countEach(words)].map(([word, count]) => ({ word, count })),
    weekdays: weekdaysOf(days),
    daysToCome: [...days].filter((day) => day > today).length,
    daysWithAnother: again.size,
  };
}

type ComingIn = PreviewRow & { readonly what: RowContent; readonly why: null };

/** Whether the row would become a line of the log. */
export const comesIn = (row: PreviewRow): row is ComingIn => row.why === null;

function firstAndLast(days: Iterable<CivilDay>): PreviewFacts['days'] {
  let found = null as PreviewFacts['days'];
  for (const day of days) {
    if (!found) found = { first: day, last: day };
    else if (day < found.first) found = { ...found, first: day };
    else if (day > found.last) found = { ...found, last: day };
  }
  return found;
}

/** A long table has every day of the week soon: the rest need not be looked at. */
function weekdaysOf(days: Iterable<CivilDay>): readonly number[] {
  const weekdays = new Set<number>();
  for (const day of days) {
    weekdays.add(weekdayOf(day));
    if (weekdays.size === 7) break;
  }
  return [...weekdays].sort();
}

function rangeOf(numbers: readonly Measured[]): PreviewFacts['range'] {
  let found = null as PreviewFacts['range'];
  for (const number of numbers) {
    if (!found) found = { least: number, greatest: number };
    else if (number.exact < found.least.exact) found = { ...found, least: number };
    else if (number.exact > found.greatest.exact) found = { ...found, greatest: number };
  }
  return found;
}

function usualOf(numbers: readonly Measured[]): Measured | null {
  const countByMark = countEach(numbers.map(unitAndMark));
  const most = Math.max(0, ...countByMark.values());
  return numbers.find((number) => countByMark.get(unitAndMark(number)) === most) ?? null;
}

const unitAndMark = ({ unit, mark }: Measured): string => `${unit} ${mark}`;

function countEach(texts: readonly string[]): ReadonlyMap<string, number> {
  const countByText = new Map<string, number>();
  for (const text of texts) countByText.set(text, (countByText.get(text) ?? 0) + 1);
  return countByText;
}
