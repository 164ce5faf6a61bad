import { rowsOfBars, type RowsOfBars } from './bar-rows';
import { barScale, type BarScale } from './bar-scale';
import { barValues, type BarValues } from './bar-values';
import { barWords } from './bar-words';
import type { Drawing } from './drawing';
import type { BarMistakeId, FoundMistake, Look, LookAt, RightPart } from './found-mistake';
import { missingDays } from './missing-days';
import type { RightGraph } from './right-graph';
import { middleOf, spreadOf } from './spread';

/**
 * Looks at a child's bar graph, of counts or of values, beside its table.
 *
 * Mistakes come in the order in which mending one helps with the next: what is counted at all
 * (B12, B16); the scale, since every bar is read by it (B3, B4, B5, B1, B2); how bars stand (B6,
 * B7); which bar belongs to which name or day (B9, B15); single bars (B14, B8); and last what is
 * not there yet, which may just not have been drawn so far: the words (B10, B13), then places and
 * bars (B11). One cause is told once: a scale that is amiss is not told again in each bar, and
 * bars without any numbers beside them are not read.
 *
 * The child's own scale counts. A bar is right that ends within a quarter of an interval of its
 * value; lines without width are bars. A value that fits nothing else is a B8. Tables that make no
 * bars throw.
 * @example
 * lookAtBarGraph({ kind: 'bar-graph', table: { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 2 }] }, scale: { step: 1 }, titleWords: ['days'], sideWords: ['days'] }, { ...emptyDrawing('bar-graph', { columns: 3, rows: 3 }), title: 'Days of sun', side: { label: 'days', ticks: [{ at: 0, text: '1' }, { at: 1, text: '2' }] }, places: [{ at: 1, text: 'sun' }], bars: [{ at: 1, width: 1, from: 0, to: 1 }] }).mistakes.map(({ id }) => id) // => ['B1']
 */
export const lookAtBarGraph = (right: RightGraph, drawing: Drawing): Look => {
  const found = rowsOfBars(right.table, drawing);
  const { rows } = found;
  const scale = barScale(
    right,
    drawing,
    rows.flatMap(({ exact }) => (exact === null ? [] : [exact])),
  );
  const isPerCase = isBarPerCase(right, drawing, scale);
  const values = isPerCase || !scale.written ? unread : barValues(found, drawing.bars, scale);
  const days = missingDays(right.table, drawing, rows);
  const scaleMistake = scale.mistake ?? values.scaleMistake;
  const floating = floatingBars(drawing, scale);
  const widths = drawing.bars.map(({ width }) => width);
  const words = barWords(right, drawing, scale);
  const mistakes: readonly FoundMistake[] = [
    ...(isPerCase ? [mistake('B12', { part: 'whole' })] : []),
    ...onBars('B16', values.otherUnit),
    ...words.otherUnit,
    ...(scaleMistake ? [mistake(scaleMistake, ticksOf(scaleMistake, scale))] : []),
    ...onBars('B6', floating),
    ...(spreadOf(widths) > 0.3 + 1e-9 ? onBars('B7', oddWidths(widths)) : []),
    ...swappedPlaces(found, values),
    ...days.mistakes,
    ...onBars('B14', values.snapped),
    ...values.off.flatMap((index) => onBars('B8', [index])),
    ...words.mistakes,
    ...(isPerCase ? [] : leftOut(found, days.toCome, values.swappedRows)),
  ];
  const has = (...ids: readonly BarMistakeId[]): boolean =>
    mistakes.some(({ id }) => ids.includes(id as BarMistakeId));
  const isNamed = rows.every(({ place }) => place !== null);
  const isNumbered = scale.written !== null;
  const places = right.table.form === 'values' ? 'every-day' : 'every-place';
  const parts: readonly (RightPart | false)[] = [
    ...words.right,
    isNumbered && !has('B1', 'B2', 'B5') && startsAtZero(scale) && 'scale-from-zero',
    isNumbered && !has('B2', 'B3', 'B4', 'B5') && scale.written!.hasEvenSteps && 'even-scale',
    widths.length > 0 && !has('B6') && 'stand-on-base',
    widths.length > 1 && !has('B7') && 'same-size',
    isNamed && places,
    days.hasGaps && !has('B15') && 'gaps-shown',
    isNumbered && saysTheTable(mistakes) && 'every-value',
  ];
  return { right: parts.filter((part) => part !== false), mistakes };
};

