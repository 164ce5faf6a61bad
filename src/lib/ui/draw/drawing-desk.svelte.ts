import { untrack } from 'svelte';
import {
  boardSlots,
  turned,
  type BoardSheet,
  type BoardSlot,
  type Drawing,
  type SymbolName,
} from '#core/graphs';

/** One drawing on the desk: what is drawn, what was before, and what is not kept yet. */
export class DrawingDesk {
  drawing = $state.raw() as Drawing;
  ticked = $state.raw<readonly number[]>([]);
  #past = $state.raw<readonly Drawing[]>([]);
  #future = $state.raw<readonly Drawing[]>([]);
  /** The drawing as those hear it who cannot see it: told when the hand rests, after each frame. */
  heard = $state.raw() as Drawing;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #hearing: ReturnType<typeof setTimeout> | undefined;
  #isKept = true;
  #lastField: string | null = null;

  constructor(
    drawing: Drawing,
    ticked: readonly number[],
    /** A right drawing of the same table: only where its columns stand is ever taken from it. */
    private readonly right: Drawing,
    readonly keep: (drawing: Drawing, ticked: readonly number[]) => Promise<boolean>,
    readonly pauseMs = 800,
  ) {
    this.drawing = drawing;
    this.heard = drawing;
    this.ticked = ticked;
  }

  readonly #places = $derived(this.drawing.places);
  readonly #bottom = $derived(this.drawing.bottom);
  readonly #paper = $derived(this.drawing.paper);

  /** The columns: they stay the same objects while only marks are put. */
  readonly slots: readonly BoardSlot[] = $derived.by(() => {
    const { kind, level, upright, side } = untrack(() => this.drawing);
    const rest = { places: this.#places, bottom: this.#bottom, paper: this.#paper };
    const sheet: BoardSheet = { kind, level, upright, side, ...rest };
    return boardSlots(sheet, this.right.upright === upright ? this.right : turned(this.right));
  });

  /** The picture of the key: one symbol object for every tap, until another is picked. */
  readonly symbol: SymbolName = $derived(this.drawing.key?.symbol ?? 'circle');

  readonly canUndo = $derived(this.#past.length > 0);
  readonly canRedo = $derived(this.#future.length > 0);

  /**
   * Draws something. What changes nothing leaves nothing to be undone; letters written one after
   * the other into the same field are undone together.
   */
  change(next: Drawing, field: string | null = null): void {
    if (next === this.drawing) return;
    const isSameField = field !== null && field === this.#lastField;
    if (!isSameField) this.#past = [...this.#past.slice(-mostSteps), this.drawing];
    this.#lastField = field;
    this.#future = [];
    this.#show(next);
  }

  undo(): void {
    const before = this.#past.at(-1);
    if (!before) return;
    this.#lastField = null;
    this.#past = this.#past.slice(0, -1);
    this.#future = [this.drawing, ...this.#future];
    this.#show(before);
  }

  redo(): void {
    const [after, ...later] = this.#future;
    if (!after) return;
    this.#lastField = null;
    this.#future = later;
    this.#past = [...this.#past, this.drawing];
    this.#show(after);
  }

  tick(row: number): void {
    this.ticked = this.ticked.includes(row)
      ? this.ticked.filter((each) => each !== row)
      : [...this.ticked, row].sort((one, other) => one - other);
    this.#keepSoon();
  }

  /** Keeps what is not kept yet, now. */
  async keepNow(): Promise<void> {
    clearTimeout(this.#timer);
    if (this.#isKept) return;
    this.#isKept = true;
    const done = await this.keep(this.drawing, this.ticked);
    if (!done) this.#isKept = false;
  }

  #show(drawing: Drawing): void {
    this.drawing = drawing;
    clearTimeout(this.#hearing);
    this.#hearing = setTimeout(() => (this.heard = this.drawing), restMs);
    this.#keepSoon();
  }

  #keepSoon(): void {
    this.#isKept = false;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.keepNow(), this.pauseMs);
  }
}

const mostSteps = 300;
/** A frame takes 17 ms; a hand that draws on presses again within a third of a second. */
const restMs = 200;
