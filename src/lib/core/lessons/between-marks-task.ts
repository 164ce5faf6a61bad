import { oneOf, type Random } from '#core/base';
import type { Stage } from '#core/journal';
import { exactPerUnit, markById, nearestOnMark } from '#core/measure';
import {
  longestEnd,
  taskMarks,
  taskUnit,
  tellingSlips,
  wholesFrom,
  type RulerTask,
} from './ruler-task';
import type { UnitFamily } from './starter';

/**
 * A made-up task of a thing that begins at zero and ends between two whole numbers: name the two
 * (`wholesAround`), then say the nearer one (to grade 2), or which of the equal parts between them
 * (grade 3). It never ends at the exact middle where only whole numbers are read.
 * @example
 * wholesAround(betweenMarksTask('grade-3', 'inches', () => 0)) // => [1, 2]
 */
export const betweenMarksTask = (stage: Stage, family: UnitFamily, random: Random): RulerTask => {
  const unit = taskUnit(family);
  const mark = oneOf(taskMarks(stage, family), random);
  const perUnit = exactPerUnit(unit);
  const parts = perUnit / markById(mark).exact;
  const lower = oneOf(wholesFrom(1, stage === 'grade-1' ? 8 : longestEnd[unit] - 2), random);
  const part =
    parts > 1 ? oneOf(wholesFrom(1, parts - 1), random) / parts : oneOf(clearlyNearer, random);
  const endsExact = Math.round((lower + part) * perUnit);
  const answerExact = nearestOnMark(endsExact, mark);
  return {
    ...{ kind: 'between-marks', unit, mark, rulerFromExact: 0 },
    rulerToExact: longestEnd[unit] * perUnit,
    ...{ beginsExact: 0, endsExact, answerExact },
    slips: tellingSlips(
      answerExact,
      parts > 1
        ? slipsWithParts(lower * perUnit, answerExact, perUnit, markById(mark).exact)
        : [{ slip: 'farther-whole', exact: (2 * lower + 1) * perUnit - answerExact }],
    ),
  };
};

/**
 * The two whole numbers of units that the thing's end lies between; the same one twice when it
 * lies on it.
 * @example
 * wholesAround({ unit: 'cm', endsExact: 43_000_000 }) // => [4, 5]
 */
export const wholesAround = ({
  unit,
  endsExact,
}: Pick<RulerTask, 'unit' | 'endsExact'>): readonly [lower: number, upper: number] => {
  const units = endsExact / exactPerUnit(unit);
  return [Math.floor(units), Math.ceil(units)];
};

/** A quarter of a unit from the nearer whole number: as clear as a child's eye needs it. */
const clearlyNearer = [1 / 4, 3 / 4] as const;

const slipsWithParts = (
  lowerExact: number,
  answerExact: number,
  perUnit: number,
  step: number,
): RulerTask['slips'] => [
  { slip: 'left-part-off', exact: lowerExact },
  { slip: 'next-whole', exact: answerExact + perUnit },
  { slip: 'counted-small-marks', exact: answerExact + step },
  { slip: 'counted-back', exact: 2 * lowerExact + perUnit - answerExact },
  { slip: 'small-for-whole', exact: (answerExact / step) * perUnit },
];
