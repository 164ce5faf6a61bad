import { askFairly } from './ask-fairly';
import { inUnits, reading } from './fits-range';
import type { QuestionTemplate, Slip } from './question';
import { shownPlot } from './shown-plot';
import { aCount, aLength, aWord } from './told';

const about = {
  id: 'C9',
  level: 'between',
  graphs: ['line-plot'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/** C9: which amount came most often: one tallest pile, of eight crosses or more in all. */
export const whichCameMostOften: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const plot = shownPlot(facts);
    if (!plot?.isAllSure || plot.values.length < fewestCrosses) return [];
    const [most, next] = plot.piles.toSorted((one, other) => other.count - one.count);
    if (!most || most.count === next?.count) return [];
    return askFairly(about, facts, {
      blanks: { measured: aWord(plot.measured) },
      answer: aLength(most.exact, plot),
      slips: [
        { told: aCount(most.count, 'times'), shows: 'count-for-axis' },
        ...(next ? [{ told: aLength(next.exact, plot), shows: 'other-pile' } as Slip] : []),
      ],
      fits: reading(...plot.values.map((exact) => inUnits(exact, plot.unit))),
      wholeSet: true,
    });
  },
};

const fewestCrosses = 8;
