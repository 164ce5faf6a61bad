import type { CivilDay } from '#core/calendar';
import type { SpecimenId, WeatherWord } from '#core/journal';
import type { LengthUnit, Measured } from '#core/measure';
import type { SeriesPoint } from './series';

/**
 * A doubt about a number that was written: a question to be asked once, never a verdict. Each
 * kind carries the facts its question needs. In a list of doubts they stand in this order; several
 * may fit, and the child chooses.
 */
export type Doubt = PlantDoubt | RainDoubt | ShadowDoubt | PastTheCap;
export type DoubtKind = Doubt['kind'];

export type PlantDoubt = Slip | SameNumberAgain | Shrank | BigJump;

/** A slip of the hand or the eye that would explain the number: what it would have been. */
export type Slip =
  | { readonly kind: 'zero-or-missed'; readonly last: SeriesPoint }
  | {
      readonly kind: 'other-side';
      readonly chosen: LengthUnit;
      readonly perhapsUnit: 'in' | 'cm';
      readonly perhapsExact: number;
    }
  /** Millimetres written as centimetres, or (where no unit is named) a point that slipped. */
  | {
      readonly kind: 'ten-times-too-long';
      readonly perhapsUnit: 'mm' | null;
      readonly perhapsExact: number;
    }
  | {
      readonly kind: 'ten-times-too-short';
      readonly perhapsUnit: 'cm' | null;
      readonly perhapsExact: number;
    }
  | {
      readonly kind: 'digits-swapped';
      readonly perhapsText: string;
      readonly perhapsExact: number;
    }
  /** The pot, or the stake, was measured with the plant. */
  | {
      readonly kind: 'stand-counted';
      readonly stand: Measured;
      readonly perhapsExact: number;
    }
  | {
      readonly kind: 'ruler-upside-down';
      readonly rulerExact: number;
      readonly perhapsExact: number;
    }
  | {
      readonly kind: 'other-plant';
      readonly specimen: SpecimenId;
      readonly name: string;
      readonly itsLast: SeriesPoint;
    };

/** The same number for the fourth time, just after the plant grew fast. */
export interface SameNumberAgain {
  readonly kind: 'same-number-again';
  /** How many days have it, with this one. */
  readonly days: number;
  readonly since: CivilDay;
  readonly growthPerDayBeforeExact: number;
}

export interface Shrank {
  readonly kind: 'shrank';
  readonly last: SeriesPoint;
  readonly lessExact: number;
}

/** Much taller, and no slip explains it. */
export interface BigJump {
  readonly kind: 'big-jump';
  readonly last: SeriesPoint;
  readonly moreExact: number;
  readonly gapDays: number;
}

/** More than there can well be, whatever was read before. */
export interface PastTheCap {
  readonly kind: 'past-the-cap';
  readonly capExact: number;
}

export type RainDoubt =
  | { readonly kind: 'rain-unit'; readonly perhapsUnit: 'mm'; readonly perhapsExact: number }
  /** As much as the day before: was the gauge emptied? */
  | { readonly kind: 'rain-as-before'; readonly before: SeriesPoint }
  /** The word for this day, which was dry like the one before. */
  | { readonly kind: 'rain-though-dry'; readonly weather: WeatherWord };

export type ShadowDoubt =
  /** A shadow of nothing: was there no sun? */
  | { readonly kind: 'shadow-zero' }
  | { readonly kind: 'midday-longer'; readonly morning: SeriesPoint }
  /** Not as long as at that time of an earlier day; 0.2 is a fifth off. */
  | {
      readonly kind: 'shadow-not-as-before';
      readonly before: SeriesPoint;
      readonly shareOff: number;
    };
