import type { DrawnCross } from './drawing';
import { remarkOn, type DrawnRemark } from './drawn-remark';
import type { LinePlotParts } from './line-plot-parts';
import { placeOnScale, showsOnScale } from './place-on-scale';
import { middleOf, spreadOf } from './spread';
import type { WrittenScale } from './written-scale';

/**
 * L7: crosses of different sizes, or piles whose height does not tell how many there are. A pile
 * misleads when its spacing differs from the usual one by more than 30 %, or when a cross stands
 * most of a place too high or too low. Not part of the public door.
 */
export const remarkOnStacks = (plot: LinePlotParts): DrawnRemark | null =>
  remarkOnSizes(plot) ?? remarkOnPiles(plot);

/** Not part of the public door. */
export const remarkOnSizes = ({ drawing: { crosses } }: LinePlotParts): DrawnRemark | null => {
  if (spreadOf(crosses.map(({ size }) => size)) <= mostSpread + dust) return null;
  const usual = middleOf(crosses.map(({ size }) => size));
  return remarkOn(
    'L7',
    'crosses',
    indexesWhere(crosses, ({ size }) => !isAbout(size, usual)),
  );
};

const remarkOnPiles = (plot: LinePlotParts): DrawnRemark | null => {
  const { crosses } = plot.drawing;
  const piles = pilesOf(plot);
  const base = middleOf(piles.map(([lowest]) => lowest?.height ?? 0));
  const gaps = piles.flatMap((pile) =>
    pile.slice(1).map(({ height }, index) => height - (pile[index]?.height ?? 0)),
  );
  // Crosses drawn on top of each other have no pitch of their own: a cross needs its square.
  const middle = middleOf(gaps);
  const pitch = middle > 0.1 ? middle : 1;
  const off = piles.flatMap((pile) =>
    pile.filter(({ height }, place) => {
      const away = Math.abs(height - base - place * pitch) / pitch;
      return away > mostSpread * Math.max(1, place) + dust || away >= mostOfAPlace;
    }),
  );
  if (off.length === 0) return null;
  return remarkOn(
    'L7',
    'crosses',
    indexesWhere(crosses, (cross) => off.includes(cross)),
  );
};

const mostSpread = 0.3;
const mostOfAPlace = 0.75;
const dust = 1e-9;

const isAbout = (size: number, usual: number): boolean =>
  Math.abs(size - usual) <= (mostSpread / 2) * usual;

/** Crosses above one place, the lowest first: above one value, or in one half of a square. */
const pilesOf = ({
  drawing,
  risingScale,
  table,
}: LinePlotParts): readonly (readonly DrawnCross[])[] => {
  const values = [
    ...table.values.map(({ exact }) => exact),
    ...(risingScale?.ticks ?? []).map(({ value }) => value),
  ];
  const pileByPlace = new Map<string, DrawnCross[]>();
  for (const cross of drawing.crosses) {
    const shown = risingScale && shownValue(risingScale, cross.at, values);
    const place = shown === null ? `at ${Math.round(cross.at * 2)}` : `value ${shown}`;
    pileByPlace.set(place, [...(pileByPlace.get(place) ?? []), cross]);
  }
  return [...pileByPlace.values()].map((pile) =>
    pile.sort((one, other) => one.height - other.height),
  );
};

const shownValue = (scale: WrittenScale, at: number, values: readonly number[]): number | null => {
  const away = (value: number): number => Math.abs(placeOnScale(scale, value) - at);
  const shown = values.filter((value) => showsOnScale(scale, at, value));
  return shown.reduce<number | null>(
    (best, value) => (best === null || away(value) < away(best) ? value : best),
    null,
  );
};

const indexesWhere = (
  crosses: readonly DrawnCross[],
  isMeant: (cross: DrawnCross) => boolean,
): readonly number[] => crosses.flatMap((cross, index) => (isMeant(cross) ? [index] : []));
