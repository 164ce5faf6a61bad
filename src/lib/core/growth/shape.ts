import { ok, type Result } from '#core/base';
import { exactPerUnit, markById } from '#core/measure';
import { chanceOfSoFewRuns } from './chance-of-runs';
import { changesBetween, type Change, type PerDay } from './change';
import type { GrowthPoint } from './growth-point';
import { trendOf, type Trend, type TrendError } from './trend';

/** Whether the readings bend away from a straight line, and how. */
export interface Shape {
  /**
   * The words are about how much changed per day, in the direction of the whole change: a shadow
   * that shrinks less and less is slowing down. `no-curve-seen` does not prove a straight line.
   */
  readonly kind:
    'no-curve-seen' | 'slow-fast-slow' | 'fast-slow-fast' | 'speeding-up' | 'slowing-down';
  /** Lengths of the runs of readings above the line (positive) and below it (negative), in order. */
  readonly runs: readonly number[];
  /** How often chance alone would make so few runs. */
  readonly chance: number;
  /** Growth per day over the first, middle and last third of the changes. */
  readonly thirds: readonly [PerDay, PerDay, PerDay];
}

/**
 * Looks for a curve, so that a page can say "look at the shape before you call a reading a
 * mistake": plants grow slowly, then fast, then slowly, and a straight line then lies below several
 * readings in a row and above the next ones. It holds the signs of what is left over from the
 * median-of-slopes line (which one wild reading does not tilt) against chance
 * (`chanceOfSoFewRuns`), and names the curve by growth per day in the thirds of the log.
 *
 * The bound of 1 in 10 was simulated for this project (noise of 0.35 cm, five-day weeks): of
 * straight logs, with or without a wild reading, at most 5 in 100 were called curved; of S-shaped
 * plants read to whole centimetres about 3 in 10 after two weeks and 8 in 10 after three. With fewer than about ten readings no
 * curve can be told from chance. Errors as for `trendOf`.
 * @example
 * shapeOf([]) // => { ok: false, error: { kind: 'too-few', have: 0, need: 5 } }
 */
export const shapeOf = (points: readonly GrowthPoint[]): Result<Shape, TrendError> => {
  const trend = trendOf(points);
  if (!trend.ok) return trend;
  const runs = runsAroundTheLine(trend.value);
  const above = total(runs.filter((run) => run > 0));
  const below = -total(runs.filter((run) => run < 0));
  const chance = chanceOfSoFewRuns(runs.length, above, below);
  const thirds = thirdsOf(changesBetween(points));
  const kind = chance <= mostChance ? nameOf(thirds) : 'no-curve-seen';
  return ok({ kind, runs, chance, thirds });
};

const runsAroundTheLine = (trend: Trend): readonly number[] => {
  // Less than a millionth of a mark is the dust of arithmetic: such a reading is on the line.
  const dust = (markById(trend.finestMark).exact / exactPerUnit(trend.unit)) * 1e-6;
  const runs: number[] = [];
  for (const residual of trend.medianOfSlopes.residuals) {
    if (Math.abs(residual) <= dust) continue;
    const sign = Math.sign(residual);
    const run = runs.at(-1);
    if (run !== undefined && Math.sign(run) === sign) runs[runs.length - 1] = run + sign;
    else runs.push(sign);
  }
  return runs;
};

const thirdsOf = (changes: readonly Change[]): readonly [PerDay, PerDay, PerDay] => {
  const size = Math.floor(changes.length / 3);
  const over = (some: readonly Change[]): PerDay => ({
    exact: total(some.map((change) => change.exact)),
    days: total(some.map((change) => change.gapDays)),
  });
  return [
    over(changes.slice(0, size)),
    over(changes.slice(size, -size)),
    over(changes.slice(-size)),
  ];
};

const nameOf = (thirds: readonly [PerDay, PerDay, PerDay]): Shape['kind'] => {
  const direction = Math.sign(total(thirds.map((third) => third.exact))) || 1;
  const [first, middle, last] = thirds.map(({ exact, days }) => (direction * exact) / days) as [
    number,
    number,
    number,
  ];
  if (middle > first && middle > last) return 'slow-fast-slow';
  if (middle < first && middle < last) return 'fast-slow-fast';
  if (first === last) return 'no-curve-seen';
  return first < last ? 'speeding-up' : 'slowing-down';
};

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const mostChance = 0.1;
