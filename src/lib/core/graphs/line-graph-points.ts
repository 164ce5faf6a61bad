import { exactPerUnit } from '#core/measure';
import { remarkOn, remarkOnWhole, yetToDraw, type DrawnRemark } from './drawn-remark';
import type { LineGraphParts } from './line-graph-parts';
import { placeOfPoint, showsValue, type MatchedPoints } from './match-points';
import { showsOnScale } from './place-on-scale';

/**
 * What there is to say about points that show no reading: a day without one drawn at 0 (T2, or T9
 * on the first day) or with a number nobody read (T2), a line that goes on behind the last reading
 * (T10), readings in another unit (T14), and every other point beside its place (T8). A guess
 * behind the last reading that is not joined, or joined by dashes, is right. Readings not yet
 * drawn are T8 too, said last. Not part of the public door.
 */
export const remarksOnPoints = (
  graph: LineGraphParts,
  matched: MatchedPoints,
  seriesOfMark: readonly number[] | null,
): readonly DrawnRemark[] => {
  const kinds = kindsOfStrays(graph, matched, seriesOfMark);
  const of = (kind: StrayKind): readonly number[] =>
    [...kinds].flatMap(([index, each]) => (each === kind ? [index] : []));
  const ids = ['T14', 'T2', 'T9', 'T8', 'T10'] as const;
  const remarks = ids.flatMap((id) => (of(id).length > 0 ? [remarkOn(id, 'points', of(id))] : []));
  const placed = of('T8').length + of('T14').length;
  return matched.missing.length > placed
    ? [...remarks, yetToDraw(remarkOnWhole('T8', 'whole'))]
    : remarks;
};

type StrayKind = 'T2' | 'T8' | 'T9' | 'T10' | 'T14' | 'guess';

const kindsOfStrays = (
  graph: LineGraphParts,
  { strays, missing }: MatchedPoints,
  seriesOfMark: readonly number[] | null,
): ReadonlyMap<number, StrayKind> => {
  const { drawing, measured } = graph;
  const inOtherUnit = strays.filter((index) => isInOtherUnit(graph, index));
  const isUnitChange =
    inOtherUnit.length > 1 && inOtherUnit.length === strays.length
      ? strays
      : strays.filter((index) => isReadAsItIs(graph, index));
  const kindOf = (index: number): StrayKind => {
    const { x, y, series } = drawing.points[index] ?? { x: 0, y: 0, series: 0 };
    if (isUnitChange.includes(index)) return 'T14';
    const ours = (row: { readonly series: number }): boolean =>
      !seriesOfMark || seriesOfMark[series] === row.series;
    const own = measured.filter(ours);
    const place = placeOfPoint(graph, x);
    const hasReading = own.some((row) => row.place === place);
    const places = own.map((row) => row.place);
    const [first, last] = [Math.min(...places), Math.max(...places)];
    if (hasReading) return 'T8';
    if (place !== null && isZero(graph, y)) {
      return place === 0 && place < first ? 'T9' : 'T2';
    }
    if (missing.some((row) => ours(row) && showsValue(graph, y, row.exact))) return 'T8';
    const end = graph.days?.atOf(last) ?? Infinity;
    if (place === null ? x > end : place > last) return isSolid(graph, index) ? 'T10' : 'guess';
    return place === null ? 'T8' : 'T2';
  };
  return new Map(strays.map((index) => [index, kindOf(index)]));
};

const isZero = ({ risingScale }: LineGraphParts, y: number): boolean =>
  risingScale ? showsOnScale(risingScale, y, 0) : y <= 0.25;

const isSolid = ({ drawing }: LineGraphParts, point: number): boolean =>
  drawing.joins.some(({ from, to, line }) => line === 'solid' && (from === point || to === point));

/** A reading in another unit, drawn with its number as if it were in the unit of the side. */
const isReadAsItIs = ({ drawing, ...graph }: LineGraphParts, index: number): boolean => {
  const { risingScale, table, measured } = graph;
  const point = drawing.points[index];
  if (!risingScale || !point) return false;
  const place = placeOfPoint({ drawing, ...graph }, point.x);
  return measured.some((row) => {
    const asItIs = (row.exact / exactPerUnit(row.unit)) * exactPerUnit(table.unit);
    return (
      row.place === place && row.unit !== table.unit && showsOnScale(risingScale, point.y, asItIs)
    );
  });
};

/** A height that would be right for the number of the other system: inches for centimetres. */
const isInOtherUnit = (graph: LineGraphParts, index: number): boolean => {
  const { drawing, risingScale, table, measured } = graph;
  const point = drawing.points[index];
  if (!risingScale || !point || (table.unit !== 'cm' && table.unit !== 'in')) return false;
  const place = placeOfPoint(graph, point.x);
  const times =
    table.unit === 'cm'
      ? exactPerUnit('cm') / exactPerUnit('in')
      : exactPerUnit('in') / exactPerUnit('cm');
  return measured.some(
    (row) => row.place === place && showsOnScale(risingScale, point.y, row.exact * times),
  );
};
