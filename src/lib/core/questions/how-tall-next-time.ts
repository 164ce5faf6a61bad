import { askIdea, fromGrade1, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { inUnits } from './fits-range';
import { aDay, aLength } from './told';
import { isOfHeights, ofLog } from './log-of-table';
import { predictionOfLog } from './prediction-of-log';

/**
 * "What do you think it will be on the next day? Why?" From 5 readings over 7 days, 1 to 3 days
 * ahead. Accepted: the last reading plus the gap times 0 to twice the growth of late (common
 * practice, no source), with a reason that a grown-up hears.
 */
export const howTallNextTime: QuestionTemplate = {
  ...{ id: 'Y1', level: 'beyond', graphs: graphsOverTime, ranges: fromGrade1 },
  ask: (facts) =>
    (isOfHeights(facts) ? facts.series : []).flatMap((series) => {
      const found = predictionOfLog(facts, series);
      if (!found) return [];
      const { day, last, lowExact, highExact } = found;
      return askIdea(howTallNextTime, facts, {
        blanks: { ...ofLog(series), day: aDay(day) },
        answer: {
          ...{ kind: 'between', low: aLength(lowExact, last), high: aLength(highExact, last) },
        },
        slips: [ideaSlip('a-wish')],
        numbers: [inUnits(lowExact, last.unit), inUnits(highExact, last.unit)],
      });
    }),
};
