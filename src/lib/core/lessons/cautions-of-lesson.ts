import type { LessonFacts } from '#core/questions';
import { cautions, type Caution } from './caution';
import { cautionsDue, type CautionFacts } from './cautions-due';
import { starters } from './starter';
import type { MaterialId } from './teaching-of';

/**
 * The cautions of what is done in a lesson, the gravest first: taking the reading it opens with,
 * going out for it, water standing about, and small things to count with. One that was put away in
 * the last week rests, but for sun and thunder. Not part of the public door.
 */
export const cautionsOfLesson = (
  { choice, series, notebook, today }: LessonFacts,
  materials: readonly MaterialId[],
): readonly Caution[] => {
  const known: CautionFacts = { putAway: notebook.cautionsPutAway, today };
  const ofLog = series[0]?.investigation.quantity ?? 'length';
  const quantity = choice.source === 'weather-days' ? 'daily-kind' : ofLog;
  const isOutdoors =
    quantity === 'daily-kind' ||
    starters.some((starter) => starter.quantity === quantity && starter.outdoors);
  const due = [
    ...cautionsDue('reading', quantity, known),
    ...(isOutdoors ? cautionsDue('outdoors', quantity, known) : []),
    ...cautionsDue('weekly', quantity, known),
    ...(materials.includes('counters') ? cautionsDue('sowing', 'length', known) : []).filter(
      (caution) => caution === 'beans' || caution === 'small-parts',
    ),
  ];
  return cautions.filter((caution) => due.includes(caution));
};
