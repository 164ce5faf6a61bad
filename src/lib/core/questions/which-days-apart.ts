import { daysBetween } from '#core/calendar';
import { askFairly } from './ask-fairly';
import { inUnits, subtracting } from './fits-range';
import type { QuestionTemplate } from './question';
import { dayLogs } from './shown-values';
import { aDay, aLength, aWord } from './told';

const about = {
  id: 'C5',
  level: 'between',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** C5: which two days, one after the other, are so much apart in height: one pair only. */
export const whichDaysApart: QuestionTemplate = {
  ...about,
  ask: (facts) =>
    dayLogs(facts).flatMap(({ name, measured, values }) => {
      const pairs = values.slice(1).flatMap((to, index) => {
        const from = values[index];
        if (!from || daysBetween(from.day, to.day) !== 1) return [];
        return [{ from, to, apart: Math.abs(to.exact - from.exact) }];
      });
      return pairs.flatMap(({ from, to, apart }) => {
        const isOnly = pairs.filter((pair) => pair.apart === apart).length === 1;
        if (!isOnly || apart === 0 || !from.isSure || !to.isSure) return [];
        const [larger, smaller] = from.exact > to.exact ? [from, to] : [to, from];
        return askFairly(about, facts, {
          blanks: {
            ...{ plant: aWord(name), measured: aWord(measured) },
            apart: aLength(apart, to),
          },
          answer: { kind: 'days', days: [from.day, to.day] },
          slips: [{ told: aDay(to.day), shows: 'one-day-only' }],
          fits: subtracting(inUnits(larger.exact, to.unit), inUnits(smaller.exact, to.unit)),
        });
      });
    }),
};
