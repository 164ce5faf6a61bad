import { askFairly } from './ask-fairly';
import { reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { dayLogs } from './shown-values';
import { aLength, aWord } from './told';

const about = {
  id: 'R8',
  level: 'read',
  graphs: ['bar-graph', 'line-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * R8: which days have no number. Only blank and missed days count: where a day says something else
 * (not up yet, a trace, a total of several days) it is not clear what "no number" means, and the
 * question is not asked. It takes a look at the whole log.
 */
export const whichDaysMissing: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const { table } = facts;
    return dayLogs(facts).flatMap(({ name, measured, without, values }) => {
      const [first, last] = [values.at(0), values.at(-1)];
      const inside = without.filter(
        ({ day }) => first && last && day > first.day && day < last.day,
      );
      const isClear = without.every(({ state }) => state === 'blank' || state === 'missed');
      if (!isClear || inside.length === 0 || inside.length > mostDays) return [];
      if (inside.length < without.length || table.form === 'counts') return [];
      return askFairly(about, facts, {
        blanks: { plant: aWord(name), measured: aWord(measured) },
        answer: { kind: 'days', days: inside.map(({ day }) => day) },
        slips: [{ told: aLength(0, table), shows: 'blank-is-zero' }],
        fits: reading(inside.length),
        wholeSet: true,
      });
    });
  },
};

/** A longer list is copying, not reading. */
const mostDays = 6;
