import { askFairly } from './ask-fairly';
import { adding } from './fits-range';
import type { QuestionTemplate } from './question';
import { pairsOf, shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'C3',
  level: 'between',
  graphs: ['picture-graph', 'bar-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c'],
} as const;

/** C3: how many days of two kinds together, where no day is of two kinds. */
export const howManyTogether: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    if (!counts?.isEachOnce) return [];
    const { of, rows } = counts;
    return pairsOf(rows).flatMap(([one, other]) => {
      const isInOrder = rows.indexOf(one) < rows.indexOf(other);
      if (!isInOrder || one.count === 0 || other.count === 0) return [];
      return askFairly(about, facts, {
        blanks: { one: aWord(one.label), other: aWord(other.label), counted: aWord(of) },
        answer: aCount(one.count + other.count, of),
        slips: [
          { told: aCount(2, of), shows: 'counted-kinds' },
          { told: aCount(Math.max(one.count, other.count), of), shows: 'one-part-only' },
        ],
        fits: adding(one.count, other.count),
      });
    });
  },
};
