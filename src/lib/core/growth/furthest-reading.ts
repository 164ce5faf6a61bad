import type { GrowthPoint } from './growth-point';
import type { Trend } from './trend';

/** The reading that lies furthest from the median-of-slopes line. */
export interface FurthestReading {
  readonly point: GrowthPoint;
  /** How far above the line, in the trend's unit; negative below it. */
  readonly residual: number;
}

/**
 * The reading furthest from the median-of-slopes line, which one odd reading does not tilt; of
 * equals the first. Worth a second look, not a mistake. Null when every reading is on the line
 * (but for the dust of arithmetic).
 * @example
 * furthestReading({ points: [{ day: '2026-03-02' }, { day: '2026-03-03' }], values: [1, 2], medianOfSlopes: { residuals: [0.5, -1] } }) // => { point: { day: '2026-03-03' }, residual: -1 }
 */
export const furthestReading = ({
  points,
  values,
  medianOfSlopes,
}: Pick<Trend, 'points' | 'values' | 'medianOfSlopes'>): FurthestReading | null => {
  const { residuals } = medianOfSlopes;
  const dust = 1e-9 * values.reduce((largest, value) => Math.max(largest, Math.abs(value)), 1);
  const index = residuals.reduce(
    (best, residual, at) =>
      Math.abs(residual) > Math.abs(residuals[best] as number) + dust ? at : best,
    0,
  );
  const residual = residuals[index];
  if (residual === undefined || Math.abs(residual) <= dust) return null;
  return { point: points[index] as GrowthPoint, residual };
};
