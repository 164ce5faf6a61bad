import { exactPerUnit } from '#core/measure';
import type { Drawing } from './drawing';
import { exactOfLabel } from './exact-of-label';
import type { BarMistakeId } from './found-mistake';
import { meantTicks } from './meant-ticks';
import type { RightGraph } from './right-graph';
import { middleOf } from './spread';
import { writtenScale, type WrittenScale } from './written-scale';

/** What a height says, in counts or whole nanometres. */
export type Reading = (at: number) => number;

/** How the bars of a drawing are to be read, and what is the matter with its scale. */
export interface BarScale {
  readonly written: WrittenScale | null;
  /** Where the bars are to stand: at the written 0 if they do, else in the corner. */
  readonly floor: number;
  /** The difference between two lines one can read by; a quarter of it is a wobble of the hand. */
  readonly interval: number;
  /** The same in squares. */
  readonly intervalSquares: number;
  /** The difference between two written numbers. */
  readonly step: number;
  readonly mistake: ScaleMistakeId | null;
  /** Every way in which a child may have meant this scale; more than one only where it is amiss. */
  readonly readings: readonly [Reading, ...Reading[]];
}

/** The mistakes of a scale that change how every bar is read. */
export type ScaleMistakeId = Extract<BarMistakeId, 'B1' | 'B2' | 'B3' | 'B4' | 'B5'>;

/**
 * Reads the child's own scale and finds the one thing that is the matter with it. Where a scale is
 * amiss the bars may follow its numbers or its squares: both are ways to read it, so that one
 * cause is not found again in every bar.
 * Not part of the public door.
 */
export const barScale = (
  right: RightGraph,
  drawing: Drawing,
  values: readonly number[],
): BarScale => {
  const { table } = right;
  if (table.form !== 'counts' && table.form !== 'values') throw new Error('No scale of bars');
  const ticks = meantTicks(drawing.side.ticks, table);
  const written = writtenScale(ticks, (text) => exactOfLabel(text, table));
  const grain = table.form === 'counts' ? 1 : exactPerUnit(table.unit);
  if (!written) return withoutNumbers(right);
  const { step, space, valueAt, evenValueAt } = written;
  const floor = floorOf(written, drawing);
  const perSquare = step / space;
  const interval = Math.min(step, Math.max(perSquare, grain));
  const known = { written, floor, interval, intervalSquares: interval / perSquare, step };
  const base = valueAt(floor);
  const mistake = mistakeOf(written, floor, values);
  const bySquares = (at: number): number => (at - floor) * grain;
  const fromFloor = (at: number): number => (at - floor) * perSquare;
  const shifted =
    (by: number): Reading =>
    (at) =>
      valueAt(at) + by;
  switch (mistake) {
    case 'B1':
      return { ...known, mistake, readings: [valueAt, shifted(-base)] };
    case 'B2':
      return {
        ...known,
        mistake,
        readings: [valueAt, fromFloor, shifted(-step / 2), shifted(step / 2)],
      };
    case null:
      return { ...known, mistake, readings: [valueAt] };
    default:
      return { ...known, mistake, readings: [valueAt, evenValueAt, bySquares] };
  }
};

/** Without numbers no bar says anything: there is only where it stands. */
const withoutNumbers = ({ scale: { step } }: RightGraph): BarScale => ({
  ...{ written: null, floor: 0, interval: step, intervalSquares: 1, step, mistake: null },
  readings: [(at) => at * step],
});

/** Bars that stand on a 0 written above the corner stand on the base. */
const floorOf = ({ ticks, space }: WrittenScale, { bars }: Drawing): number => {
  const zero = ticks.find(({ value }) => value === 0)?.at ?? 0;
  const from = middleOf(bars.map((bar) => Math.min(bar.from, bar.to)));
  return bars.length > 0 && Math.abs(from - zero) <= space / 4 ? zero : 0;
};

const mistakeOf = (
  scale: WrittenScale,
  floor: number,
  values: readonly number[],
): ScaleMistakeId | null => {
  const { step, hasEvenSteps, hasEvenSpaces, isFair } = scale;
  const isOnFloor = Math.abs(scale.ticks[0]!.at - floor) <= scale.space / 4;
  if (!hasEvenSteps) {
    if (listsOnly(scale, values)) return 'B5';
    if (!isFair) return 'B3';
  } else if (!hasEvenSpaces) {
    return beginsInSpace(scale) ? 'B2' : 'B4';
  }
  if (step <= 0 || (!isFair && !isOnFloor)) return null;
  const base = scale.valueAt(floor) / step;
  // Two numbers alone make one step: listing only the values shows in what the floor would be.
  const hasZero = scale.ticks.some(({ value }) => value === 0);
  if (base < -0.15 && !hasZero && listsOnly(scale, values)) return 'B5';
  if (Math.abs(base) <= 1 / 4 + 1e-9) return null;
  return Math.abs(base) < 3 / 4 ? 'B2' : 'B1';
};

/** The numbers, but for a 0, are those of the table and no others. */
const listsOnly = ({ ticks }: WrittenScale, values: readonly number[]): boolean => {
  const written = new Set(ticks.map(({ value }) => value).filter((value) => value !== 0));
  const wanted = new Set(values.filter((value) => value !== 0));
  return (
    wanted.size > 1 &&
    written.size === wanted.size &&
    [...wanted].every((value) => written.has(value))
  );
};

/** A 0 on the floor, and all other numbers in the boxes above it. */
const beginsInSpace = ({ ticks, space }: WrittenScale): boolean => {
  const gaps = ticks.slice(1).map(({ at }, index) => at - ticks[index]!.at);
  const [first = 0, ...rest] = gaps.map((gap) => gap / space);
  const isHalf = first > 1 / 4 && first < 3 / 4;
  return isHalf && rest.length > 1 && rest.every((gap) => Math.abs(gap - 1) <= 0.2);
};
