import type { GraphTable } from '#core/graphs';
import { anyGraph, askIdea, fromGrade2 } from './ask-idea';
import type { QuestionTemplate, Slip } from './question';
import { anIdea } from './told';

/**
 * "Which of three questions can this graph NOT answer?" Two that every graph of its form answers,
 * and one that none of that form can. It is the one question whose answer stands among its blanks,
 * because it is chosen from them.
 */
export const whichCannotBeAnswered: QuestionTemplate = {
  ...{ id: 'H9', level: 'behind', graphs: anyGraph, ranges: fromGrade2 },
  ask: (facts) =>
    impossible[facts.table.form].flatMap((cannot, index) => {
      const can = possible[facts.table.form];
      const three = [...can.slice(0, index), cannot, ...can.slice(index)];
      const slips = can.map((each): Slip => ({ told: anIdea(each), shows: 'hardest-sum' }));
      return askIdea(whichCannotBeAnswered, facts, {
        blanks: { offered: { kind: 'order', things: three.map(anIdea) } },
        answer: anIdea(cannot),
        slips,
      });
    }),
};

type ByForm = Readonly<Record<GraphTable['form'], readonly string[]>>;

const possible: ByForm = {
  counts: ['ask-which-most', 'ask-how-many-in-all'],
  values: ['ask-tallest-bar', 'ask-difference-of-two'],
  measures: ['ask-most-often', 'ask-smallest-to-largest'],
  times: ['ask-when-highest', 'ask-change-between-two'],
};

const impossible: ByForm = {
  counts: ['ask-why-so-many', 'ask-next-year'],
  values: ['ask-why-so', 'ask-other-home'],
  measures: ['ask-why-so', 'ask-other-home'],
  times: ['ask-why-so', 'ask-other-home'],
};
