import { begunDrawing, drawRight, type Drawing, type GraphTable } from '#core/graphs';
import type { LessonFacts } from '#core/questions';

/**
 * The frame with the first half of the table drawn already, for a lesson too short to draw all of
 * it: names, numbers, the key, and the marks of the first half of the rows, one more where their
 * number is odd. The title is left to the child.
 */
export function halfDrawn({ right, table }: Pick<LessonFacts, 'right' | 'table'>): Drawing {
  const whole = drawRight(right);
  const labels = [...new Set(labelsOf(table))];
  const half = new Set(labels.slice(0, Math.ceil(labels.length / 2)));
  const places = whole.places.filter(({ text }) => half.has(text)).map(({ at }) => at);
  const stands = (at: number): boolean =>
    places.some((place) => Math.abs(place - at) < nearSquares);
  const kept = whole.points.flatMap((point, index) => (stands(point.x) ? [index] : []));
  return {
    ...begunDrawing(whole, 'frame-given'),
    ...{ key: whole.key, seriesKey: whole.seriesKey },
    symbols: whole.symbols.filter(({ row }) => stands(row)),
    bars: whole.bars.filter(({ at }) => stands(at)),
    crosses: whole.crosses.slice(0, half.size),
    points: kept.map((index) => whole.points[index]!),
    joins: whole.joins
      .filter(({ from, to }) => kept.includes(from) && kept.includes(to))
      .map((join) => ({ ...join, from: kept.indexOf(join.from), to: kept.indexOf(join.to) })),
  };
}

/** A mark stands in the middle of its place. */
const nearSquares = 0.01;

const labelsOf = (table: GraphTable): readonly string[] => {
  if (table.form === 'measures') return table.values.map(({ label }) => label);
  if (table.form === 'times') return table.rows.map(({ place }) => table.places[place] ?? '');
  return table.rows.map(({ label }) => label);
};
