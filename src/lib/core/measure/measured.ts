import type { MarkId } from './mark';
import type { Unit } from './unit';

/**
 * What was read, as it was read: the words written, the unit, the mark it was read to, and the
 * exact value those three mean (whole nanometres for a length, whole things for a count).
 * A conversion is shown, never stored.
 */
export interface Measured {
  readonly text: string;
  readonly unit: Unit;
  readonly mark: MarkId;
  readonly exact: number;
}
