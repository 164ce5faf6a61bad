import { blankDrawing } from './blank-drawing';
import type { DrawRightOptions } from './draw-right';
import type { Drawing, DrawnBar } from './drawing';
import { kindPlaces, kindSquaresAcross } from './kind-places';
import { inReadingOrder } from './mirrored-across';
import { numberSide, scaleWithStep, squaresTo } from './number-side';
import { mostPlacesAcross } from './paper-room';
import type { RightGraph } from './right-graph';
import { sideLabelOf, titleOf } from './written-on-graph';

/** A right bar graph, of counts or of values. Not part of the public door. */
export const drawRightBars = (right: RightGraph, options: DrawRightOptions): Drawing => {
  const range = scaleWithStep(right, options.step);
  const rows = barRows(right);
  const { places, width, across } = barPlaces(rows);
  const bars = rows.flatMap(({ exact }, index): readonly DrawnBar[] =>
    exact === null
      ? []
      : [{ at: places[index]?.at as number, width, from: 0, to: squaresTo(exact, range) }],
  );
  return inReadingOrder({
    ...blankDrawing('bar-graph', options.level ?? 'empty-paper', options.upright ?? true, {
      up: squaresTo(range.to, range) + 1,
      across,
    }),
    ...{ title: titleOf(right.table), places, bars },
    side: numberSide(right, range, sideLabelOf(right.table), 0),
  });
};

interface BarRow {
  readonly label: string;
  /** Null where no bar is drawn. */
  readonly exact: number | null;
}

const barRows = ({ table }: RightGraph): readonly BarRow[] => {
  if (table.form === 'values') return table.rows;
  if (table.form !== 'counts') throw new Error(`No bars of ${table.form}`);
  return table.rows.map(({ label, count }) => ({ label, exact: count > 0 ? count : null }));
};

/** A bar a square wide and a square between; half of that where there are many days. */
const barPlaces = (
  rows: readonly BarRow[],
): { readonly places: Drawing['places']; readonly width: number; readonly across: number } => {
  const across = kindSquaresAcross(rows.length);
  if (across <= mostPlacesAcross + 1) return { places: kindPlaces(rows), width: 1, across };
  return {
    places: rows.map(({ label }, index) => ({ at: index + 1, text: label })),
    width: 0.5,
    across: rows.length + 1,
  };
};
