import { formatDay, yearOf, type CivilDay } from '#core/calendar';
import type { KindTally, LineGraph } from '#core/graphs';
import { formatExact, isLengthUnit, systemOf, type Unit } from '#core/measure';
import { amountIn, type ShadowDay } from '#core/growth';
import type { Quantity } from '#core/journal';
import type { SeriesPoint } from '#core/series';
import { amountWords, toldAmount, unitWord } from './amount-words';
import { dayWords } from './growth-words';
import { daysWords } from '#ui/words';

/** What is said of a graph to somebody who does not see it, and beside it to somebody who does. */

/** A reading as it was read. */
export const readingWords = ({ exact, unit, mark }: SeriesPoint): string =>
  formatExact(exact, unit, mark);

/** A reading in the unit of the page: with "about" when it was read in the other system. */
export const readingInUnit = (reading: SeriesPoint, unit: Unit): string =>
  toldAmount(amountIn(reading.exact, [reading.mark], unit));

/** When a reading was taken: `Tuesday 3 March 2026`, with the time where it has one. */
export const readingWhenWords = ({ day, time }: SeriesPoint): string =>
  time === undefined ? formatDay(day, 'long') : `${formatDay(day, 'long')}, ${time}`;

const inSentence = (reading: SeriesPoint): string => amountWords(readingWords(reading));

/** One sentence for each line: how many readings, from when to when, from how much to how much. */
export const timeGraphSentences = (graph: LineGraph): readonly string[] =>
  graph.lines.map(({ name, points, extra, joins }) => {
    const [first, last] = [points[0]!.reading, points.at(-1)!.reading];
    const count = points.length + extra.length;
    const gaps = joins.filter((join) => join === 'across-a-gap').length;
    const from = `${formatDay(first.day, 'short')} ${yearOf(first.day)}`;
    if (count === 1) return `${name}: one reading, ${inSentence(first)} on ${from}.`;
    const to = `${formatDay(last.day, 'short')} ${yearOf(last.day)}`;
    const missed =
      gaps === 0 ? '' : `, with ${gaps === 1 ? 'a gap' : `${gaps} gaps`} that nobody measured`;
    return `${name}: ${count} readings, from ${inSentence(first)} on ${from} to ${inSentence(last)} on ${to}${missed}.`;
  });

export const clockGraphSentence = (graph: LineGraph, day: CivilDay): string => {
  const points = graph.lines[0]!.points.map(({ reading }) => reading);
  const [first, last] = [points[0]!, points.at(-1)!];
  return `${formatDay(day, 'long')}: ${points.length} readings, from ${inSentence(first)} at ${first.time} to ${inSentence(last)} at ${last.time}.`;
};

/** What stands up the side of a graph. */
export const sideWords = (quantity: Quantity, unit: Unit, readIn: Unit): string => {
  if (!isLengthUnit(unit)) return 'How many';
  const about = systemOf(unit) === systemOf(readIn) ? '' : ' (about)';
  return `${sideNames[quantity] ?? 'Length'} in${unitWord(unit)}${about}`;
};

const sideNames: Readonly<Partial<Record<Quantity, string>>> = {
  'plant-height': 'Height',
  shadow: 'Length of the shadow',
};

export const grownUpsGraph =
  'This graph is for the grown-up: it is worked out from the log. The child draws their own first.';

export const shadowWords = {
  oneDay:
    'A shadow is compared through the hours of one day. It has no growth per day and no trend here.',
  noTimes: 'No reading of this day has a time, so there is nothing to put on a clock.',
} as const;

/** From when to when a tally runs, and what it leaves out. */
export const kindSpanWords = (tally: KindTally): readonly string[] => {
  if (!tally.firstDay || !tally.lastDay) return [];
  const missed =
    tally.daysMissed === 0 ? '' : ` ${daysWords(tally.daysMissed)} planned, without a word.`;
  return [
    `${daysWords(tally.daysWithWord)} with a word, from ${formatDay(tally.firstDay, 'long')} to ${formatDay(tally.lastDay, 'long')}.${missed}`,
  ];
};

/** The shortest shadow in sentences of at most ten words. */
export function childShadowWords(day: ShadowDay | undefined, today: CivilDay): readonly string[] {
  if (!day) return ['We have no measure yet.'];
  const [shortest] = day.shortest;
  if (!shortest) {
    const missing = 3 - day.readings.filter(({ time }) => time !== undefined).length;
    return [missing <= 1 ? 'We need one more measure.' : 'We need two more measures.'];
  }
  const times = day.shortest.map(({ time }) => time).join(' and ');
  return [
    `The shadow was shortest at ${times}.`,
    `It was ${inSentence(shortest)} long on ${dayWords(day.day, today)}.`,
  ];
}

/** The word that came most in sentences of at most ten words. */
export function childKindWords({ most, words }: KindTally): readonly string[] {
  const days = words.find(({ word }) => word === most[0])?.days ?? 0;
  if (most.length === 0) return ['We have no word yet.'];
  if (most.length === 1)
    return [`The word we wrote most: ${most[0]}.`, `It came on ${daysWords(days)}.`];
  const named = `${most.slice(0, -1).join(', ')} and ${most.at(-1)}`;
  return [`These came most: ${named}.`, `Each came on ${daysWords(days)}.`];
}
