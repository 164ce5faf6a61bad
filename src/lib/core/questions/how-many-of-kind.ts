import { askFairly } from './ask-fairly';
import { reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'R2',
  level: 'read',
  graphs: ['picture-graph', 'bar-graph'],
  ranges: ['G1', 'G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R2: how many days of one kind were marked. */
export const howManyOfKind: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    if (!counts) return [];
    const { of, rows } = counts;
    return rows.flatMap((row) => {
      const others = rows.filter((each) => each !== row && each.count > 0);
      return askFairly(about, facts, {
        blanks: { kind: aWord(row.label), counted: aWord(of) },
        answer: aCount(row.count, of),
        slips: [
          { told: aCount(row.count + 1, of), shows: 'off-by-one' },
          ...others.map(({ count }): Slip => ({
            told: aCount(count, of),
            shows: 'other-category',
          })),
        ],
        fits: reading(row.count),
      });
    });
  },
};
