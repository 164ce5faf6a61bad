import type { WrittenScale } from './written-scale';

/**
 * Where a value lies on a scale that a child wrote, in squares from the corner: between the two
 * numbers it lies between; beyond them, by the usual step. Not part of the public door.
 */
export const placeOnScale = (scale: WrittenScale, value: number): number => {
  const [low, high] = neighbours(scale, (tick) => tick.value >= value);
  return low.at + ((value - low.value) / (high.value - low.value)) * (high.at - low.at);
};

/**
 * Whether a mark shows a value: it lies within a quarter of one interval of it, where the interval
 * is the one the child drew there. (Common practice in marking; a mark that wobbles is no mistake.)
 * Not part of the public door.
 */
export const showsOnScale = (scale: WrittenScale, at: number, value: number): boolean => {
  const place = placeOnScale(scale, value);
  const between = (at + place) / 2;
  const [low, high] = neighbours(scale, (tick) => tick.at >= between);
  return Math.abs(at - place) <= (high.at - low.at) / 4 + dust;
};

/** Whether its numbers only go up, so that a position on it can be read at all. */
export const isRising = ({ ticks }: WrittenScale): boolean =>
  ticks.every((tick, index) => index === 0 || tick.value > (ticks[index - 1]?.value ?? 0));

const dust = 1e-6;

type Neighbour = WrittenScale['ticks'][number];

const neighbours = (
  { ticks }: WrittenScale,
  isBeyond: (tick: Neighbour) => boolean,
): readonly [Neighbour, Neighbour] => {
  const found = ticks.findIndex(isBeyond);
  const above = Math.min(Math.max(found < 0 ? ticks.length - 1 : found, 1), ticks.length - 1);
  return [ticks[above - 1] as Neighbour, ticks[above] as Neighbour];
};
