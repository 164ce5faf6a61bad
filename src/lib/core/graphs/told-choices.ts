import { toldUnits } from '#core/growth';
import {
  deservedMark,
  exactPerUnit,
  isLengthUnit,
  liesOnMark,
  markById,
  marksFor,
  nearestOnMark,
  systemOf,
  type LengthUnit,
  type MarkId,
  type Measured,
  type Unit,
} from '#core/measure';
import type { Stage } from '#core/journal';
import type { Series } from '#core/series';
import type { ToldIn } from './table-choice';
import type { ToldHow } from './table-offer';

/** A way to tell the measures of a table. */
export interface ToldWay {
  readonly how: ToldHow;
  readonly told: ToldIn;
}

/**
 * The unit and mark that logs were read in: the unit of most of the readings (the planned one of
 * two that are equally many), and the finest mark of them; where some of them lie beside it (tenths
 * among quarters), the coarsest mark that all lie on. Not part of the public door.
 */
export const toldAsRead = (logs: readonly Series[]): ToldIn | null => {
  const [first] = logs;
  if (!first) return null;
  const unit = unitOfMost(readsOf(logs), first.investigation.unit);
  const read = readsOf(logs).filter((each) => each.unit === unit);
  return { unit, mark: sharedMark(read, unit) ?? plannedMark(first, unit), converts: false };
};

/**
 * Other ways, the truest first: all in one unit where two were read; to a coarser mark; in another
 * unit that some were read in, or the usual one of the other system, in grades 1 and 2 to whole
 * units. Not part of the public door.
 */
export const toldOtherwise = (
  logs: readonly Series[],
  { unit, mark }: ToldIn,
  stage: Stage,
): readonly ToldWay[] => {
  if (!isLengthUnit(unit)) return [];
  const isMixed = unitsRead(logs).some((each) => each !== unit && isLengthUnit(each));
  const same = marksFor(unit)
    .filter(({ id, exact }) => exact > markById(mark).exact && fits(id, unit))
    .toReversed();
  const others = [...new Set([...unitsRead(logs), ...toldUnits(unit)])].filter(
    (each): each is LengthUnit => each !== unit && isLengthUnit(each),
  );
  return [
    ...(isMixed ? [{ how: 'one-unit' as const, told: { unit, mark, converts: true } }] : []),
    ...same.map(({ id }) => ({
      how: 'coarser-mark' as const,
      told: { unit, mark: id, converts: true },
    })),
    ...others.flatMap((other) =>
      marksInOther(mark, other, stage).map((id) => ({
        how: 'other-unit' as const,
        told: { unit: other, mark: id, converts: true },
      })),
    ),
  ];
};

const readsOf = (logs: readonly Series[]): readonly Measured[] =>
  logs.flatMap(({ days }) => days.flatMap(({ readings }) => readings.flatMap(({ all }) => all)));

const unitsRead = (logs: readonly Series[]): readonly Unit[] =>
  readsOf(logs).map(({ unit }) => unit);

const unitOfMost = (read: readonly Measured[], planned: Unit): Unit => {
  const countByUnit = new Map<Unit, number>([[planned, 0]]);
  for (const { unit } of read) countByUnit.set(unit, (countByUnit.get(unit) ?? 0) + 1);
  return [...countByUnit].reduce((most, each) => (each[1] > most[1] ? each : most))[0];
};

const sharedMark = (read: readonly Measured[], unit: Unit): MarkId | undefined => {
  const finest = read
    .map((each) => each.mark)
    .toSorted((one, other) => markById(one).exact - markById(other).exact)[0];
  if (finest === undefined || read.every(({ exact }) => liesOnMark(exact, finest))) return finest;
  return (
    marksFor(unit).find(({ id }) => read.every(({ exact }) => liesOnMark(exact, id)))?.id ?? finest
  );
};

const plannedMark = ({ investigation }: Series, unit: Unit): MarkId => {
  const { mark } = investigation;
  return systemOf(markById(mark).unit) === systemOf(unit)
    ? mark
    : (marksFor(unit)[0]?.id as MarkId);
};

/**
 * Marks in the other unit that the readings deserve and the child can read: whole and half inches
 * in grades 1 and 2, the whole first; in grade 3 down to quarters, the finest first.
 */
const marksInOther = (mark: MarkId, other: LengthUnit, stage: Stage): readonly MarkId[] => {
  const finest = exactPerUnit(other) / (other === 'in' ? (stage === 'grade-3' ? 4 : 2) : 1);
  const least = Math.max(finest, markById(deservedMark(mark, other)).exact);
  const found = marksFor(other).filter(({ id, exact }) => exact >= least && fits(id, other));
  const ids = found.map(({ id }) => id);
  return stage === 'grade-3' ? ids.toReversed() : ids;
};

/**
 * Whether some length would be told as 0, which says something else: a dry day, a seed that is
 * not up. Not part of the public door.
 */
export const losesAny = (logs: readonly Series[], { mark, unit }: ToldIn): boolean =>
  readsOf(logs).some(
    (read) =>
      read.exact > 0 &&
      isLengthUnit(read.unit) === isLengthUnit(unit) &&
      nearestOnMark(read.exact, mark) === 0,
  );

/** Inches keep to fractions where they were read in fractions; no mark beyond one unit. */
const fits = (id: MarkId, unit: Unit): boolean =>
  markById(id).exact <= exactPerUnit(unit) &&
  (unit !== 'in' || markById(id).writtenAs === 'fraction');
