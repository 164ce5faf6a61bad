import { daysBetween, type CivilDay } from '#core/calendar';
import { kindTally } from '#core/graphs';
import { minimumGapDays } from '#core/growth';
import type { Notebook, Stage } from '#core/journal';
import type { Told } from '#core/questions';
import type { Series } from '#core/series';
import {
  investigationsInOrder,
  logsOf,
  ownNumbersOf,
  type OwnNumber,
  type OwnNumbers,
} from './review-own-numbers';
import { sumAnswer, sumRange, sumTold, sumUnknowns, type Sum, type SumUnknown } from './review-sum';

/**
 * Every sum that the log can tell at a stage, those of running investigations first, then the
 * newest logs, in the order of the days. Both numbers are whole, read once, in the same unit to the
 * same mark, doubted by nobody, and lie at most six days apart, so that the names of the weekdays
 * say which days they are. Growth needs a gap that its mark deserves. A sum whose answer is 0, or
 * is told in it, is none.
 *
 * @param today days after it do not count
 * @example
 * logSumsOf(foldEntries([]), 'grade-2', '2026-03-10') // => []
 */
export const logSumsOf = (notebook: Notebook, stage: Stage, today: CivilDay): readonly Sum[] =>
  investigationsInOrder(notebook).flatMap((investigation) => {
    const logs = logsOf(notebook, investigation, today);
    return logs.flatMap((series) => sumsOfLog(notebook, series, logs, stage));
  });

const sumsOfLog = (
  notebook: Notebook,
  series: Series,
  logs: readonly Series[],
  stage: Stage,
): readonly Sum[] => {
  const found =
    series.investigation.quantity === 'daily-kind'
      ? kindPairs(series)
      : pairsOf(ownNumbersOf(notebook, series, logs));
  return found.flatMap((pair) => {
    if (sumRange(pair, stage) === null) return [];
    return askedOf(pair.story)
      .map((unknown): Sum => ({ ...pair, unknown }))
      .filter(isFair);
  });
};

type Pair = Omit<Sum, 'unknown'>;

const pairsOf = (own: OwnNumbers): readonly Pair[] =>
  own.numbers.flatMap((first, index) =>
    own.numbers.slice(index + 1).flatMap((second) => pairOf(own, first, second)),
  );

const pairOf = (own: OwnNumbers, first: OwnNumber, second: OwnNumber): readonly Pair[] => {
  const gapDays = daysBetween(first.day, second.day);
  const isAlike = first.unit === second.unit && first.mark === second.mark;
  if (!isAlike || gapDays > mostGapDays) return [];
  const about = { of: own.name, specimen: own.specimen, unit: first.unit, isPractice: false };
  switch (own.quantity) {
    case 'rain':
      if (gapDays === 0) return [];
      return [
        {
          ...{ ...about, story: 'together', thing: 'rain' },
          ...{ first: aDay(first), second: aDay(second) },
          ...{ start: first.number, change: second.number, result: first.number + second.number },
        },
      ];
    case 'shadow': {
      if (gapDays > 0 || first.time === null || second.time === null) return [];
      const [shorter, longer] = first.number < second.number ? [first, second] : [second, first];
      return [
        {
          ...{ ...about, story: 'more', thing: 'shadow' },
          ...{ first: aTime(shorter), second: aTime(longer) },
          ...{ start: shorter.number, change: longer.number - shorter.number },
          result: longer.number,
        },
      ];
    }
    case 'plant-height':
    case 'length':
      if (gapDays < minimumGapDays(first.mark)) return [];
      return [
        {
          ...{ ...about, story: 'grew' },
          thing: own.quantity === 'length' ? 'length' : 'height',
          ...{ first: aDay(first), second: aDay(second) },
          ...{ start: first.number, change: second.number - first.number, result: second.number },
        },
      ];
    case 'daily-kind':
      return [];
  }
};

/** How many more days of one kind than of another there were so far. */
const kindPairs = (series: Series): readonly Pair[] => {
  const words = kindTally(series).words.filter(({ days }) => days > 0);
  return words.flatMap((fewer) =>
    words
      .filter((more) => more.days > fewer.days)
      .map((more): Pair => {
        const { specimen } = series;
        return {
          ...{ story: 'more', thing: 'days', of: specimen.name, specimen: specimen.id },
          ...{ unit: 'count', isPractice: false },
          ...{ first: aWord(fewer.word), second: aWord(more.word) },
          ...{ start: fewer.days, change: more.days - fewer.days, result: more.days },
        };
      }),
  );
};

/** Which of its numbers a story can ask for. Not part of the public door. */
export const askedOf = (story: Sum['story']): readonly SumUnknown[] =>
  story === 'more' ? ['change', 'result'] : sumUnknowns;

/**
 * Whether there is something to find out: no 0, no answer that stands in the question already, and
 * no day of the month or hour that is the answer. Not part of the public door.
 */
export const isFair = (sum: Sum): boolean => {
  const answer = sumAnswer(sum);
  const { start, change, result } = sum;
  if (Math.min(start, change, result) <= 0 || sumTold(sum).includes(answer)) return false;
  return ![sum.first, sum.second].flatMap(numbersIn).includes(answer);
};

const numbersIn = (told: Told): readonly number[] => {
  if (told.kind === 'day') return [Number(told.day.slice(8, 10))];
  if (told.kind !== 'time') return [];
  const hour = Number(told.time.slice(0, 2));
  return [hour, hour % 12 === 0 ? 12 : hour % 12, Number(told.time.slice(3, 5))];
};

/** Further apart, the name of a weekday could be of two weeks. */
const mostGapDays = 6;

const aDay = ({ day }: OwnNumber): Told => ({ kind: 'day', day });
const aTime = ({ time }: OwnNumber): Told => ({ kind: 'time', time: time! });
const aWord = (word: string): Told => ({ kind: 'word', word });
