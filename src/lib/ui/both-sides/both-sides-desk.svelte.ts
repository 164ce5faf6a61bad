import type { EntryId, Reading } from '#core/journal';
import type { TwoNumbers } from './pair-drafts';
import { SideRead } from './side-read.svelte';
import type { TwoSides } from './sides-of';

/** What the two numbers are for: a new reading, one that has its first side, or both once more. */
export type PairJob =
  | { readonly kind: 'new' }
  | { readonly kind: 'other-side'; readonly reading: Reading }
  | { readonly kind: 'both-again'; readonly reading: Reading };

/** Two numbers while they are being read. No number is shown before both are in. */
export class BothSidesDesk {
  job = $state.raw<PairJob | null>(null);
  turn = $state<'own' | 'other'>('own');
  own: SideRead = $state.raw() as SideRead;
  other: SideRead = $state.raw() as SideRead;
  /** The reading whose pair was written a moment ago, and whether it was asked about. */
  fresh = $state.raw<{ readonly reading: EntryId; readonly kept: boolean } | null>(null);
  readonly read: SideRead = $derived(this.turn === 'own' ? this.own : this.other);

  constructor(readonly sides: TwoSides) {
    this.#clear();
  }

  begin(job: PairJob): void {
    this.#clear();
    this.job = job;
    this.turn = job.kind === 'other-side' ? 'other' : 'own';
  }

  /** From the first press on, nothing that another window writes takes the pad away. */
  write(text: string): void {
    this.job ??= { kind: 'new' };
    this.read.write(text);
  }

  /** Both numbers, when both are in; else the next side is on, or what is odd is asked about. */
  submit(): TwoNumbers | null {
    this.job ??= { kind: 'new' };
    this.read.tried = true;
    if (!this.read.measured) return null;
    if (this.turn === 'own') {
      this.turn = 'other';
      return null;
    }
    const own = this.job.kind === 'other-side' ? this.job.reading.counted : this.own.measured;
    return own && this.other.measured ? { own, other: this.other.measured } : null;
  }

  finish(reading: EntryId | null): void {
    this.#clear();
    this.fresh = reading && { reading, kept: false };
  }

  keep(): void {
    this.fresh = this.fresh && { ...this.fresh, kept: true };
  }

  #clear(): void {
    this.job = null;
    this.turn = 'own';
    this.own = new SideRead(this.sides.own);
    this.other = new SideRead(this.sides.other);
    this.fresh = null;
  }
}
