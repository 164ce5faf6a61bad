import type { Stage } from '#core/journal';
import type { MarkId } from '#core/measure';
import type { UnitFamily } from './starter';

/**
 * A thing beside a piece of ruler, to be read. All amounts are whole nanometres along the ruler,
 * its own 0 being 0: draw the ruler's piece from `rulerFromExact` to `rulerToExact` and the thing
 * from `beginsExact` to `endsExact`.
 */
export interface RulerTask {
  readonly kind: 'off-zero' | 'between-marks';
  readonly unit: 'in' | 'cm';
  /** The finest marks on the piece, and what the answer is read to. */
  readonly mark: MarkId;
  /** More than 0 for a "broken ruler": its beginning is missing. */
  readonly rulerFromExact: number;
  readonly rulerToExact: number;
  readonly beginsExact: number;
  readonly endsExact: number;
  readonly answerExact: number;
  /** Each gives another number than the answer and than the other slips. */
  readonly slips: readonly { readonly slip: RulerSlip; readonly exact: number }[];
}

/**
 * The typical slips, and what each shows.
 *
 * - `read-the-end`: the number at the far end; a length is taken for a place on the ruler.
 * - `counted-marks`: one whole unit too many; marks were counted, the first as one, not spaces.
 * - `counted-small-marks`: one small part too many; the same with the small marks.
 * - `small-for-whole`: small parts were counted and called whole units; the parts have no name yet.
 * - `left-part-off`: the whole number before the end; the part behind it is not seen.
 * - `next-whole`: the right part after the wrong whole number; the wholes were not named first.
 * - `counted-back`: the parts were counted from the next whole number back.
 * - `farther-whole`: the whole number that is further away; "nearest" is not sure yet.
 *
 * The first two are the wrong answers a national item counted (NAEP, grade 4, a thing from 8 to
 * 10 1/2 inches: 10 1/2 and 3 1/2); that children fall to them when a thing is moved off zero:
 * Solomon, Vasilyeva, Huttenlocher and Levine 2015, Developmental Psychology 51(11). The others
 * are common practice, no source.
 */
export type RulerSlip =
  | 'read-the-end'
  | 'counted-marks'
  | 'counted-small-marks'
  | 'small-for-whole'
  | 'left-part-off'
  | 'next-whole'
  | 'counted-back'
  | 'farther-whole';

/** A number that two slips give, or that is the answer, tells nothing: those are left out. */
export const tellingSlips = (
  answerExact: number,
  slips: readonly { readonly slip: RulerSlip; readonly exact: number }[],
): RulerTask['slips'] =>
  slips.filter(
    ({ exact }) =>
      exact !== answerExact && slips.filter((other) => other.exact === exact).length === 1,
  );

/**
 * The marks a ruler task can have at a stage: whole units to grade 2, then half and quarter inches
 * or millimetres (Common Core 2.MD.A.1 and 3.MD.B.4, from memory).
 */
export const taskMarks = (stage: Stage, family: UnitFamily): readonly MarkId[] => {
  if (stage === 'grade-3') return family === 'inches' ? ['1/2 in', '1/4 in'] : ['1 mm'];
  return family === 'inches' ? ['1 in'] : ['1 cm'];
};

export const taskUnit = (family: UnitFamily): RulerTask['unit'] =>
  family === 'inches' ? 'in' : 'cm';

/** How far the ruler of a task reaches, in its units: a usual ruler, or what a screen can show. */
export const longestEnd: Readonly<Record<RulerTask['unit'], number>> = { in: 12, cm: 20 };

/** The whole numbers from the first through the last. */
export const wholesFrom = (first: number, last: number): readonly number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
