import {
  exactPerUnit,
  formatExactNumber,
  markById,
  type LengthUnit,
  type Measured,
} from '#core/measure';
import type { RulerPair } from '#core/series';
import { rulerTicks, wholeStepExact, type RulerTick } from '#ui/ruler';

/** Both sides of one ruler, drawn to one scale from one zero. All places are pixels. */
export interface TwoLines {
  readonly lengthPx: number;
  /** How long the drawn ruler is. */
  readonly lengthExact: number;
  readonly metric: NumberLine;
  readonly customary: NumberLine;
  /**
   * Where the strip ends along each line. Two numbers that agree are of one strip, which ends
   * where the finer side says; two that do not agree each have their own end.
   */
  readonly stripPx: { readonly metric: number; readonly customary: number };
  readonly isOneStrip: boolean;
}

export interface NumberLine {
  readonly unit: LengthUnit;
  readonly ticks: readonly PlacedTick[];
  /** The number that was read. */
  readonly readPx: number;
  /** Whether a numeral stands at the tick that was read. */
  readonly isReadLabelled: boolean;
}

export interface PlacedTick extends RulerTick {
  readonly at: number;
}

export function twoLines(
  { metric, customary, agrees }: Pick<RulerPair, 'metric' | 'customary' | 'agrees'>,
  lengthPx: number,
  fontPx: number,
): TwoLines {
  const lengthExact = drawnLength(Math.max(metric.exact, customary.exact));
  const toPx = (exact: number): number => (exact / lengthExact) * lengthPx;
  const lineOf = (read: Measured): NumberLine => {
    const unit = read.unit as LengthUnit;
    const room = { lengthExact, lengthPx, fontPx };
    const ticks = withReadLabelled(ticksOf(unit, read, room), read, room).map((tick) => ({
      ...tick,
      at: toPx(tick.exact),
    }));
    const isReadLabelled = ticks.some((tick) => tick.exact === read.exact && tick.label !== null);
    return { unit, ticks, readPx: toPx(read.exact), isReadLabelled };
  };
  const finer = markById(metric.mark).exact <= markById(customary.mark).exact ? metric : customary;
  const stripPx = {
    metric: toPx(agrees ? finer.exact : metric.exact),
    customary: toPx(agrees ? finer.exact : customary.exact),
  };
  return {
    ...{ lengthPx, lengthExact, stripPx, isOneStrip: agrees },
    ...{ metric: lineOf(metric), customary: lineOf(customary) },
  };
}

/** A little longer than what is measured: an even number of inches, whole feet for long things. */
const drawnLength = (exact: number): number => {
  const inches = exact / exactPerUnit('in') + 0.75;
  const by = inches > 24 ? 12 : 2;
  return Math.max(4, Math.ceil(inches / by) * by) * exactPerUnit('in');
};

interface Room {
  readonly lengthExact: number;
  readonly lengthPx: number;
  readonly fontPx: number;
}

/** As on a real ruler: halves between the marks where there is room, and every number that fits. */
const ticksOf = (
  unit: LengthUnit,
  { mark }: Measured,
  { lengthExact, lengthPx, fontPx }: Room,
): readonly RulerTick[] => {
  const wholePx = (wholeStepExact(unit) / lengthExact) * lengthPx;
  const leastPx = labelPx(unit, { lengthExact, lengthPx, fontPx });
  const labelEvery = [1, 2, 5, 10, 20, 50, 100].find((each) => each * wholePx >= leastPx) ?? 200;
  const shape = { unit, mark, lengthExact, labelEvery };
  const fits = (ticks: readonly RulerTick[]): boolean =>
    lengthPx / Math.max(1, ticks.length - 1) >= leastTickPx;
  for (const detail of ['half-way', 'mark', 'whole'] as const) {
    const ticks = rulerTicks({ ...shape, detail });
    if (fits(ticks)) return ticks;
  }
  const every = labelEvery % 5 === 0 ? labelEvery / 5 : 1;
  const wholeExact = wholeStepExact(unit);
  return rulerTicks({ ...shape, detail: 'whole' }).filter(
    ({ exact }) => (exact / wholeExact) % every === 0,
  );
};

/** What a number needs along the line, and a little air. */
const labelPx = (unit: LengthUnit, { lengthExact, fontPx }: Room): number =>
  fontPx * 0.62 * (Math.floor(lengthExact / exactPerUnit(unit)) > 99 ? 3 : 2) + 5;

/** A whole number that was read stands on its line; numbers too near to it make room, 0 stays. */
function withReadLabelled(
  ticks: readonly RulerTick[],
  { unit, mark, exact }: Measured,
  room: Room,
): readonly RulerTick[] {
  const isWhole = exact % exactPerUnit(unit) === 0;
  if (!isWhole || ticks.some((tick) => tick.exact === exact && tick.label !== null)) return ticks;
  const label = formatExactNumber(exact, unit, mark);
  const leastExact = (labelPx(unit as LengthUnit, room) / room.lengthPx) * room.lengthExact;
  const position = exact / room.lengthExact;
  const read: RulerTick = { exact, position, rank: 'whole', label, onMark: true };
  return [...ticks.filter((tick) => tick.exact !== exact), read]
    .sort((left, right) => left.exact - right.exact)
    .map((tick) => {
      const isNear = tick !== read && Math.abs(tick.exact - exact) < leastExact;
      return isNear && tick.exact !== 0 ? { ...tick, label: null } : tick;
    });
}

const leastTickPx = 4;
