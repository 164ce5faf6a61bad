import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { AskedQuestion, QuestionTemplate, Told } from './question';
import type { LessonFacts } from './lesson-facts';
import { dayLogs, hourValues, type ShownValue } from './shown-values';
import { aDay, aTime, aWord } from './told';

const about = {
  id: 'C6',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C6: put three to five days in order of their rain, or times in order of their shadow, the least
 * first. They follow one another in the log, and all are different and more than nothing. A plant
 * is left out, for its heights are in order as they stand.
 */
export const putInOrder: QuestionTemplate = {
  ...about,
  ask: (facts) => [
    ...dayLogs(facts)
      .filter(({ measured }) => measured === 'rain')
      .flatMap(({ values, measured }) => asks(facts, values, measured)),
    ...asks(facts, hourValues(facts), 'shadow'),
  ],
};

const asks = (
  facts: LessonFacts,
  values: readonly ShownValue[],
  measured: string,
): readonly AskedQuestion[] => {
  const asked = values.filter(({ exact }) => exact > 0);
  return [3, 4, 5].flatMap((length) =>
    asked.flatMap((_, start) => {
      const some = asked.slice(start, start + length);
      const isDistinct = new Set(some.map(({ exact }) => exact)).size === length;
      if (some.length < length || !isDistinct || some.some(({ isSure }) => !isSure)) return [];
      const inOrder = some.toSorted((one, other) => one.exact - other.exact);
      return askFairly(about, facts, {
        blanks: { measured: aWord(measured), things: orderOf(some) },
        answer: orderOf(inOrder),
        slips: [
          { told: orderOf(inOrder.toReversed()), shows: 'reversed' },
          { told: orderOf(some), shows: 'log-order' },
        ],
        fits: reading(...some.map(({ exact, unit }) => inUnits(exact, unit))),
        wholeSet: some.length === values.length,
      });
    }),
  );
};

const orderOf = (values: readonly ShownValue[]): Told => ({
  kind: 'order',
  things: values.map(({ day, time }) => (time === null ? aDay(day) : aTime(time))),
});
