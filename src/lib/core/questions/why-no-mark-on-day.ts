import { anyGraph, askIdea, fromGrade1, ideaSlip } from './ask-idea';
import { daysInTable, isOfSingleDays } from './log-of-table';
import type { QuestionTemplate } from './question';
import { aDay, aWord, anIdea } from './told';

/** "Why is there no mark on that day?" Of a day that was missed, or planned and left blank. */
export const whyNoMarkOnDay: QuestionTemplate = {
  ...{ id: 'H2', level: 'behind', graphs: anyGraph, ranges: fromGrade1 },
  ask: (facts) =>
    (isOfSingleDays(facts) ? facts.series : []).flatMap((series) => {
      const first = series.points[0]?.day;
      return daysInTable(facts, series).flatMap(({ day, planned, state, marks }) => {
        const isMissed = state === 'missed' || (state === 'blank' && planned);
        if (!isMissed || !first || day < first || day >= facts.today) return [];
        const why = marks.at(-1)?.why;
        return askIdea(whyNoMarkOnDay, facts, {
          blanks: { specimen: aWord(series.specimen.name), day: aDay(day) },
          answer: why
            ? { kind: 'order', things: [anIdea('we-missed-it'), aWord(why)] }
            : anIdea('we-missed-it'),
          slips: [
            series.investigation.quantity === 'plant-height'
              ? ideaSlip('did-not-grow')
              : { told: anIdea('it-was-nothing'), shows: 'blank-is-zero' },
          ],
        });
      });
    }),
};
