import { failed, ok, oneOf, type Random, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import { exactPerUnit, liesOnMark, markById, markFits, type MarkId } from '#core/measure';
import {
  longestEnd,
  taskMarks,
  taskUnit,
  tellingSlips,
  wholesFrom,
  type RulerTask,
} from './ruler-task';
import type { UnitFamily } from './starter';

/** Where a thing lies, in whole nanometres along the ruler. */
export interface OffZeroPlace {
  readonly unit: RulerTask['unit'];
  readonly mark: MarkId;
  readonly begins: number;
  readonly ends: number;
  /** The first and last place of the ruler that is there; 0 and a whole ruler when not said. */
  readonly rulerFrom?: number;
  readonly rulerTo?: number;
}

/**
 * A made-up task in which zero does not help: the thing lies further along the ruler, or the
 * ruler's beginning is broken off. Lengths are short, so that spaces can be counted; the thing
 * begins at 2 or later, because from 1 on the number at its end and the count of marks would be
 * the same slip. Practice with things moved off zero helped second graders where practice at zero
 * did not (Journal of Intelligence 2024, 120 second graders).
 * @example
 * offZeroTask('grade-2', 'inches', () => 0).answerExact // => 50_800_000
 */
export const offZeroTask = (stage: Stage, family: UnitFamily, random: Random): RulerTask => {
  const unit = taskUnit(family);
  const mark = oneOf(taskMarks(stage, family), random);
  const perUnit = exactPerUnit(unit);
  const parts = perUnit / markById(mark).exact;
  const latestEnd = stage === 'grade-1' ? 10 : longestEnd[unit];
  const places = wholesFrom(2, stage === 'grade-1' ? 5 : latestEnd - 3).flatMap((begins) =>
    wholesFrom(parts > 1 ? 1 : 2, stage === 'grade-1' ? 5 : 6)
      .flatMap((wholes) => (parts > 1 ? partsAfter(wholes, parts) : [wholes]))
      .filter((length) => begins + length <= latestEnd)
      .map((length) => ({ begins, length })),
  );
  const { begins, length } = oneOf(places, random);
  const isBroken = random() < 0.5;
  const piece = {
    rulerFrom: (begins - 1) * perUnit,
    rulerTo: (Math.ceil(begins + length) + 1) * perUnit,
  };
  const made = offZeroTaskOf({
    ...{ unit, mark, begins: begins * perUnit },
    ends: Math.round((begins + length) * perUnit),
    ...(isBroken ? piece : {}),
  });
  if (!made.ok) throw new Error(`A made-up task is none: ${made.error.kind}`);
  return made.value;
};

/**
 * The off-zero task with a thing in a given place. Errors: `no-length` (it ends where it begins,
 * or before), `off-the-mark` (an end lies between the marks), `off-the-ruler`, `begins-at-zero`
 * (a thing at the zero of a whole ruler).
 * @example
 * offZeroTaskOf({ unit: 'in', mark: '1/2 in', begins: 203_200_000, ends: 266_700_000 }).value.answerExact // => 63_500_000
 * offZeroTaskOf({ unit: 'cm', mark: '1 cm', begins: 0, ends: 40_000_000 }) // => { ok: false, error: { kind: 'begins-at-zero' } }
 */
export const offZeroTaskOf = (place: OffZeroPlace): Result<RulerTask, OffZeroError> => {
  const { unit, mark, begins, ends } = place;
  const perUnit = exactPerUnit(unit);
  const [rulerFromExact, rulerToExact] = [
    place.rulerFrom ?? 0,
    place.rulerTo ?? longestEnd[unit] * perUnit,
  ];
  if (!markFits(mark, unit)) throw new Error(`${unit} is not read to ${mark}`);
  const all = [begins, ends, rulerFromExact, rulerToExact];
  if (!all.every((exact) => liesOnMark(exact, mark))) return failed({ kind: 'off-the-mark' });
  if (ends <= begins) return failed({ kind: 'no-length' });
  if (begins < rulerFromExact || ends > rulerToExact) return failed({ kind: 'off-the-ruler' });
  if (begins === 0) return failed({ kind: 'begins-at-zero' });
  const answerExact = ends - begins;
  const slips = tellingSlips(answerExact, slipsOf(place, answerExact));
  return ok({
    ...{ kind: 'off-zero', unit, mark, rulerFromExact, rulerToExact },
    ...{ beginsExact: begins, endsExact: ends, answerExact, slips },
  });
};

const slipsOf = (
  { unit, mark, begins, ends }: OffZeroPlace,
  answerExact: number,
): RulerTask['slips'] => {
  const perUnit = exactPerUnit(unit);
  const step = markById(mark).exact;
  const small: RulerTask['slips'] = [
    { slip: 'counted-small-marks', exact: answerExact + step },
    { slip: 'small-for-whole', exact: (answerExact / step) * perUnit },
  ];
  return [
    { slip: 'read-the-end', exact: ends },
    // Whole marks are only counted from a whole mark on.
    ...(begins % perUnit === 0
      ? [{ slip: 'counted-marks', exact: answerExact + perUnit } as const]
      : []),
    ...(step < perUnit ? small : []),
  ];
};

/** Every length with this many wholes and at least one part behind them. */
const partsAfter = (wholes: number, parts: number): readonly number[] =>
  wholesFrom(1, parts - 1).map((count) => wholes + count / parts);

export interface OffZeroError {
  readonly kind: 'no-length' | 'off-the-mark' | 'off-the-ruler' | 'begins-at-zero';
}
