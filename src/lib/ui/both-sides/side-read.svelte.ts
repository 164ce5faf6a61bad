import {
  parseMeasured,
  systemOf,
  type LengthUnit,
  type MarkId,
  type Measured,
  type ParseError,
} from '#core/measure';
import { formatExactNumber } from '#core/measure';

/** One side of a ruler: its unit, and the mark it is read to. */
export interface RulerSide {
  readonly unit: LengthUnit;
  readonly mark: MarkId;
}

/** What is being read on one side of a ruler. */
export class SideRead {
  text = $state('');
  /** Whether the button was pressed: a half-written number is not doubted before. */
  tried = $state(false);
  readonly parsed = $derived.by(() => parseMeasured(this.text, this.side));
  /** Whether a unit of the other side was written behind the number. */
  readonly isOtherSide: boolean = $derived.by(
    () => this.parsed.ok && systemOf(this.parsed.value.unit) !== systemOf(this.side.unit),
  );
  readonly measured: Measured | null = $derived(
    this.parsed.ok && !this.isOtherSide ? this.parsed.value : null,
  );
  readonly error: ParseError | null = $derived(
    this.tried && !this.parsed.ok ? this.parsed.error : null,
  );

  constructor(readonly side: RulerSide) {}

  write(text: string): void {
    this.text = text;
    this.tried = false;
  }

  /** Writes the number that was tapped on the ruler. */
  pick(exact: number): void {
    this.write(formatExactNumber(exact, this.side.unit, this.side.mark));
  }
}