const mistake = (id: BarMistakeId, lookAt: LookAt): FoundMistake => ({ id, lookAt, isSoft: false });

const onBars = (id: BarMistakeId, indexes: readonly number[]): readonly FoundMistake[] =>
  indexes.length === 0 ? [] : [mistake(id, { part: 'bars', indexes })];

/** Where a scale begins amiss, only its first number is to be looked at. */
const ticksOf = (id: BarMistakeId, { written }: BarScale): LookAt => {
  const indexes = written?.ticks.map(({ index }) => index) ?? [];
  return { part: 'side-ticks', indexes: id === 'B1' ? indexes.slice(0, 1) : indexes };
};

const unread: BarValues = {
  ...{ scaleMistake: null, swappedRows: [], otherUnit: [], snapped: [], off: [] },
};

/** Every case has a bar of its own, one high, though the table has put them together. */
const isBarPerCase = ({ table }: RightGraph, { bars }: Drawing, scale: BarScale): boolean => {
  if (table.form !== 'counts' || bars.length <= table.rows.length) return false;
  if (table.rows.every(({ count }) => count <= 1)) return false;
  const isOne = (value: number): boolean => Math.abs(value - 1) <= 0.25 + 1e-9;
  return bars.every(({ from, to }) => {
    const value = scale.written?.valueAt(Math.max(from, to));
    return isOne(Math.abs(to - from)) || (value !== undefined && isOne(value));
  });
};

const floatingBars = ({ bars }: Drawing, { floor, intervalSquares }: BarScale) =>
  bars.flatMap(({ from, to }, index) =>
    Math.abs(Math.min(from, to) - floor) > intervalSquares / 4 + 1e-9 ? [index] : [],
  );

/** The bars whose width is not the usual one. */
const oddWidths = (widths: readonly number[]): readonly number[] => {
  const usual = middleOf(widths);
  return widths.flatMap((width, index) => (Math.abs(width - usual) > usual * 0.1 ? [index] : []));
};

const swappedPlaces = ({ rows }: RowsOfBars, values: BarValues): readonly FoundMistake[] => {
  if (values.swappedRows.length === 0) return [];
  const indexes = values.swappedRows.flatMap((row) => rows[row]!.place ?? []);
  return [mistake('B9', { part: 'places', indexes })];
};

/** Names without a bar that should have one, and bars without a name; a bar of 0 has no height. */
const leftOut = (
  { rows }: RowsOfBars,
  toCome: readonly number[],
  swapped: readonly number[],
): readonly FoundMistake[] => {
  const isNeeded = (row: number): boolean => rows[row]!.exact !== null || toCome.includes(row);
  const nameless = rows.filter((each, row) => each.place === null && isNeeded(row));
  const barless = rows.filter(
    ({ exact, bar, bare }, row) => exact && bar === null && bare === null && !swapped.includes(row),
  );
  const unnamedBars = nameless.flatMap(({ bar }) => bar ?? []);
  if (nameless.length === 0 && barless.length === 0) return [];
  if (unnamedBars.length > 0) return onBars('B11', unnamedBars);
  return [mistake('B11', { part: 'places', indexes: barless.flatMap(({ place }) => place ?? []) })];
};

const startsAtZero = ({ written, floor, step }: BarScale): boolean =>
  Math.abs(written!.valueAt(floor)) <= step / 4 + 1e-9;

const saysTheTable = (mistakes: readonly FoundMistake[]): boolean =>
  !mistakes.some(({ id }) => !['B4', 'B7', 'B10', 'B13'].includes(id));
