import { secondMeasures, type EntryDraft, type FairTestPlan } from '#core/journal';
import type { InvestigationId, SecondMeasure } from '#core/journal';
import type { DifferenceChoice } from '#core/series';
import { isDifferenceChoice, sameBeside, type SameThing } from './plan-parts';

/** A plan while it is being written: one difference, what stays the same, what else is looked at. */
export class PlanDraft {
  different = $state<DifferenceChoice | null>(null);
  /** What it is, where it is none of the choices. */
  ownWords = $state('');
  same = $state<SameThing[]>([]);
  second = $state<SecondMeasure[]>([]);
  expect = $state('');
  /** Whether somebody has pressed the button: nothing is asked for before. */
  tried = $state(false);

  constructor(
    readonly investigation: InvestigationId,
    plan: FairTestPlan | null,
  ) {
    if (!plan) return;
    this.different = isDifferenceChoice(plan.different) ? plan.different : 'something-else';
    this.ownWords = isDifferenceChoice(plan.different) ? '' : plan.different;
    this.same = sameBeside(null).filter((thing) => plan.same.includes(thing));
    this.second = [...plan.second];
    this.expect = plan.expect ?? '';
  }

  /** Chooses the one thing; a light test is looked at in every way from the start. */
  choose(different: DifferenceChoice): void {
    this.different = different;
    if (different === 'light' && this.second.length === 0) this.second = [...secondMeasures];
  }

  /** What is still not ticked as the same. */
  get unticked(): readonly SameThing[] {
    return sameBeside(this.different).filter((thing) => !this.same.includes(thing));
  }

  /** What is still to be said before the plan can be written; null when it can. */
  get missing(): 'different' | 'own-words' | 'second' | null {
    if (this.different === null) return 'different';
    if (this.different === 'something-else' && this.ownWords.trim() === '') return 'own-words';
    return this.different === 'light' && this.second.length === 0 ? 'second' : null;
  }

  /** The entry to write, or null while something is missing. */
  toEntry(): Extract<EntryDraft, { kind: 'fair-test-planned' }> | null {
    this.tried = true;
    if (this.missing !== null || this.different === null) return null;
    const own = this.ownWords.trim().slice(0, mostLettersOfName);
    const expect = this.expect.trim().slice(0, mostLettersOfSentence);
    return {
      kind: 'fair-test-planned',
      investigation: this.investigation,
      different: this.different === 'something-else' ? own : this.different,
      same: sameBeside(this.different).filter((thing) => this.same.includes(thing)),
      second: secondMeasures.filter((measure) => this.second.includes(measure)),
      ...(expect === '' ? {} : { expect }),
    };
  }
}

/** As much as the journal keeps of a name and of a sentence. */
export const mostLettersOfName = 80;
export const mostLettersOfSentence = 500;
