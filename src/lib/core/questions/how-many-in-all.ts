import { askFairly } from './ask-fairly';
import { adding } from './fits-range';
import type { QuestionTemplate } from './question';
import { shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'C4',
  level: 'between',
  graphs: ['picture-graph', 'bar-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** C4: how many days were marked in all, where no day is of two kinds. */
export const howManyInAll: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    if (!counts?.isEachOnce) return [];
    const { of, rows } = counts;
    const addends = rows.map(({ count }) => count).filter((count) => count > 0);
    if (addends.length < fewestKinds) return [];
    return askFairly(about, facts, {
      blanks: { counted: aWord(of) },
      answer: aCount(
        addends.reduce((sum, count) => sum + count, 0),
        of,
      ),
      slips: [
        { told: aCount(rows.length, of), shows: 'counted-kinds' },
        { told: aCount(Math.max(...addends), of), shows: 'one-part-only' },
      ],
      fits: adding(...addends),
      wholeSet: true,
    });
  },
};

const fewestKinds = 2;
