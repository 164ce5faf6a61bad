import type { EntryDraft } from '#core/journal';
import type { EntryQuestion } from '#core/series';

/** Questions that are asked one by one before something is written. None of them can forbid it. */
export class Asking {
  questions = $state.raw<readonly EntryQuestion[]>([]);
  #whenAnswered: () => void = () => {};

  /** Asks, and goes on when every answer was yes; at once when there is nothing to ask. */
  ask(questions: readonly EntryQuestion[], goOn: () => void): void {
    this.questions = questions;
    this.#whenAnswered = goOn;
    if (questions.length === 0) goOn();
  }

  yes(): void {
    this.questions = this.questions.slice(1);
    if (this.questions.length === 0) this.#whenAnswered();
  }

  /** Back to what was being written, which stands as it was. */
  lookAgain(): void {
    this.questions = [];
  }
}

/** A change to a line that is ready to be written, but for its reason. */
export interface Change {
  /** What gets a line through it, in words. */
  readonly was: string;
  /** What will stand beside it; null where nothing will. */
  readonly is: string | null;
  readonly suggestions: readonly string[];
  readonly drafts: (why: string) => readonly EntryDraft[];
  readonly said: string;
  /** The row to go to afterwards; the newest line when not said. */
  readonly row?: string;
}

/** First the doubts, then the reason, then it is written. */
export class Changing extends Asking {
  change = $state.raw<Change | null>(null);

  propose(change: Change, questions: readonly EntryQuestion[] = []): void {
    this.ask(questions, () => (this.change = change));
  }

  override lookAgain(): void {
    super.lookAgain();
    this.change = null;
  }
}
