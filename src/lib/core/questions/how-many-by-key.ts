import { askFairly } from './ask-fairly';
import { multiplying } from './fits-range';
import type { QuestionTemplate } from './question';
import { shownCounts } from './shown-counts';
import { aCount, aWord } from './told';

const about = {
  id: 'C14',
  level: 'between',
  graphs: ['picture-graph'],
  ranges: ['G3'],
} as const;

/** C14: how many days of a kind, when each picture means 2, 5 or 10, and half a picture half. */
export const howManyByKey: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const counts = shownCounts(facts);
    const { keyValue } = facts.right;
    if (!counts || keyValue === null || keyValue === 1) return [];
    const { of, rows } = counts;
    return rows.flatMap(({ label, count }) => {
      const pictures = Math.ceil(count / keyValue);
      return askFairly(about, facts, {
        blanks: { kind: aWord(label), counted: aWord(of), each: aCount(keyValue, of) },
        answer: aCount(count, of),
        slips: [
          { told: aCount(pictures * keyValue, of), shows: 'half-as-whole' },
          { told: aCount(pictures, of), shows: 'forgot-scale' },
        ],
        fits: multiplying(count),
      });
    });
  },
};
