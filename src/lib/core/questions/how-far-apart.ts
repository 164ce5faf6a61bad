import { exactPerUnit, markById } from '#core/measure';
import { askFairly } from './ask-fairly';
import { inUnits, isWhole, reading, subtracting } from './fits-range';
import type { QuestionTemplate } from './question';
import { shownPlot } from './shown-plot';
import { aCount, aLength, aWord } from './told';

const about = {
  id: 'C10',
  level: 'between',
  graphs: ['line-plot'],
  ranges: ['G2a', 'G2b', 'G2c', 'G3'],
} as const;

/**
 * C10: how far it is from the smallest cross to the largest. Whole units are subtracted; halves and
 * quarters are not, but counted as steps along the line (adding fractions comes in grade 4).
 */
export const howFarApart: QuestionTemplate = {
  ...about,
  ask: (facts) => {
    const plot = shownPlot(facts);
    const [smallest, largest] = [plot?.values.at(0), plot?.values.at(-1)];
    if (!plot?.isAllSure || smallest === undefined || largest === undefined) return [];
    if (plot.values.length < fewestCrosses) return [];
    const { unit, mark } = plot;
    const ends = [inUnits(largest, unit), inUnits(smallest, unit)] as const;
    const blanks = { measured: aWord(plot.measured) };
    if (plot.values.every((exact) => isWhole(exact, unit))) {
      return askFairly(about, facts, {
        blanks,
        answer: aLength(largest - smallest, plot),
        slips: [
          { told: aLength(largest - smallest + exactPerUnit(unit), plot), shows: 'counted-ends' },
          { told: aLength(largest, plot), shows: 'larger-value' },
        ],
        fits: subtracting(...ends),
        wholeSet: true,
      });
    }
    const step = markById(mark);
    const hops = (largest - smallest) / step.exact;
    if (step.writtenAs !== 'fraction' || step.unit !== unit || !Number.isInteger(hops)) return [];
    return askFairly(about, facts, {
      blanks: { ...blanks, step: aLength(step.exact, plot) },
      answer: aCount(hops, 'steps'),
      slips: [{ told: aCount(hops + 1, 'steps'), shows: 'counted-ends' }],
      fits: reading(hops, ...plot.values.map((exact) => inUnits(exact, unit))),
      wholeSet: true,
    });
  },
};

const fewestCrosses = 5;
