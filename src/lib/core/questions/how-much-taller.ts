import { daysBetween } from '#core/calendar';
import { minimumGapDays } from '#core/growth';
import { askFairly } from './ask-fairly';
import { allOf, inUnits, reading, subtracting } from './fits-range';
import type { AskedQuestion, QuestionTemplate, Told } from './question';
import type { LessonFacts } from './lesson-facts';
import { pairsOf } from './shown-counts';
import { dayLogs, hourValues, type ShownLog, type ShownValue } from './shown-values';
import { aCount, aDay, aLength, aTime, aWord } from './told';

const about = {
  id: 'C2',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C2: how much taller on a later day, with the gap said, and the days far enough apart for the
 * mark; how much more rain on one day than on another; how much longer the shadow at one time.
 */
export const howMuchTaller: QuestionTemplate = {
  ...about,
  ask: (facts) => [
    ...dayLogs(facts).flatMap((log) => dayPairs(log).flatMap((pair) => askOf(facts, log, pair))),
    ...pairsOf(hourValues(facts)).flatMap((pair) =>
      askOf(facts, { name: '', measured: 'shadow' }, pair),
    ),
  ],
};

type Pair = readonly [more: ShownValue, less: ShownValue];

/** Growth goes forward and needs a gap that its mark deserves; the rain of two days does not. */
const dayPairs = ({ measured, values }: ShownLog): readonly Pair[] =>
  pairsOf(values).filter(
    ([more, less]) =>
      measured === 'rain' ||
      (daysBetween(less.day, more.day) >= minimumGapDays(more.readMark) &&
        daysBetween(less.day, more.day) >= minimumGapDays(less.readMark) &&
        daysBetween(less.day, more.day) <= mostGapDays),
  );

/** Further apart, nobody counts the days between on a graph. */
const mostGapDays = 14;

const askOf = (
  facts: LessonFacts,
  { name, measured }: Pick<ShownLog, 'name' | 'measured'>,
  [more, less]: Pair,
): readonly AskedQuestion[] => {
  if (!more.isSure || !less.isSure || more.unit !== less.unit) return [];
  if (more.exact <= less.exact || less.exact === 0) return [];
  const when = ({ day, time }: ShownValue): Told => (time === null ? aDay(day) : aTime(time));
  const isGrowth = measured !== 'rain' && more.time === null;
  const gapDays = daysBetween(less.day, more.day);
  const [larger, smaller] = [inUnits(more.exact, more.unit), inUnits(less.exact, less.unit)];
  return askFairly(about, facts, {
    blanks: {
      ...(name === '' ? {} : { plant: aWord(name) }),
      ...{ measured: aWord(measured), more: when(more), less: when(less) },
      ...(isGrowth ? { gap: aCount(gapDays, 'days') } : {}),
    },
    answer: aLength(more.exact - less.exact, more),
    slips: [
      { told: aLength(more.exact, more), shows: 'larger-value' },
      { told: aLength(more.exact + less.exact, more), shows: 'added' },
      { told: aCount(larger - smaller, ''), shows: 'forgot-unit' },
    ],
    fits: allOf(subtracting(larger, smaller), reading(isGrowth ? gapDays : 0)),
  });
};
