import { askIdea, fromGrade2, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { aWord, anIdea } from './told';

/** "Another seed of the same packet: the same heights?" Of a plant's measures: similar, not same. */
export const anotherSeedOfPacket: QuestionTemplate = {
  ...{ id: 'Y6', level: 'beyond', graphs: graphsOverTime, ranges: fromGrade2 },
  ask: (facts) => {
    const [first] = facts.series;
    if (first?.investigation.quantity !== 'plant-height' || facts.table.form === 'counts')
      return [];
    return askIdea(anotherSeedOfPacket, facts, {
      blanks: { specimen: aWord(first.specimen.name) },
      answer: anIdea('similar-not-same'),
      slips: [ideaSlip('exactly-the-same')],
    });
  },
};
