import { anyGraph, askIdea, fromGrade2, ideaSlip } from './ask-idea';
import { isOfWeather } from './log-of-table';
import type { QuestionTemplate } from './question';
import { anIdea } from './told';

/** "Whose weather is this graph about?" Our place, these dates. */
export const whoseWeatherIsThis: QuestionTemplate = {
  ...{ id: 'H8', level: 'behind', graphs: anyGraph, ranges: fromGrade2 },
  ask: (facts) => {
    if (!isOfWeather(facts)) return [];
    const { from, to } = facts.choice;
    return askIdea(whoseWeatherIsThis, facts, {
      answer: {
        kind: 'order',
        things: [anIdea('our-place-these-dates'), { kind: 'days', days: [from, to] }],
      },
      slips: [ideaSlip('everywhere')],
      wholeSet: true,
    });
  },
};
