import type { MeasureTable } from './graph-table';
import { placeOnScale, showsOnScale } from './place-on-scale';
import type { WrittenScale } from './written-scale';

export interface CrossOfSeries {
  /** Its place in the drawing. */
  readonly index: number;
  readonly at: number;
  /** Null where marks do not tell series apart. */
  readonly series: number | null;
}

export type MeasuredValue = MeasureTable['values'][number];

/** Which crosses show no value of the table, and which values have no cross. */
export interface MatchedCrosses {
  readonly strays: readonly CrossOfSeries[];
  readonly missing: readonly MeasuredValue[];
}

/**
 * Gives every value a cross within a quarter of an interval of it, as many as can be: both lists
 * are walked in order along the line. Not part of the public door.
 */
export const matchCrosses = (
  crosses: readonly CrossOfSeries[],
  values: readonly MeasuredValue[],
  scale: WrittenScale,
): MatchedCrosses => {
  const apart = crosses.some(({ series }) => series !== null);
  const groups: readonly (number | null)[] = apart
    ? [...new Set(values.map(({ series }) => series))]
    : [null];
  const parts = groups.map((group) =>
    matchAlong(
      crosses.filter(({ series }) => series === group),
      values.filter(({ series }) => group === null || series === group),
      scale,
    ),
  );
  const others = crosses.filter(({ series }) => !groups.includes(series));
  return {
    strays: [...parts.flatMap(({ strays }) => strays), ...others],
    missing: parts.flatMap(({ missing }) => missing),
  };
};

const matchAlong = (
  crosses: readonly CrossOfSeries[],
  values: readonly MeasuredValue[],
  scale: WrittenScale,
): MatchedCrosses => {
  const inOrder = crosses.toSorted((one, other) => one.at - other.at);
  const wanted = values.toSorted((one, other) => one.exact - other.exact);
  const strays: CrossOfSeries[] = [];
  const missing: MeasuredValue[] = [];
  let next = 0;
  for (const cross of inOrder) {
    while (isPassed(cross, wanted[next], scale)) missing.push(wanted[next++] as MeasuredValue);
    const value = wanted[next];
    if (value && showsOnScale(scale, cross.at, value.exact)) next += 1;
    else strays.push(cross);
  }
  return { strays, missing: [...missing, ...wanted.slice(next)] };
};

const isPassed = (
  cross: CrossOfSeries,
  value: MeasuredValue | undefined,
  scale: WrittenScale,
): boolean =>
  value !== undefined &&
  placeOnScale(scale, value.exact) < cross.at &&
  !showsOnScale(scale, cross.at, value.exact);
