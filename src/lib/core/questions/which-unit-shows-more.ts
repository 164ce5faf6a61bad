import { rulerPairs, stillInInches } from '#core/series';
import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import { inUnits } from './fits-range';
import type { QuestionTemplate } from './question';
import { aDay, aLength, aWord, anIdea } from './told';

/**
 * "Would a whole inch or a centimetre show more about these days?" Of two pairs within a week whose
 * inches stayed the same while the centimetres (or the millimetres, both times) grew: the smaller
 * unit shows it.
 */
export const whichUnitShowsMore: QuestionTemplate = {
  ...{ id: 'H4', level: 'behind', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) =>
    facts.series.flatMap((series) =>
      stillInInches(rulerPairs(facts.notebook, series)).flatMap(({ from, to, gapDays }) => {
        const { choice, doubted } = facts;
        const isShown = from.day >= choice.from && to.day <= choice.to && gapDays <= 7;
        const isOneUnit = from.metric.unit === to.metric.unit;
        if (!isShown || !isOneUnit || doubted.has(from.reading) || doubted.has(to.reading)) {
          return [];
        }
        return askIdea(whichUnitShowsMore, facts, {
          blanks: {
            ...{ specimen: aWord(series.specimen.name), from: aDay(from.day), to: aDay(to.day) },
            inches: aLength(from.customary.exact, from.customary),
            before: aLength(from.metric.exact, from.metric),
            after: aLength(to.metric.exact, to.metric),
          },
          answer: anIdea('smaller-unit'),
          slips: [ideaSlip('bigger-unit')],
          numbers: [from.customary, from.metric, to.metric].map(({ exact, unit }) =>
            inUnits(exact, unit),
          ),
        });
      }),
    ),
};
