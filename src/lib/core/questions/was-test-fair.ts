import { fairTestOf } from '#core/series';
import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate, Told } from './question';
import { aWord, anIdea } from './told';

/**
 * "Was our test fair? What was the same? What was different?" Of two plants or more with a plan
 * from before the readings. The answer is the plan's one difference, what else was noticed to be
 * different, as it was written down, and what the plan kept the same: each an idea and its words.
 */
export const wasTestFair: QuestionTemplate = {
  ...{ id: 'H5', level: 'behind', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) => {
    const { notebook, choice, today } = facts;
    const test = fairTestOf(notebook, choice.investigation);
    if (!test?.plan || test.specimens.length < 2 || facts.table.form === 'counts') return [];
    const { different, same } = test.plan;
    const crept = [
      ...test.differences.filter(({ day }) => day <= today).map(({ what }) => what),
      ...test.laterPlans.map((plan) => plan.different).filter((each) => each !== different),
    ];
    const said = (idea: string, words: readonly string[]): readonly Told[] =>
      words.length === 0 ? [] : [anIdea(idea), ...words.map(aWord)];
    return askIdea(wasTestFair, facts, {
      answer: {
        kind: 'order',
        things: [
          ...said(crept.length === 0 ? 'one-difference' : 'planned-difference', [different]),
          ...said('second-difference', crept),
          ...said('planned-the-same', same),
        ],
      },
      slips: [ideaSlip('the-plants')],
      wholeSet: true,
    });
  },
};
