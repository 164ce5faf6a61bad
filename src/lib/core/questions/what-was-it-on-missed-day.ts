import { betweenNeighbours } from '#core/growth';
import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { inUnits } from './fits-range';
import { aDay, aLength } from './told';
import { daysInTable, isOfHeights, ofLog } from './log-of-table';

/**
 * "What was it probably on a missed day?" Its neighbours are 2 or 3 days apart and differ; anything
 * from the one to the other is accepted, as a guess that never goes into the log.
 */
export const whatWasItOnMissedDay: QuestionTemplate = {
  ...{ id: 'Y2', level: 'beyond', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) =>
    (isOfHeights(facts) ? facts.series : []).flatMap((series) =>
      daysInTable(facts, series).flatMap(({ day, planned, state }) => {
        if (day >= facts.today || (state !== 'missed' && !(state === 'blank' && planned)))
          return [];
        const found = betweenNeighbours(series, day);
        if (!found.ok || found.value.unitsMixed) return [];
        const { before, after, lowExact, highExact } = found.value;
        const near = series.points.filter(
          (each) => each.day === before.day || each.day === after.day,
        );
        const isDoubted = near.some(({ reading }) => facts.doubted.has(reading));
        if (isDoubted || lowExact === highExact || lowExact === 0) return [];
        const { unit } = before.measured;
        return askIdea(whatWasItOnMissedDay, facts, {
          blanks: { ...ofLog(series), day: aDay(day) },
          answer: {
            kind: 'between',
            low: aLength(lowExact, before.measured),
            high: aLength(highExact, after.measured),
          },
          slips: [
            { told: aLength(0, before.measured), shows: 'blank-is-zero' },
            ideaSlip('midpoint-as-fact'),
          ],
          numbers: [inUnits(lowExact, unit), inUnits(highExact, unit)],
        });
      }),
    ),
};
