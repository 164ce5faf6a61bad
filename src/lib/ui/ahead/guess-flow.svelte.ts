import type { CivilDay } from '#core/calendar';
import type { EntryDraft } from '#core/journal';
import type { ReadingDraft } from '#ui/entry';

export type AheadStep = 'day' | 'number' | 'because' | 'seal';

const steps: readonly AheadStep[] = ['day', 'number', 'because', 'seal'];

/** A guess for a day to come while it is being made: one question after the other. */
export class GuessFlow {
  step = $state<AheadStep>('day');
  forDay = $state<CivilDay | null>(null);
  because = $state('');
  /** Whether somebody has tried to go on without a because. */
  askedWhy = $state(false);

  constructor(
    /** The number, on the same pad as every day's. */
    readonly number: ReadingDraft,
    /** The day it is. */
    readonly today: CivilDay,
  ) {}

  chooseDay(day: CivilDay): void {
    this.forDay = day;
    this.step = 'number';
  }

  sayNumber(): void {
    this.number.tried = true;
    if (this.number.parsed.ok) this.step = 'because';
  }

  /** Begins the because with these words, or goes on with them. */
  addBeginning(words: string): void {
    const said = this.because.trim();
    this.because = said === '' ? words : `${said}, ${words}`;
    this.askedWhy = false;
  }

  sayBecause(): void {
    this.askedWhy = this.because.trim() === '';
    if (!this.askedWhy) this.step = 'seal';
  }

  goBack(): void {
    this.step = steps[Math.max(0, steps.indexOf(this.step) - 1)]!;
  }

  /** The entry to write; null while something is still to be said. */
  toEntry(): Extract<EntryDraft, { kind: 'prediction-sealed' }> | null {
    const { forDay, number } = this;
    if (!forDay || !number.parsed.ok) return null;
    return {
      kind: 'prediction-sealed',
      specimen: number.specimen.id,
      day: this.today,
      forDay,
      measured: number.parsed.value,
      because: this.because.trim().slice(0, mostLetters),
    };
  }
}

/** As much as the journal keeps of a sentence. */
export const mostLetters = 500;
