import { askIdea, fromGrade2, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { inUnits } from './fits-range';
import { shownPlot } from './shown-plot';
import { aLength, aWord } from './told';

/**
 * "Somebody measures it again right now: what could they get?" Of a line plot of one thing
 * measured 5 times or more, with two different numbers at least, all of them as they were read:
 * anything within the plot.
 */
export const measuredAgainNow: QuestionTemplate = {
  ...{ id: 'Y7', level: 'beyond', graphs: ['line-plot'], ranges: fromGrade2 },
  ask: (facts) => {
    const [series] = facts.series;
    const plot = facts.choice.source === 'reads-of-one' ? shownPlot(facts) : null;
    const [low, high] = [plot?.values.at(0), plot?.values.at(-1)];
    if (!series || !plot?.isAllSure || low === undefined || high === undefined) return [];
    if (plot.values.length < fewestReads || low === high) return [];
    return askIdea(measuredAgainNow, facts, {
      blanks: { specimen: aWord(series.specimen.name) },
      answer: { kind: 'between', low: aLength(low, plot), high: aLength(high, plot) },
      slips: [ideaSlip('one-number')],
      numbers: [low, high].map((exact) => inUnits(exact, plot.unit)),
      wholeSet: true,
    });
  },
};

const fewestReads = 5;
