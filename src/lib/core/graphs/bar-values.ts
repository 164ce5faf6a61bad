import type { BarRow, RowsOfBars } from './bar-rows';
import type { BarScale, Reading, ScaleMistakeId } from './bar-scale';
import type { DrawnBar } from './drawing';
import { swappedValues } from './swapped-values';

/** What the bars say beside the table. All are indexes of bars, but for the swapped places. */
export interface BarValues {
  /** A mistake of the scale that only the bars show. */
  readonly scaleMistake: ScaleMistakeId | null;
  readonly swappedRows: readonly number[];
  /** Bars of readings in another unit, drawn as if they were in this one. */
  readonly otherUnit: readonly number[];
  /** Bars that end on a written line though their value lies between two. */
  readonly snapped: readonly number[];
  readonly off: readonly number[];
}

/**
 * Compares each bar with its row: one that ends within a quarter of an interval of its value is
 * right. What remains is looked at for one cause behind several bars before each is one of its own.
 * Not part of the public door.
 */
export const barValues = (
  { rows, strayBars, doubledBars }: RowsOfBars,
  bars: readonly DrawnBar[],
  scale: BarScale,
): BarValues => {
  const drawn = rows.flatMap(({ exact, bar }, row) =>
    exact === null || bar === null ? [] : [{ row, exact, bar: bars[bar]! }],
  );
  const fits = (reading: Reading, bar: DrawnBar, exact: number): boolean =>
    isRight(scale, reading, bar, exact);
  const wrongBy = (reading: Reading): readonly number[] =>
    drawn.filter(({ bar, exact }) => !fits(reading, bar, exact)).map(({ row }) => row);
  const reading = scale.readings.reduce((best, next) =>
    wrongBy(next).length < wrongBy(best).length ? next : best,
  );
  const barOf = (row: number): DrawnBar => bars[rows[row]!.bar!]!;
  const indexesOf = (list: readonly number[]): readonly number[] =>
    list.map((row) => rows[row]!.bar!);

  const wrong = wrongBy(reading);
  const shift = scale.mistake === null ? commonShift(scale, drawn, wrong) : null;
  const bare = wrong.filter((row) => {
    const { bare } = rows[row]!;
    return bare !== null && fits(reading, barOf(row), bare);
  });
  const rest = shift ? [] : wrong.filter((row) => !bare.includes(row));
  const undrawn = rows.flatMap(({ exact, bar, place }, row) =>
    exact && bar === null && place !== null ? [row] : [],
  );
  const barOrNothing = (row: number): DrawnBar => (rows[row]!.bar === null ? nothing : barOf(row));
  const swappedRows = exchanged(rest, undrawn, (from, row) =>
    fits(reading, barOrNothing(from), rows[row]!.exact!),
  );
  const single = rest.filter((row) => !swappedRows.includes(row));
  const snapped = single.filter((row) => isSnapped(scale, reading, barOf(row), rows[row]!));
  const doubled = doubledBars.filter(({ bar, row }) => {
    const { exact } = rows[row]!;
    return exact !== null && !fits(reading, bars[bar]!, exact);
  });
  const hasNames = rows.every(({ place }) => place !== null);
  return {
    ...{ scaleMistake: shift, swappedRows },
    otherUnit: shift ? [] : indexesOf(bare),
    snapped: indexesOf(snapped),
    off: [
      ...indexesOf(single.filter((row) => !snapped.includes(row))),
      ...doubled.map(({ bar }) => bar),
      ...(hasNames ? strayBars : []),
    ].sort((one, other) => one - other),
  };
};

/** A bar without its foot on the base may be right by where it ends or by its length. */
const isRight = (scale: BarScale, reading: Reading, bar: DrawnBar, exact: number): boolean => {
  const { floor, interval, intervalSquares } = scale;
  const [foot, top] = [Math.min(bar.from, bar.to), Math.max(bar.from, bar.to)];
  if (exact === 0 && top - foot <= intervalSquares / 4 + 1e-9) return true;
  const isNear = (at: number): boolean =>
    Math.abs(reading(at) - exact) <= interval / 4 + interval * 1e-9;
  const floats = Math.abs(foot - floor) > intervalSquares / 4 + 1e-9;
  return isNear(top) || (floats && isNear(floor + top - foot));
};

interface DrawnRow {
  readonly row: number;
  readonly exact: number;
  readonly bar: DrawnBar;
}

/**
 * All bars off by the same step: counted from 1, not from 0. All off by the same half step, and
 * ending between the lines: drawn to the boxes. A 0 has no bar that could be off.
 */
const commonShift = (
  scale: BarScale,
  drawn: readonly DrawnRow[],
  wrong: readonly number[],
): ScaleMistakeId | null => {
  const { written, step } = scale;
  const tall = drawn.filter(({ exact }) => exact > 0);
  if (!written || tall.length < 2 || tall.some(({ row }) => !wrong.includes(row))) return null;
  const fitsAll = (by: number): boolean =>
    tall.every(({ bar, exact }) => isRight(scale, (at) => written.valueAt(at) + by, bar, exact));
  if (fitsAll(step) || fitsAll(-step)) return 'B1';
  const isBetween = tall.some(({ bar }) => {
    const steps = written.valueAt(Math.max(bar.from, bar.to)) / step;
    return Math.abs(steps - Math.floor(steps) - 0.5) < 0.25;
  });
  return isBetween && (fitsAll(step / 2) || fitsAll(-step / 2)) ? 'B2' : null;
};

/**
 * All of them in another order, or else each two that carry each other's values; a bar may have
 * changed places with one of nothing.
 */
const exchanged = (
  wrong: readonly number[],
  undrawn: readonly number[],
  fits: (drawn: number, row: number) => boolean,
): readonly number[] => {
  const all = swappedValues(wrong, fits);
  if (all) return all;
  const either = [...wrong, ...undrawn];
  const isPair = (one: number, other: number): boolean => fits(one, other) && fits(other, one);
  const partnersOf = (row: number): readonly number[] =>
    wrong.includes(row)
      ? either.filter((other) => other !== row && isPair(row, other))
      : wrong.filter((other) => isPair(row, other));
  return either.filter((row) => partnersOf(row).length > 0).sort((one, other) => one - other);
};

const nothing: DrawnBar = { at: 0, width: 0, from: 0, to: 0 };

const isSnapped = (scale: BarScale, reading: Reading, bar: DrawnBar, row: BarRow): boolean => {
  const { step, interval } = scale;
  const steps = row.exact! / step;
  if (Math.abs(steps - Math.round(steps)) < 1e-6) return false;
  const top = reading(Math.max(bar.from, bar.to));
  if (Math.abs(top - row.exact!) > step * 0.99) return false;
  const isOn = (line: number): boolean => Math.abs(top - line * step) <= interval / 4 + 1e-9;
  return isOn(Math.floor(steps)) || isOn(Math.ceil(steps));
};
