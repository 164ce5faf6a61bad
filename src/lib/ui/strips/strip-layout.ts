import type { LengthUnit, MarkId } from '#core/measure';
import { rulerTicks, wholeStepExact, type RulerTick } from '#ui/ruler';
import { isCovered, measuredDays, spanOf, type StripDay, type StripVariant } from './strip-day';

/** One strip, measured from the base line and the row's beginning, in pixels. */
export interface Strip {
  readonly day: StripDay;
  /** Where its place begins and how wide it is. */
  readonly startPx: number;
  readonly widthPx: number;
  /** How far it reaches from the base line; null where there is no number. */
  readonly reachPx: number | null;
  /** Part of a later total for several days: nothing is drawn in its place. */
  readonly isCovered: boolean;
}

export interface StripLayout {
  readonly strips: readonly Strip[];
  readonly ticks: readonly RulerTick[];
  /** The length the ruler shows, in whole nanometres. */
  readonly topExact: number;
  readonly rowPx: number;
}

export interface StripFrame {
  readonly unit: LengthUnit;
  readonly mark: MarkId;
  readonly variant: StripVariant;
  /** How long the ruler is drawn. */
  readonly reachPx: number;
  /** From one day's place to the next. */
  readonly pitchPx: number;
  /** Bare space between neighbouring strips. */
  readonly gapPx: number;
  readonly detail: 'mark' | 'whole';
  /** Fixes the ruler's length, so that two rows can be compared. */
  readonly topExact?: number;
}

/**
 * Where every strip stands. Each day has one place, measured or not, so that the row keeps time;
 * a total for several days is as wide as its days. The ruler reaches the next whole unit above
 * the longest strip.
 */
export const stripLayout = (days: readonly StripDay[], frame: StripFrame): StripLayout => {
  const topExact = Math.max(frame.topExact ?? 0, topOf(days, frame));
  const wholePx = (frame.reachPx * wholeStepExact(frame.unit)) / topExact;
  const labelEvery = labelSteps.find((step) => step * wholePx >= leastLabelPx) ?? 100;
  const marks = { unit: frame.unit, mark: frame.mark, lengthExact: topExact, labelEvery };
  const fine = rulerTicks({ ...marks, detail: frame.detail });
  const crowded = frame.reachPx / fine.length < leastTickPx;

  return {
    topExact,
    ticks: crowded ? rulerTicks({ ...marks, detail: 'whole' }) : fine,
    rowPx: days.length * frame.pitchPx,
    strips: days.map((day, index) => {
      const places = Math.min(spanOf(day), index + 1);
      return {
        day,
        startPx: (index + 1 - places) * frame.pitchPx + frame.gapPx / 2,
        widthPx: places * frame.pitchPx - frame.gapPx,
        reachPx: day.exact === null ? null : (day.exact / topExact) * frame.reachPx,
        isCovered: isCovered(days, index),
      };
    }),
  };
};

const topOf = (days: readonly StripDay[], { unit, variant }: StripFrame): number => {
  const wholeExact = wholeStepExact(unit);
  const longest = Math.max(0, ...measuredDays(days).map((day) => day.exact ?? 0));
  const least = variant === 'gauge' ? leastGauge[unit] : leastStem[unit];
  return Math.max(Math.ceil(longest / wholeExact), least) * wholeExact;
};

/** A first half inch should look small beside its ruler, and a shower should not. */
const leastStem: Record<LengthUnit, number> = { in: 4, cm: 10, mm: 10, ft: 2, yd: 1, m: 1 };
const leastGauge: Record<LengthUnit, number> = { in: 1, cm: 2, mm: 2, ft: 1, yd: 1, m: 1 };

const labelSteps = [1, 2, 5, 10, 20, 50];
const leastLabelPx = 26;
const leastTickPx = 3.5;
