import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate } from './question';
import { shownPlot } from './shown-plot';
import { aCount, aLength, aWord } from './told';

const about = {
  id: 'C11',
  level: 'between',
  graphs: ['line-plot'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** C11: how many crosses are at a number or more: two to eight of them, and not all. */
export const howManyOrMore: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const plot = shownPlot(facts);
    if (!plot) return [];
    return plot.piles.flatMap(({ exact, count: equal }) => {
      const from = plot.values.filter((each) => each >= exact);
      const count = from.length;
      if (!from.every(plot.isSureAt)) return [];
      if (count < fewest || count > most || count === plot.values.length) return [];
      const number = inUnits(exact, plot.unit);
      const summed = inUnits(
        from.reduce((sum, each) => sum + each, 0),
        plot.unit,
      );
      return askFairly(about, facts, {
        blanks: { measured: aWord(plot.measured), value: aLength(exact, plot) },
        answer: aCount(count, 'crosses'),
        slips: [
          ...(count > equal
            ? [{ told: aCount(count - equal, 'crosses'), shows: 'left-out-equal' as const }]
            : []),
          ...(Number.isInteger(summed)
            ? [{ told: aCount(summed, 'crosses'), shows: 'summed-axis' as const }]
            : []),
        ],
        fits: reading(number, count),
      });
    });
  },
};

const fewest = 2;
const most = 8;
