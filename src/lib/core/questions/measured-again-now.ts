import { askIdea, fromGrade2, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { inUnits } from './fits-range';
import { aLength, aWord } from './told';
import { daysInTable } from './log-of-table';

/**
 * "Somebody measures it again right now: what could they get?" Of a line plot of one thing
 * measured 5 times or more, with two different numbers at least: anything within the plot.
 */
export const measuredAgainNow: QuestionTemplate = {
  ...{ id: 'Y7', level: 'beyond', graphs: ['line-plot'], ranges: fromGrade2 },
  ask: (facts) => {
    const { table, choice, doubted } = facts;
    const [series] = facts.series;
    if (!series || choice.source !== 'reads-of-one' || table.form !== 'measures') return [];
    const readings = daysInTable(facts, series).flatMap((each) => each.readings);
    const exacts = table.values.map(({ exact }) => exact);
    const [lowExact, highExact] = [Math.min(...exacts), Math.max(...exacts)];
    const isDoubted = readings.some(({ id }) => doubted.has(id));
    if (exacts.length < fewestReads || isDoubted || lowExact === highExact) return [];
    return askIdea(measuredAgainNow, facts, {
      blanks: { specimen: aWord(series.specimen.name) },
      answer: {
        ...{ kind: 'between', low: aLength(lowExact, table), high: aLength(highExact, table) },
      },
      slips: [ideaSlip('one-number')],
      numbers: [inUnits(lowExact, table.unit), inUnits(highExact, table.unit)],
      wholeSet: true,
    });
  },
};

const fewestReads = 5;
