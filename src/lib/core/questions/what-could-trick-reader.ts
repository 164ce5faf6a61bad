import { anyGraph, askIdea, fromGrade2, ideaSlip } from './ask-idea';
import { flawOf } from './flawed-practice';
import type { QuestionTemplate } from './question';
import { aCount, aWord, anIdea } from './told';

/**
 * "What could trick a reader of this graph?" About a made-up graph with a planted flaw, that is
 * shown as practice (`practiceAskedAbout` makes it of the question alone), never about the family's
 * own. It is asked once: which of five practice graphs it is about goes by the last day shown.
 */
export const whatCouldTrickReader: QuestionTemplate = {
  ...{ id: 'H6', level: 'behind', graphs: anyGraph, ranges: fromGrade2 },
  ask: (facts) => {
    const flaw = flawOf(facts.graph);
    const seed = 1 + (Number(facts.choice.to.slice(8)) % practiceGraphs);
    return askIdea(whatCouldTrickReader, facts, {
      blanks: {
        practice: aWord(facts.graph),
        stage: aWord(facts.stage),
        seed: aCount(seed, 'seed'),
      },
      answer: anIdea(`flaw-${flaw}`),
      slips: [ideaSlip('neatness')],
    });
  },
};

const practiceGraphs = 5;
