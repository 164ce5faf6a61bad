import type { CivilDay, ClockTime } from '#core/calendar';
import type { Measured } from '#core/measure';
import type { EntryId, InvestigationId, PersonId, SpecimenId } from './id';
import type { Line } from './line';
import type { Stamp } from './stamp';
import type * as words from './vocabulary';

/** What a notebook holds of careful measuring, beside the readings themselves. */
export interface CareOfNotebook {
  /** By specimen, in the order they were made. */
  readonly estimates: ReadonlyMap<SpecimenId, readonly Estimate[]>;
  /** Sealed until their day: screens read them only through series, which keeps the seal. */
  readonly predictions: ReadonlyMap<SpecimenId, readonly SealedPrediction[]>;
  readonly looks: ReadonlyMap<SpecimenId, readonly LooksNote[]>;
  /** The other side of the ruler, by the reading it was read with; the last one stands. */
  readonly otherSides: ReadonlyMap<EntryId, OtherSide>;
  /** By reading, oldest first. */
  readonly doubtAnswers: ReadonlyMap<EntryId, readonly DoubtAnswered[]>;
  /** By person and helper; the last one measured stands. */
  readonly helperLengths: ReadonlyMap<PersonId, ReadonlyMap<words.HelperLength, Measured>>;
  /** Every plan that was written, oldest first; which one stands is told by series. */
  readonly fairTests: ReadonlyMap<InvestigationId, readonly FairTestPlan[]>;
  readonly differences: readonly DifferenceNoticed[];
  readonly rulerChecks: readonly RulerCheck[];
  /** The last day each caution was put away. */
  readonly cautionsPutAway: ReadonlyMap<string, CivilDay>;
}

export interface Estimate extends Line {
  readonly specimen: SpecimenId;
  readonly time?: ClockTime;
  readonly measured: Measured;
  readonly helper?: words.HelperLength;
}

export interface SealedPrediction extends Line {
  readonly specimen: SpecimenId;
  readonly forDay: CivilDay;
  readonly measured: Measured;
  readonly because: string;
}

export interface LooksNote extends Line {
  readonly specimen: SpecimenId;
  readonly colour?: words.LeafColour;
  readonly stands?: words.StemStand;
}

export interface OtherSide {
  readonly id: EntryId;
  readonly at: Stamp;
  readonly author: PersonId | null;
  readonly measured: Measured;
}

export interface DoubtAnswered {
  readonly at: Stamp;
  readonly author: PersonId | null;
  readonly doubt: string;
  readonly answer: words.DoubtAnswer;
}

export interface FairTestPlan {
  readonly id: EntryId;
  readonly at: Stamp;
  readonly author: PersonId | null;
  readonly different: string;
  readonly same: readonly string[];
  readonly second: readonly words.SecondMeasure[];
  readonly expect?: string;
}

export interface DifferenceNoticed extends Line {
  readonly investigation: InvestigationId;
  readonly specimen?: SpecimenId;
  readonly what: string;
}

export interface RulerCheck extends Line {
  readonly zeroAtEdge: boolean;
  readonly why?: string;
}
