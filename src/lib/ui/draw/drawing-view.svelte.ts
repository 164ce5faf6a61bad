import {
  indexOfPoint,
  lookAtDrawing,
  stepToLookAt,
  withJoin,
  type BoardSlot,
  type DrawingHand,
  type DrawingStep,
  type DrawnJoin,
  type FoundMistake,
  type Look,
  type LookAt,
  type RightGraph,
} from '#core/graphs';
import type { DrawingDesk } from './drawing-desk.svelte';

/** What the child is busy with at the desk: which step, which column, which line, which hint. */
export class DrawingView {
  step = $state() as DrawingStep;
  chosen = $state(0);
  line = $state<DrawnJoin['line']>('solid');
  series = $state(0);
  rung = $state(0);
  look = $state.raw<Look | null>(null);
  /** The point a line is begun from. */
  joinFrom = $state<number | null>(null);

  constructor(
    readonly desk: DrawingDesk,
    readonly right: RightGraph,
    readonly steps: readonly DrawingStep[],
    readonly crossSpace: number,
  ) {
    this.step = steps[0] ?? 'marks';
  }

  readonly hand: DrawingHand = $derived.by(() => ({
    series: this.series,
    symbol: this.desk.symbol,
    cross: (['cross', 'ring', 'box'] as const)[this.series] ?? 'cross',
    crossSpace: this.crossSpace,
  }));

  /** The one thing to speak of: a matter of taste only when there is nothing else. */
  readonly remark: FoundMistake | null = $derived(remarkOf(this.look));

  /** Where to look, while a hint is open; a matter of taste is not marked on the paper. */
  readonly lookAt: LookAt | null = $derived(
    this.remark && !this.remark.isSoft ? this.remark.lookAt : null,
  );

  askToLook(): void {
    const before = this.remark?.id;
    this.look = lookAtDrawing(this.right, this.desk.drawing);
    if (this.remark?.id !== before) this.rung = 0;
  }

  /** Goes to where the thing to look at can be mended. */
  mend(): void {
    if (this.remark) this.step = stepToLookAt(this.remark.lookAt, this.steps);
    this.look = null;
  }

  /** A tap on a column while lines are drawn: from the first point to the second. */
  joinAt(slot: BoardSlot): void {
    const point = indexOfPoint(this.desk.drawing, slot.at, this.series);
    if (point < 0) return;
    if (this.joinFrom === null) this.joinFrom = point;
    else {
      this.desk.change(withJoin(this.desk.drawing, this.joinFrom, point, this.line));
      this.joinFrom = point === this.joinFrom ? null : point;
    }
  }

  go(by: number): void {
    const next = this.steps[this.steps.indexOf(this.step) + by];
    if (next) this.step = next;
    this.joinFrom = null;
  }
}

const remarkOf = (look: Look | null): FoundMistake | null =>
  look?.mistakes.find(({ isSoft }) => !isSoft) ?? look?.mistakes[0] ?? null;
