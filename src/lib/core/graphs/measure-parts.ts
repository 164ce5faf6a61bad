import { failed, ok, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import type { Unit } from '#core/measure';
import type { MeasureTable, TimeTable, ValueTable } from './graph-table';
import type { StepRange } from './labels-of';
import type { NoGraph } from './no-graph';
import { mostPlacesAcross, mostSquaresUp } from './paper-room';
import type { RightParts } from './right-graph';
import { lengthScale, plotScale } from './scale-for';

/** The scale of right bars of one value a day, week or hour. Not part of the public door. */
export const valueParts = (table: ValueTable, stage: Stage): Result<RightParts, NoGraph> => {
  const values = numbersOf(table, table.rows);
  if (!values.ok) return values;
  if (table.rows.length > mostPlacesAcross) return tooWide(table.rows.length, mostPlacesAcross);
  const single = table.givenSteps ? 'by-fives' : 'single-unit';
  const steps = stage === 'grade-3' ? 'any-step' : single;
  return withoutKey(lengthScale(Math.max(...values.value), table, stage, steps));
};

/** The number line of a right line plot. Not part of the public door. */
export const plotParts = (table: MeasureTable): Result<RightParts, NoGraph> => {
  const values = numbersOf(table, table.values);
  if (!values.ok) return values;
  if (table.seriesNames.length > mostMarks) return tooManySeries(table.seriesNames.length);
  const scale = plotScale(values.value, table.mark);
  if (!scale.ok) return scale;
  const largest = largestPile(values.value, scale.value.step);
  const most = mostSquaresUp * 2;
  if (largest > most) return failed({ kind: 'too-many-marks', have: largest, most });
  return withoutKey(scale);
};

/**
 * The scale of a right line graph: its frame is given in grades 1 and 2, so it need not go by
 * ones. Not part of the public door.
 */
export const timeParts = (table: TimeTable, stage: Stage): Result<RightParts, NoGraph> => {
  const values = numbersOf(table, table.rows);
  if (!values.ok) return values;
  if (table.seriesNames.length > mostLines) return tooManySeries(table.seriesNames.length);
  const room = mostPlacesAcross * 2;
  if (table.places.length > room) return tooWide(table.places.length, room);
  return withoutKey(lengthScale(Math.max(...values.value), table, stage, 'any-step'));
};

/** The numbers of a table, all in its own unit and none below 0. */
const numbersOf = (
  table: { readonly unit: Unit },
  rows: readonly { readonly exact: number | null; readonly unit?: Unit }[],
): Result<readonly number[], NoGraph> => {
  const measured = rows.filter((row) => row.exact !== null);
  const units = [...new Set(measured.map((row) => row.unit ?? table.unit))];
  const values = measured.map((row) => row.exact as number);
  if (values.length === 0) return failed({ kind: 'no-numbers' });
  if (units.length > 1 || units[0] !== table.unit) return failed({ kind: 'units-mixed', units });
  if (values.some((exact) => exact < 0)) return failed({ kind: 'below-zero' });
  if (values.length < fewestNumbers) {
    return failed({ kind: 'too-few', have: values.length, need: fewestNumbers });
  }
  return ok(values);
};

const largestPile = (values: readonly number[], step: number): number => {
  const pileAt = new Map<number, number>();
  for (const exact of values) {
    const place = Math.round(exact / step);
    pileAt.set(place, (pileAt.get(place) ?? 0) + 1);
  }
  return Math.max(0, ...pileAt.values());
};

const withoutKey = (scale: Result<StepRange, NoGraph>): Result<RightParts, NoGraph> =>
  scale.ok ? ok({ scale: scale.value, keyValue: null }) : scale;

const tooWide = (need: number, room: number): Result<never, NoGraph> =>
  failed({ kind: 'too-wide', need, room });

const tooManySeries = (have: number): Result<never, NoGraph> =>
  failed({ kind: 'too-many-series', have, most: mostMarks });

const fewestNumbers = 2;
/** Crosses, rings and boxes; and as many lines. */
const mostMarks = 3;
const mostLines = 3;
