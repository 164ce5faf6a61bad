import { addDays, daysBetween, type CivilDay } from '#core/calendar';
import type { Series } from '#core/series';
import { askIdea, graphsOverTime, ideaSlip, inGrade3 } from './ask-idea';
import type { QuestionTemplate } from './question';
import { aDay, aWord } from './told';
import { isOfHeights } from './log-of-table';

/**
 * "When might the next leaves show?" From two times that more leaves were counted than the time
 * before. Accepted: from the shortest to the longest wait between counts that found more, counted
 * from the last, and a day more at both ends, because leaves are not counted every day (our own
 * choice). Withdrawn once that span is over.
 */
export const whenIsNextLeaf: QuestionTemplate = {
  ...{ id: 'Y10', level: 'beyond', graphs: graphsOverTime, ranges: inGrade3 },
  ask: (facts) =>
    (isOfHeights(facts) ? facts.series : []).flatMap((series) => {
      const days = daysWithMore(series, facts.today);
      const last = days.at(-1);
      if (days.length < 3 || !last || series.specimen.ended || series.investigation.ended)
        return [];
      const waits = days.slice(1).map((day, index) => daysBetween(days[index]!, day));
      const low = addDays(last, Math.max(1, Math.min(...waits) - 1));
      const high = addDays(last, Math.max(...waits) + 1);
      if (low <= facts.today) return [];
      return askIdea(whenIsNextLeaf, facts, {
        blanks: { specimen: aWord(series.specimen.name) },
        answer: {
          ...{ kind: 'between', low: aDay(low), high: aDay(high) },
        },
        slips: [ideaSlip('one-exact-day')],
      });
    }),
};

/** The first day leaves were counted, and every day that more were counted than ever before. */
const daysWithMore = ({ days }: Series, today: CivilDay): readonly CivilDay[] => {
  let most = -1;
  return days
    .filter(({ day }) => day <= today)
    .flatMap(({ day, readings }) => {
      const counted = Math.max(-1, ...readings.flatMap(({ leaves }) => leaves ?? []));
      if (counted <= most) return [];
      most = counted;
      return [day];
    });
};
