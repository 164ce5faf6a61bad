import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { hourValues } from './shown-values';
import { aCount, aLength, aTime, aWord } from './told';

const about = {
  id: 'R10',
  level: 'read',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R10: how long the shadow was at a time, in the unit of the graph. */
export const howLongAtTime: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const values = hourValues(facts);
    return values.flatMap((value, index) => {
      const { time, exact, unit, isSure } = value;
      if (!isSure || time === null) return [];
      const number = inUnits(exact, unit);
      const others = [values[index + 1], values[index - 1]].flatMap((each) => each ?? []);
      return askFairly(about, facts, {
        blanks: { time: aTime(time), unit: aWord(unit) },
        answer: aLength(exact, value),
        slips: [
          ...others.map((each): Slip => ({ told: aLength(each.exact, each), shows: 'other-time' })),
          { told: aCount(number, ''), shows: 'forgot-unit' },
        ],
        fits: reading(number),
      });
    });
  },
};
