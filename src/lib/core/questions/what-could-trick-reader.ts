import { anyGraph, askIdea, fromGrade2, ideaSlip } from './ask-idea';
import { flawOf } from './flawed-practice';
import type { QuestionTemplate } from './question';
import { aCount, aWord, anIdea } from './told';

/**
 * "What could trick a reader of this graph?" About a made-up graph with a planted flaw, that is
 * shown as practice (`flawedPractice`), never about the family's own. One seed for each of five
 * practice graphs.
 */
export const whatCouldTrickReader: QuestionTemplate = {
  ...{ id: 'H6', level: 'behind', graphs: anyGraph, ranges: fromGrade2 },
  ask: (facts) => {
    const flaw = flawOf(facts.graph);
    return [1, 2, 3, 4, 5].flatMap((seed) =>
      askIdea(whatCouldTrickReader, facts, {
        blanks: { practice: aWord(facts.graph), seed: aCount(seed, 'seed') },
        answer: anIdea(`flaw-${flaw}`),
        slips: [ideaSlip('neatness')],
        wholeSet: true,
      }),
    );
  },
};
