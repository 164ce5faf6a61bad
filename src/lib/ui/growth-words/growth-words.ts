import type { Result } from '#core/base';
import { daysBetween, formatDay, yearOf, type CivilDay } from '#core/calendar';
import {
  amountIn,
  fairShare,
  minimumGapDays,
  perDayText,
  type Change,
  type LatestChangeError,
} from '#core/growth';
import type { Quantity } from '#core/journal';
import { formatExact, markById, unitCatalogue, type Unit } from '#core/measure';
import { amountWords, toldAmount, unitWord } from './amount-words';
import { daysWords } from '#ui/words';
import { markWords } from '#ui/words';

/** What the Growth page says: one sentence to read with the child, the rest to the grown-up. */

/**
 * The change in sentences of at most ten words. A day of the week just gone, or just to come, is
 * called by its name, an older one by its date.
 */
export function childGrowthWords(
  latest: Result<Change, LatestChangeError>,
  quantity: Quantity,
  today: CivilDay,
): readonly string[] {
  if (!latest.ok) return waitingWords(latest.error, today);
  const { from, to } = latest.value;
  const what = changeWords(latest.value, quantity);
  const when = `from ${dayWords(from.day, today)} to ${dayWords(to.day, today)}`;
  const sentence = `${what} ${when}.`;
  return wordCount(sentence) <= 10 ? [sentence] : [`${what}.`, `That was ${when}.`];
}

const changeWords = ({ exact, from, to }: Change, quantity: Quantity): string => {
  const isCount = to.unit === 'count';
  if (exact === 0) return isCount ? 'We counted the same' : 'It stayed the same';
  const amount = amountWords(toldAmount(amountIn(Math.abs(exact), [from.mark, to.mark], to.unit)));
  if (isCount) return `We counted ${amount} ${exact > 0 ? 'more' : 'fewer'}`;
  if (exact < 0) return `It got ${amount} shorter`;
  return quantity === 'plant-height' ? `It grew ${amount}` : `It got ${amount} longer`;
};

const waitingWords = (error: LatestChangeError, today: CivilDay): readonly string[] => {
  switch (error.kind) {
    case 'too-few':
      return [error.have === 0 ? 'We have no measure yet.' : 'We need one more measure.'];
    case 'units-mixed':
      return ['We used two units.', 'We need two measures in the same unit.'];
    case 'too-soon':
      return error.measureOn > today
        ? ['It is too soon to tell.', `Measure again on ${dayWords(error.measureOn, today)}.`]
        : ['We need one more measure.'];
  }
};

/** `Tuesday` for the six days on either side of today, `3 March` or `3 March 2025` beyond. */
export const dayWords = (day: CivilDay, today: CivilDay): string => {
  const [weekday, dayOfMonth, month, year] = formatDay(day, 'long').split(' ');
  if (Math.abs(daysBetween(day, today)) <= 6) return weekday as string;
  return `${dayOfMonth} ${month}${yearOf(day) === yearOf(today) ? '' : ` ${year}`}`;
};

/** A change dealt out over its days like cubes: "about 1 cm a day, and a bit more". */
export function shareWords(change: Change): string {
  const { unit } = change.to;
  const share = fairShare(change);
  if (!share.ok) {
    return `about ${perDayText(change.perDay, unit, 2)}${unitWord(unit)} a day`;
  }
  const { direction, mark, wholeMarks, leftOverMarks } = share.value;
  if (direction === 'same') return 'no change';
  const marksIn = (count: number): string =>
    amountWords(formatExact(count * markById(mark).exact, unit, mark));
  const less = unit === 'count' ? 'fewer by ' : 'shorter by ';
  const start = direction === 'less' ? less : '';
  if (wholeMarks === 0) return `${start}less than ${marksIn(1)} a day`;
  if (leftOverMarks === 0) return `${start}${marksIn(wholeMarks)} a day`;
  return `${start}about ${marksIn(wholeMarks)} a day, and a bit more`;
}

export const changeTableWords = {
  none: 'There is no change to show yet: it takes readings on two days.',
  noneLongEnough: 'No two readings are far enough apart yet.',
  shared:
    '“Shared out” deals the change out over its days like cubes, with the left-overs said aloud. The column before it is the same share as a decimal, for you.',
} as const;

/** The units a page can be shown in. */
export const pageUnitWords = (unit: Unit, readIn: Unit): string => {
  const { plural } = unitCatalogue().find((each) => each.unit === unit) ?? { plural: 'things' };
  return unit === readIn ? `${plural}, as read` : `${plural} (about)`;
};

export const leftOutWords = (count: number): string =>
  `${count === 1 ? 'One reading is' : `${count} readings are`} left out here: lengths and counts cannot be held against each other. The log has them all.`;

export const tooShortWords = 'too short a gap to trust';

/** Why gaps are too short, once for each mark that asks for a longer one. */
export const whyTooShortWords = (changes: readonly Change[]): readonly string[] => {
  const asking = changes
    .filter((change) => !change.longEnough)
    .map(({ from, to }) =>
      minimumGapDays(from.mark) >= minimumGapDays(to.mark) ? from.mark : to.mark,
    );
  return [...new Set(asking)].map(
    (mark) =>
      `Read to the ${markWords[mark]}, two readings need ${daysWords(minimumGapDays(mark))} between them: each is rounded, and over a shorter gap the rounding can be as large as the growth.`,
  );
};

const wordCount = (sentence: string): number => sentence.split(' ').length;
