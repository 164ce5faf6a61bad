import type { DayState } from '#core/journal';

/** What one place in the row is. 'blank' is a day nothing was written for. */
export type StripState = 'number' | DayState | 'blank';

/** One day's place in the row. */
export interface StripDay {
  /** The day as the page writes it: "Mon 2". The part after the first space stands below. */
  readonly day: string;
  /** The day in full, for who hears the row or reads its table: "Mon 2 Mar 09:00". */
  readonly dayInFull?: string;
  readonly state: StripState;
  /** Whole nanometres; null for every state but 'number'. */
  readonly exact: number | null;
  /** The reading as it was written, with its unit; not used for the other states. */
  readonly text: string;
  readonly isNewest: boolean;
  /** How many days a rain total covers; its column is as wide as its days. 1 when not said. */
  readonly spanDays?: number;
}

/** A stem stands on the ground, rain stands in a gauge, a shadow lies along the ground. */
export type StripVariant = 'stem' | 'gauge' | 'ground';

/** The words for a day without a number. */
export const stateWords: Readonly<Record<DayState, string>> = {
  'not-up-yet': 'not up yet',
  missed: 'we missed it',
  'no-sun': 'no sun, no shadow',
  trace: 'a trace: wet, too little to measure',
  lost: 'lost',
};

/** The words for any place in the row. */
export const wordsOf = (day: StripDay): string => {
  if (day.state === 'number') {
    return spanOf(day) > 1 ? `${day.text}, a total for ${spanOf(day)} days` : day.text;
  }
  return day.state === 'blank' ? 'nothing written' : stateWords[day.state];
};

/** The days that have a number, in order. */
export const measuredDays = (days: readonly StripDay[]): readonly StripDay[] =>
  days.filter((day) => day.state === 'number' && day.exact !== null);

/** Whether a later total for several days covers this one: it has no place of its own then. */
export const isCovered = (days: readonly StripDay[], index: number): boolean =>
  days.some((later, laterIndex) => laterIndex > index && laterIndex - spanOf(later) < index);

/** How many places a day takes up. */
export const spanOf = (day: StripDay): number =>
  day.state === 'number' ? Math.max(1, day.spanDays ?? 1) : 1;

/** The states that are drawn, for the key under the row. */
export const statesShown = (days: readonly StripDay[]): readonly DayState[] => {
  const states = days
    .filter((_, index) => !isCovered(days, index))
    .map((day) => day.state)
    .filter((state) => state in stateWords);
  return [...new Set(states)] as DayState[];
};
