import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { shownPlot } from './shown-plot';
import { aCount, aLength, aWord } from './told';

const about = {
  id: 'R6',
  level: 'read',
  graphs: ['line-plot'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** R6: how many times an amount came: the height of its pile, 1 to 9. */
export const howOftenCame: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const plot = shownPlot(facts);
    if (!plot) return [];
    return plot.piles.flatMap(({ exact, count }, index) => {
      const number = inUnits(exact, plot.unit);
      if (count > mostInPile || !plot.isSureAt(exact)) return [];
      const other = plot.piles[index + 1] ?? plot.piles[index - 1];
      return askFairly(about, facts, {
        blanks: { measured: aWord(plot.measured), value: aLength(exact, plot) },
        answer: aCount(count, 'times'),
        slips: [
          { told: aCount(number, 'times'), shows: 'axis-for-count' },
          ...(other ? [{ told: aCount(other.count, 'times'), shows: 'other-pile' } as Slip] : []),
        ],
        fits: reading(number, count),
      });
    });
  },
};

const mostInPile = 9;
