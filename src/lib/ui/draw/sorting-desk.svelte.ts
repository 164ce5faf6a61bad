import {
  sortingStep,
  withoutLastPick,
  withPick,
  type ChildTally,
  type SortCard,
  type SortingStep,
} from '#core/graphs';

/** One tally being sorted: where each card was put so far, and what is not kept yet. */
export class SortingDesk {
  tally = $state.raw() as ChildTally;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #isKept = true;
  readonly cards: readonly SortCard[];
  readonly step: SortingStep = $derived.by(() => sortingStep(this.tally, this.cards));
  /** The card that is sorted or looked at again; none when all is done. */
  readonly index: number | null = $derived(this.step.kind === 'done' ? null : this.step.index);
  readonly card: SortCard | null = $derived.by(() =>
    this.index === null ? null : (this.cards[this.index] ?? null),
  );
  /** Where that card was put before, when it is looked at again. */
  readonly own: string | null = $derived(
    this.index === null ? null : (this.tally.cards[this.index]?.picks.at(-1) ?? null),
  );
  readonly canGoBack: boolean = $derived(this.tally.cards.some(({ picks }) => picks.length > 0));

  constructor(
    cards: readonly SortCard[],
    begun: ChildTally,
    readonly keep: (tally: ChildTally) => Promise<boolean>,
    readonly pauseMs = 2000,
  ) {
    this.cards = cards;
    this.tally = begun;
  }

  pick(kind: string): void {
    if (this.index !== null) this.#show(withPick(this.tally, this.index, kind));
  }

  back(): void {
    this.#show(withoutLastPick(this.tally));
  }

  /** The tally is drawn from, or put aside for the log's table. */
  async finish(use: 'mine' | 'log'): Promise<boolean> {
    this.#isKept = false;
    const tally = { ...this.tally, use };
    clearTimeout(this.#timer);
    return (this.#isKept = await this.keep(tally));
  }

  /** Keeps what is not kept yet, now. */
  async keepNow(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (this.#isKept) return;
    this.#isKept = true;
    if (!(await this.keep(this.tally))) this.#isKept = false;
  }

  #show(tally: ChildTally): void {
    this.tally = tally;
    this.#isKept = false;
    // Not put off by the next card: a quick hand would keep nothing until it rests.
    this.#timer ??= setTimeout(() => void this.keepNow(), this.pauseMs);
  }
}
