import { formatDay } from '#core/calendar';
import { decimalText, type TrendTwice, type TrendTwiceError } from '#core/growth';
import type { Unit } from '#core/measure';
import type { OpenDoubt } from '#core/series';
import { unitWord } from './amount-words';
import { trendTooFewWords } from './trend-words';

/** The trend with and without the readings somebody is unsure about. */

export const withEveryReading = 'With every reading';

/** `Without Thursday 19 March`, or without all of several. */
export const withoutWords = (doubted: readonly OpenDoubt[]): string => {
  const days = [...new Set(doubted.map(({ reading }) => reading.day))];
  const [first, second, third] = days.map((day) => formatDay(day, 'long').replace(/ \d{4}$/, ''));
  if (days.length === 1) return `Without ${first}`;
  if (days.length === 2) return `Without ${first} and ${second}`;
  if (days.length === 3) return `Without ${first}, ${second} and ${third}`;
  return `Without ${doubted.length} readings that were asked about`;
};

/** What leaving them out does to both slopes, in words; the list of what it rests on follows. */
export const twiceWords = ({ withAll, without, difference }: TrendTwice): readonly string[] =>
  (
    [
      ['Middle slope', 'medianOfSlopes'],
      ['Closest line', 'leastSquares'],
    ] as const
  ).map(([name, line]) => {
    const [all, fewer] = [withAll[line].growthPerDay, without[line].growthPerDay].map((value) =>
      perDay(value, withAll.unit),
    );
    const size = perDay(Math.abs(difference[line]), withAll.unit);
    if (all === fewer) return `${name}: ${all} a day with and without.`;
    return `${name}: ${all} a day with, ${fewer} without, ${size} ${difference[line] > 0 ? 'more' : 'less'}.`;
  });

export const cannotTellTwice = (error: TrendTwiceError): string =>
  error.which === 'without' ? `Without them: ${trendTooFewWords(error)}` : trendTooFewWords(error);

export const neverRemoved =
  'The graph and the log keep every reading; only the trend is worked out anew.';

const perDay = (value: number, unit: Unit): string => `${decimalText(value, 2)}${unitWord(unit)}`;
