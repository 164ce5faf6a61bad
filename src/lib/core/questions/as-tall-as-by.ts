import type { Measured } from '#core/measure';
import type { Series } from '#core/series';
import { askIdea, fromGrade1, graphsOverTime, ideaSlip } from './ask-idea';
import type { QuestionTemplate } from './question';
import { inUnits } from './fits-range';
import { aDay, aLength, aWord, anIdea } from './told';
import type { LessonFacts } from './lesson-facts';
import { isOfHeights, ofLog } from './log-of-table';
import { predictionOfLog } from './prediction-of-log';

/**
 * "Will it be as tall as its pot by a day?" The things to be as tall as are those the notebook
 * holds a length of: the pot, and a hand span that somebody measured. What is shorter than the
 * plant already is not asked about.
 */
export const asTallAsBy: QuestionTemplate = {
  ...{ id: 'Y3', level: 'beyond', graphs: graphsOverTime, ranges: fromGrade1 },
  ask: (facts) =>
    (isOfHeights(facts) ? facts.series : []).flatMap((series) => {
      const found = predictionOfLog(facts, series);
      if (!found) return [];
      const { day, last, lowExact, highExact } = found;
      return thingsKnown(facts, series)
        .filter(({ length }) => length.unit === last.unit && length.exact > lowExact)
        .flatMap(({ thing, length, whose }) =>
          askIdea(asTallAsBy, facts, {
            blanks: {
              ...ofLog(series),
              thing: aWord(thing),
              ...(whose ? { whose: aWord(whose) } : {}),
              length: aLength(length.exact, length),
              day: aDay(day),
            },
            answer: anIdea(length.exact > highExact ? 'probably-not-yet' : 'might-be-as-tall'),
            slips: [ideaSlip('sure-of-it')],
            numbers: [inUnits(length.exact, length.unit)],
          }),
        );
    }),
};

interface ThingKnown {
  readonly thing: 'pot' | 'hand-span';
  readonly length: Measured;
  readonly whose?: string;
}

const thingsKnown = (
  { notebook }: LessonFacts,
  { specimen, investigation }: Series,
): readonly ThingKnown[] => {
  const pot = investigation.quantity === 'plant-height' ? specimen.standHeight : undefined;
  const spans = [...notebook.people.values()].flatMap(
    ({ id, name, role }): readonly ThingKnown[] => {
      const length = notebook.helperLengths.get(id)?.get('hand-span');
      return length && role === 'child' ? [{ thing: 'hand-span', length, whose: name }] : [];
    },
  );
  return [...(pot ? [{ thing: 'pot', length: pot } as const] : []), ...spans];
};
