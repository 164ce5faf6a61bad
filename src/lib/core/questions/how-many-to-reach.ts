import { askFairly } from './ask-fairly';
import { adding, allOf, subtracting } from './fits-range';
import type { QuestionTemplate } from './question';
import { shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'C12',
  level: 'between',
  graphs: ['picture-graph', 'bar-graph'],
  ranges: ['G2b', 'G2c', 'G3'],
} as const;

/**
 * C12, in two steps: two of three kinds are said and the third is read from the graph; how many
 * more of the third it takes to reach a full five or ten in all.
 */
export const howManyToReach: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    const rows = counts?.rows ?? [];
    if (!counts?.isEachOnce || rows.length !== 3 || rows.some(({ count }) => count === 0)) {
      return [];
    }
    const { of } = counts;
    const sum = rows.reduce((all, { count }) => all + count, 0);
    const goals = new Set([5, 10].map((step) => (Math.floor(sum / step) + 1) * step));
    return rows.flatMap((third) => {
      const [one, other] = rows.filter((row) => row !== third);
      if (!one || !other) return [];
      const told = one.count + other.count;
      return [...goals].flatMap((goal) =>
        askFairly(about, facts, {
          blanks: {
            ...{ one: aWord(one.label), oneCount: aCount(one.count, of) },
            ...{ other: aWord(other.label), otherCount: aCount(other.count, of) },
            ...{ third: aWord(third.label), goal: aCount(goal, of) },
          },
          answer: aCount(goal - sum, of),
          slips: [
            { told: aCount(goal - told, of), shows: 'one-step-only' },
            { told: aCount(sum, of), shows: 'added' },
          ],
          fits: allOf(adding(one.count, other.count, third.count), subtracting(goal, sum)),
        }),
      );
    });
  },
};
