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
  const days = [...new Set(contents.map(({ day }) => day))].sort();
  const readings = contents.filter((each) => each.kind === 'reading');
  const numbers = readings.map(({ measured }) => measured);
  const words = contents.filter((each) => each.kind === 'kind-word').map(({ word }) => word);
  const readBefore = new Set(
    existing?.readings.filter(({ takenBack }) => takenBack === null).map(({ day }) => day),
  );
  const [first, last] = [days[0], days.at(-1)];
  return {
    comingIn: contents.length,
    days: first && last ? { first, last } : null,
    range: rangeOf(numbers),
    usual: usualOf(numbers),
    words: [...countEach(words)].map(([word, count]) => ({ word, count })),
    weekdays: [...new Set(days.map(weekdayOf))].sort(),
    daysToCome: days.filter((day) => day > today).length,
    daysWithAnother: new Set(readings.map(({ day }) => day).filter((day) => readBefore.has(day)))
      .size,
  };
}

type ComingIn = PreviewRow & { readonly what: RowContent; readonly why: null };

/** Whether the row would become a line of the log. */
export const comesIn = (row: PreviewRow): row is ComingIn => row.why === null;

function rangeOf(numbers: readonly Measured[]): PreviewFacts['range'] {
  const [first, ...others] = numbers;
  if (!first) return null;
  let [least, greatest] = [first, first];
  for (const number of others) {
    if (number.exact < least.exact) least = number;
    if (number.exact > greatest.exact) greatest = number;
  }
  return { least, greatest };
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
