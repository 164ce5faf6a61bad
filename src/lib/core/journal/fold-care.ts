import type { Measured } from '#core/measure';
import type * as care from './care';
import type { EntryId, InvestigationId, PersonId, SpecimenId } from './id';
import type { HelperLength } from './vocabulary';

/** Careful measuring while it is being added up: `CareOfNotebook` that can still grow. */
export interface FoldCare {
  readonly estimates: Map<SpecimenId, care.Estimate[]>;
  readonly predictions: Map<SpecimenId, care.SealedPrediction[]>;
  readonly looks: Map<SpecimenId, care.LooksNote[]>;
  readonly otherSides: Map<EntryId, care.OtherSide>;
  readonly doubtAnswers: Map<EntryId, care.DoubtAnswered[]>;
  readonly helperLengths: Map<PersonId, Map<HelperLength, Measured>>;
  readonly fairTests: Map<InvestigationId, care.FairTestPlan[]>;
  readonly differences: care.DifferenceNoticed[];
  readonly rulerChecks: care.RulerCheck[];
  readonly cautionsPutAway: Map<string, care.RulerCheck['day']>;
}

export const emptyFoldCare = (): FoldCare => ({
  estimates: new Map(),
  predictions: new Map(),
  looks: new Map(),
  otherSides: new Map(),
  doubtAnswers: new Map(),
  helperLengths: new Map(),
  fairTests: new Map(),
  differences: [],
  rulerChecks: [],
  cautionsPutAway: new Map(),
});
