import { numbersIn } from '#core/graphs';
import { askIdea, fromGrade2, graphsOfCounts, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { anIdea } from './told';
import { isOfWeather } from './log-of-table';

/** "If we made this graph next month, what might change?" From 10 days of weather, of two kinds. */
export const sameGraphNextMonth: QuestionTemplate = {
  ...{ id: 'Y4', level: 'beyond', graphs: graphsOfCounts, ranges: fromGrade2 },
  ask: (facts) => {
    const { table } = facts;
    if (table.form !== 'counts' || !isOfWeather(facts) || numbersIn(table) < fewestDays) return [];
    if (table.rows.filter(({ count }) => count > 0).length < 2) return [];
    return askIdea(sameGraphNextMonth, facts, {
      answer: anIdea('seasons-and-chance'),
      slips: [ideaSlip('nothing-changes')],
      wholeSet: true,
    });
  },
};

const fewestDays = 10;
