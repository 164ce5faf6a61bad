import { sortCards } from '#core/graphs';
import { askIdea, fromGrade2, graphsOfCounts, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { anIdea } from './told';
import { isOfWeather } from './log-of-table';

/** "If we made this graph next month, what might change?" From 10 days of weather, of two kinds. */
export const sameGraphNextMonth: QuestionTemplate = {
  ...{ id: 'Y4', level: 'beyond', graphs: graphsOfCounts, ranges: fromGrade2 },
  ask: (facts) => {
    const { table, choice, notebook, today } = facts;
    if (table.form !== 'counts' || !isOfWeather(facts)) return [];
    // A day of two kinds is in two rows, and is one day.
    const days = new Set(sortCards(choice, table, notebook, today).map(({ thing }) => thing));
    if (days.size < fewestDays) return [];
    if (table.rows.filter(({ count }) => count > 0).length < 2) return [];
    return askIdea(sameGraphNextMonth, facts, {
      answer: anIdea('seasons-and-chance'),
      slips: [ideaSlip('nothing-changes')],
      wholeSet: true,
    });
  },
};

const fewestDays = 10;
