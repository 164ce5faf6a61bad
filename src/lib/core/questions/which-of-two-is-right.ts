import { markById } from '#core/measure';
import { daysReadByMany } from '#core/series';
import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import { inUnits } from './fits-range';
import type { QuestionTemplate } from './question';
import { aDay, aLength, anIdea } from './told';

/**
 * "Two people got 7 and 8. Who is right?" Of a day that several people read, with one mark between
 * the smallest number and the largest: both were careful, and it lies between the marks.
 */
export const whichOfTwoIsRight: QuestionTemplate = {
  ...{ id: 'H3', level: 'behind', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) =>
    facts.series.flatMap((series) =>
      daysReadByMany(series).flatMap(({ day, unit, smallest, largest, spreadExact, readings }) => {
        const isShown = day >= facts.choice.from && day <= facts.choice.to && day <= facts.today;
        const isDoubted = readings.some(({ id }) => facts.doubted.has(id));
        const isOneMark = spreadExact === markById(largest.mark).exact;
        if (!isShown || isDoubted || smallest.mark !== largest.mark || !isOneMark) return [];
        return askIdea(whichOfTwoIsRight, facts, {
          blanks: {
            day: aDay(day),
            one: aLength(smallest.exact, smallest),
            other: aLength(largest.exact, largest),
          },
          answer: anIdea('both-careful'),
          slips: [ideaSlip('older-is-right')],
          numbers: [smallest, largest].map(({ exact }) => inUnits(exact, unit)),
        });
      }),
    ),
};
