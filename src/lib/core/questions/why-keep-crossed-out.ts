import { anyGraph, askIdea, fromGrade1, ideaSlip } from './ask-idea';
import { daysInTable } from './log-of-table';
import type { QuestionTemplate } from './question';
import { aDay, aWord, anIdea } from './told';

/** "Why did we keep the crossed-out number?" Of a reading whose number was mended. */
export const whyKeepCrossedOut: QuestionTemplate = {
  ...{ id: 'H10', level: 'behind', graphs: anyGraph, ranges: fromGrade1 },
  ask: (facts) =>
    facts.series.flatMap((series) =>
      daysInTable(facts, series).flatMap(({ day, readings }) => {
        const isMended = readings.some(({ id, counted, crossedOut }) => {
          const numbers = crossedOut.map((was) => `${was.counted.exact} ${was.counted.unit}`);
          return (
            !facts.doubted.has(id) &&
            numbers.some((was) => was !== `${counted.exact} ${counted.unit}`)
          );
        });
        if (!isMended || day > facts.today) return [];
        return askIdea(whyKeepCrossedOut, facts, {
          blanks: { specimen: aWord(series.specimen.name), day: aDay(day) },
          answer: anIdea('honest-record'),
          slips: [ideaSlip('forgot-to-erase')],
        });
      }),
    ),
};
