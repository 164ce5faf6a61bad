import { exactPerUnit, systemOf } from '#core/measure';
import { askIdea, graphsOverTime, ideaSlip, inGrade3 } from './ask-idea';
import type { QuestionTemplate } from './question';
import { aLength, aWord, anIdea } from './told';
import { isOfHeights } from './log-of-table';
import { predictionOfLog } from './prediction-of-log';

/**
 * "Would 30 more cm be possible? How long?" (12 inches where inches are read.) Asked while the
 * plant is no taller than that and still grows. The reason to hear: plants slow down.
 */
export const couldItGrowAsMuchAgain: QuestionTemplate = {
  ...{ id: 'Y5', level: 'beyond', graphs: graphsOverTime, ranges: inGrade3 },
  ask: (facts) =>
    (isOfHeights(facts) ? facts.series : []).flatMap((series) => {
      const { quantity } = series.investigation;
      const found = quantity === 'plant-height' ? predictionOfLog(facts, series) : null;
      if (!found) return [];
      const [unit, mark, units] =
        systemOf(found.last.unit) === 'metric'
          ? (['cm', '1 cm', 30] as const)
          : (['in', '1 in', 12] as const);
      const moreExact = units * exactPerUnit(unit);
      if (found.last.exact > moreExact) return [];
      return askIdea(couldItGrowAsMuchAgain, facts, {
        blanks: { specimen: aWord(series.specimen.name), more: aLength(moreExact, { unit, mark }) },
        answer: anIdea('plants-slow-down'),
        slips: [ideaSlip('straight-on')],
        numbers: [units],
        wholeSet: true,
      });
    }),
};
