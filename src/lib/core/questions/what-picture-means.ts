import { askFairly } from './ask-fairly';
import { reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'R4',
  level: 'read',
  graphs: ['picture-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R4: what each picture stands for, where the graph has a key. */
export const whatPictureMeans: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    const { keyValue } = facts.right;
    if (!counts || keyValue === null) return [];
    const kind = counts.rows.find(({ count }) => count > 0);
    return askFairly(about, facts, {
      blanks: { counted: aWord(counts.of) },
      answer: aCount(keyValue, counts.of),
      slips: [
        { told: aCount(1, counts.of), shows: 'forgot-scale' },
        ...(kind ? [{ told: aWord(kind.label), shows: 'kind-for-key' } as Slip] : []),
      ],
      fits: reading(keyValue),
    });
  },
};
