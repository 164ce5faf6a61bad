import { askFairly } from './ask-fairly';
import { subtracting } from './fits-range';
import type { QuestionTemplate } from './question';
import { pairsOf, shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'C1',
  level: 'between',
  graphs: ['picture-graph', 'bar-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** C1: how many more days of one kind than of another that came too. */
export const howManyMoreOfKind: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    if (!counts) return [];
    const { of, rows } = counts;
    return pairsOf(rows).flatMap(([more, fewer]) => {
      if (more.count <= fewer.count || fewer.count === 0) return [];
      return askFairly(about, facts, {
        blanks: { more: aWord(more.label), fewer: aWord(fewer.label), counted: aWord(of) },
        answer: aCount(more.count - fewer.count, of),
        slips: [
          { told: aCount(more.count, of), shows: 'larger-value' },
          { told: aCount(more.count + fewer.count, of), shows: 'added' },
          { told: aCount(fewer.count, of), shows: 'smaller-value' },
        ],
        fits: subtracting(more.count, fewer.count),
      });
    });
  },
};
