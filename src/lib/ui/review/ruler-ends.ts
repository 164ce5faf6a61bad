import { seededRandom } from '#core/base';
import { exactPerUnit } from '#core/measure';
import type { RulerTask } from '#core/lessons';
import { closeUpOf, pieceOfTask } from '#ui/ruler-lessons';

/**
 * How much of a task's ruler is shown: four spaces around the end of a strip from zero; else the
 * piece the task is of, cut to begin beside the strip where it is longer than can be read. Where
 * the close-up lies hangs on the task alone: it is the same whenever it is opened.
 */
export function rulerEnds(ruler: RulerTask, mostSpaces: number): ReturnType<typeof closeUpOf> {
  if (ruler.kind === 'between-marks') return closeUpOf(ruler, seededRandom(ruler.endsExact)());
  const whole = pieceOfTask(ruler);
  const perUnit = exactPerUnit(ruler.unit);
  if ((whole.toExact - whole.fromExact) / perUnit <= mostSpaces) return whole;
  const begins = Math.floor(ruler.beginsExact / perUnit);
  const ends = whole.toExact / perUnit;
  const before = ends - begins < mostSpaces ? 1 : 0;
  return { fromExact: (begins - before) * perUnit, toExact: whole.toExact, isCloseUp: true };
}

/** More numbers than this lie on one another on a phone. */
export const mostSpacesOnScreen = 9;
