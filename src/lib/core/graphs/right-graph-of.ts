import { failed, ok, type Result } from '#core/base';
import type { Stage } from '#core/journal';
import type { Unit } from '#core/measure';
import type {
  CountTable,
  GraphKind,
  GraphTable,
  MeasureTable,
  TimeTable,
  ValueTable,
} from './graph-table';
import { labelsOf, type StepRange } from './labels-of';
import { mostPlacesAcross, mostSquaresUp } from './paper-room';
import { pictureKey } from './picture-key';
import type { RightGraph } from './right-graph';
import { countScale, lengthScale, plotScale, type TooTall, type TooWide } from './scale-for';
import { sideWordsOf, titleWordsOf } from './words-of-table';

/** How many kinds a child of each stage sorts into (1.MD.C.4, 2.MD.D.10; grade 3: our own limit). */
export const mostKindsByStage: Readonly<Record<Stage, number>> = {
  'grade-1': 3,
  'grade-2': 4,
  'grade-3': 8,
};

/**
 * What a right graph of this kind has, for this table and a child of this stage; or why there is
 * none. A picture graph needs counts; a bar graph counts or values; a line plot measures; a line
 * graph times. Only the shape of the table is looked at here: whether there are readings enough to
 * be worth drawing is told with the choices.
 *
 * Errors: see `NoGraph`. A table in two units is refused, since its numbers share no scale.
 * @example
 * rightGraphOf('bar-graph', { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 3 }, { label: 'rain', count: 1 }] }, 'grade-2').value.scale // => { from: 0, to: 3, step: 1, labels: ['0', '1', '2', '3'] }
 * rightGraphOf('line-plot', { form: 'counts', counted: 'days', rows: [] }, 'grade-2') // => { ok: false, error: { kind: 'wrong-table-for-kind', graph: 'line-plot', form: 'counts' } }
 */
export const rightGraphOf = (
  kind: GraphKind,
  table: GraphTable,
  stage: Stage,
): Result<RightGraph, NoGraph> => {
  const parts = partsOf(kind, table, stage);
  if (!parts.ok) return parts;
  const { scale, keyValue } = parts.value;
  return ok({
    ...{ kind, stage, table, keyValue },
    scale: { ...scale, labels: labelsOf(scale, table) },
    titleWords: titleWordsOf(table),
    sideWords: sideWordsOf(table),
  });
};

const partsOf = (kind: GraphKind, table: GraphTable, stage: Stage): Result<Parts, NoGraph> => {
  if (kind === 'picture-graph' && table.form === 'counts') return pictureParts(table, stage);
  if (kind === 'bar-graph' && table.form === 'counts') return countParts(table, stage);
  if (kind === 'bar-graph' && table.form === 'values') return valueParts(table, stage);
  if (kind === 'line-plot' && table.form === 'measures') return plotParts(table);
  if (kind === 'line-graph' && table.form === 'times') return timeParts(table, stage);
  return failed({ kind: 'wrong-table-for-kind', graph: kind, form: table.form });
};

const countsOf = (table: CountTable, stage: Stage): Result<readonly number[], NoGraph> => {
  const counts = table.rows.map(({ count }) => count);
  const most = mostKindsByStage[stage];
  if (counts.length < fewestKinds) {
    return failed({ kind: 'too-few', have: counts.length, need: fewestKinds });
  }
  if (counts.length > most) return failed({ kind: 'too-many-kinds', have: counts.length, most });
  if (counts.every((count) => count === 0)) return failed({ kind: 'no-numbers' });
  return ok(counts);
};

const pictureParts = (table: CountTable, stage: Stage): Result<Parts, NoGraph> => {
  const counts = countsOf(table, stage);
  if (!counts.ok) return counts;
  const largest = Math.max(...counts.value);
  const keyValue = pictureKey(counts.value, stage);
  if (keyValue === null) {
    return failed(
      stage === 'grade-3'
        ? { kind: 'no-key-fits' }
        : { kind: 'too-tall', need: largest, room: mostSquaresUp },
    );
  }
  const to = Math.ceil(largest / keyValue) * keyValue;
  return ok({ scale: { from: 0, to, step: keyValue }, keyValue });
};

const countParts = (table: CountTable, stage: Stage): Result<Parts, NoGraph> => {
  const counts = countsOf(table, stage);
  if (!counts.ok) return counts;
  return withoutKey(countScale(Math.max(...counts.value), stage));
};

const valueParts = (table: ValueTable, stage: Stage): Result<Parts, NoGraph> => {
  const values = numbersOf(table, table.rows);
  if (!values.ok) return values;
  if (table.rows.length > mostPlacesAcross) return tooWide(table.rows.length, mostPlacesAcross);
  const steps = stage === 'grade-3' ? 'any-step' : 'single-unit';
  return withoutKey(lengthScale(Math.max(...values.value), table, stage, steps));
};

const plotParts = (table: MeasureTable): Result<Parts, NoGraph> => {
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

/** A line graph's frame is given in grades 1 and 2, so its scale need not go by ones. */
const timeParts = (table: TimeTable, stage: Stage): Result<Parts, NoGraph> => {
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

const withoutKey = (scale: Result<StepRange, NoGraph>): Result<Parts, NoGraph> =>
  scale.ok ? ok({ scale: scale.value, keyValue: null }) : scale;

const tooWide = (need: number, room: number): Result<never, NoGraph> =>
  failed({ kind: 'too-wide', need, room });

const tooManySeries = (have: number): Result<never, NoGraph> =>
  failed({ kind: 'too-many-series', have, most: mostMarks });

interface Parts {
  readonly scale: StepRange;
  readonly keyValue: number | null;
}

const fewestKinds = 2;
const fewestNumbers = 2;
/** Crosses, rings and boxes; and as many lines. */
const mostMarks = 3;
const mostLines = 3;

/** Why a table makes no right graph of a kind. */
export type NoGraph =
  | {
      readonly kind: 'wrong-table-for-kind';
      readonly graph: GraphKind;
      readonly form: GraphTable['form'];
    }
  | { readonly kind: 'too-few'; readonly have: number; readonly need: number }
  | { readonly kind: 'too-many-kinds'; readonly have: number; readonly most: number }
  | { readonly kind: 'too-many-series'; readonly have: number; readonly most: number }
  /** One pile of a line plot higher than the paper. */
  | { readonly kind: 'too-many-marks'; readonly have: number; readonly most: number }
  /** Not one number, or no kind that ever came. */
  | { readonly kind: 'no-numbers' }
  | { readonly kind: 'units-mixed'; readonly units: readonly Unit[] }
  /** An amount less than nothing, such as a plant that drooped: no graph of these stages. */
  | { readonly kind: 'below-zero' }
  /** No key of 1, 2, 5 or 10 shows the counts in whole and half pictures. */
  | { readonly kind: 'no-key-fits' }
  | TooTall
  | TooWide;
