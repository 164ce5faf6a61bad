import { remarkOn, remarkOnWhole, type DrawnRemark } from './drawn-remark';
import type { LinePlotParts } from './line-plot-parts';
import { matchCrosses, type CrossOfSeries, type MatchedCrosses } from './match-crosses';
import { everyOrder, isKeyWhole, seriesByMark } from './whose-marks';
import type { WrittenScale } from './written-scale';

export interface SortedCrosses {
  readonly matched: MatchedCrosses;
  /** L15, where crosses do not tell whose they are. */
  readonly remark: DrawnRemark | null;
}

/**
 * The crosses beside the values, each with those of its own series where there are several. When
 * the marks do not tell them apart, the values are still looked at as if they did. Not part of the
 * public door.
 */
export const sortCrosses = (plot: LinePlotParts, scale: WrittenScale): SortedCrosses => {
  const { table, drawing } = plot;
  const all = matchCrosses(crossesOf(plot, null), table.values, scale);
  const present = [...new Set(table.values.map(({ series }) => series))];
  if (present.length < 2) return { matched: all, remark: null };
  const looks = new Set(drawing.crosses.map(({ look }) => look));
  const said = seriesByMark(drawing, table.seriesNames);
  const apart = matchCrosses(crossesOf(plot, said), table.values, scale);
  const isOneSoFar = looks.size === 1 && apart.strays.length === 0;
  if (looks.size === 0 || isOneSoFar) return { matched: apart, remark: null };
  if (looks.size < present.length && looks.size === 1) {
    return { matched: all, remark: remarkOnWhole('L15', 'key') };
  }
  if (!isKeyWhole(drawing, table.seriesNames)) {
    const orders = everyOrder(table.seriesNames.length);
    const matches = orders.map((order) =>
      matchCrosses(crossesOf(plot, order), table.values, scale),
    );
    const best = matches.reduce((one, other) => (countOf(other) < countOf(one) ? other : one));
    return { matched: best, remark: remarkOnWhole('L15', 'key') };
  }
  if (countOf(all) === 0 && countOf(apart) > 0) {
    const strays = apart.strays.map(({ index }) => index);
    return { matched: all, remark: remarkOn('L15', 'crosses', strays) };
  }
  return { matched: apart, remark: null };
};

const looksInOrder = ['cross', 'ring', 'box'] as const;

const crossesOf = (
  { drawing }: LinePlotParts,
  seriesOfLook: readonly number[] | null,
): readonly CrossOfSeries[] =>
  drawing.crosses.map(({ at, look }, index) => ({
    ...{ index, at },
    series: seriesOfLook ? (seriesOfLook[looksInOrder.indexOf(look)] ?? -1) : null,
  }));

const countOf = ({ strays, missing }: MatchedCrosses): number => strays.length + missing.length;
