import {
  compareEntries,
  secondMeasures,
  type DifferenceNoticed,
  type FairTestPlan,
  type InvestigationId,
  type Notebook,
  type Reading,
  type SecondMeasure,
  type Specimen,
  type SpecimenId,
} from '#core/journal';

/** What can be the one thing that differs in a fair test: the words a plan is written in. */
export const differenceChoices = [
  'light',
  'water',
  'soil',
  'seed',
  'place',
  'something-else',
] as const;
export type DifferenceChoice = (typeof differenceChoices)[number];

/** Three weeks: before that a seedling in the dark lives on its seed (common practice, no source). */
export const lightTrapDays = 21;

export interface FairTest {
  /** The plan that stands; null when every plan was written after the readings had begun. */
  readonly plan: FairTestPlan | null;
  /** Whether the one difference can no longer be chosen, because readings have begun. */
  readonly isLocked: boolean;
  /** Plans written after that: what they change is a later difference, to be said aloud. */
  readonly laterPlans: readonly FairTestPlan[];
  /** Second differences that were noticed, oldest first. */
  readonly differences: readonly DifferenceNoticed[];
  /**
   * Light differs: a seedling in the dark is taller at first, and pale and weak, so height alone
   * would say that plants do better without light.
   */
  readonly lightTrap: boolean;
  /** What is to be looked at beside the height; more may be added at any time. */
  readonly second: readonly SecondMeasure[];
  readonly specimens: readonly FairTestSpecimen[];
}

export interface FairTestSpecimen {
  readonly specimen: SpecimenId;
  /** A dry seed that stays down is a finding in words: it has no height, and none of 0. */
  readonly state: 'up' | 'not-up-yet' | 'never-up';
}

/**
 * The fair test of an investigation, or null when nobody planned one. The plan that stands is the
 * last one written before the first reading of any of its specimens, by the order of entries; from
 * that reading on the one difference is locked; plans written later are reported beside it, and only
 * what they add to look at is taken over. Readings and differences that were taken back do not
 * count, so undoing the first reading opens the plan again.
 *
 * Where light differs and the plan names no second measure, all of them are asked for: dark-grown
 * seedlings are taller and weaker (etiolation; textbooks of botany, from memory).
 * @example
 * fairTestOf(foldEntries([]), 'no-such-test') // => null
 */
export const fairTestOf = (
  notebook: Notebook,
  investigationId: InvestigationId,
): FairTest | null => {
  const plans = notebook.fairTests.get(investigationId) ?? [];
  if (plans.length === 0) return null;
  const specimens = [...notebook.specimens.values()].filter(
    (specimen) => specimen.investigation === investigationId,
  );
  const firstReading = specimens
    .flatMap(({ id }) => standingReadings(notebook, id))
    .reduce<Reading | null>((first, each) => (first && isBefore(first, each) ? first : each), null);
  const isInTime = (plan: FairTestPlan): boolean =>
    firstReading === null || plan.at < firstReading.at;
  const plan = plans.findLast(isInTime) ?? null;
  const laterPlans = plans.filter((each) => !isInTime(each));
  const counting = plan ? [plan, ...laterPlans] : laterPlans;
  const lightTrap = counting.some(isLightTest);
  return {
    plan,
    isLocked: firstReading !== null,
    laterPlans,
    differences: notebook.differences.filter(
      (each) => each.investigation === investigationId && each.takenBack === null,
    ),
    lightTrap,
    second: secondOf(counting, lightTrap),
    specimens: specimens.map((specimen) => ({
      specimen: specimen.id,
      state: stateOf(notebook, specimen),
    })),
  };
};

const isLightTest = ({ different }: FairTestPlan): boolean =>
  different === ('light' satisfies DifferenceChoice);

const secondOf = (plans: readonly FairTestPlan[], lightTrap: boolean): readonly SecondMeasure[] => {
  const wanted = secondMeasures.filter((measure) =>
    plans.some(({ second }) => second.includes(measure)),
  );
  return lightTrap && wanted.length === 0 ? secondMeasures : wanted;
};

const stateOf = (notebook: Notebook, specimen: Specimen): FairTestSpecimen['state'] => {
  if (standingReadings(notebook, specimen.id).length > 0) return 'up';
  const ended = specimen.ended ?? notebook.investigations.get(specimen.investigation)?.ended;
  return ended ? 'never-up' : 'not-up-yet';
};

const standingReadings = (notebook: Notebook, specimen: SpecimenId): readonly Reading[] =>
  (notebook.logBySpecimen.get(specimen)?.readings ?? []).filter(
    (reading) => reading.takenBack === null,
  );

const isBefore = (one: Reading, other: Reading): boolean => compareEntries(one, other) < 0;
