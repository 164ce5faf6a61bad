import {
  exactPerUnit,
  liesOnMark,
  markById,
  marksFor,
  type Mark,
  type MarkId,
} from '#core/measure';
import type { Measured, Unit } from '#core/measure';

/**
 * Finds the mark a whole column was read to: for each unit, the coarsest mark on which every
 * number lies. One 2.5 among whole centimetres shows that halves were looked at. Inches written
 * in fractions and in decimals both, with no mark for all, leave each number its own.
 */
export class ColumnMark {
  readonly #stylesByUnit = new Map<Unit, Set<Mark['writtenAs']>>();
  readonly #candidatesByUnit = new Map<Unit, readonly Mark[]>();

  /** Takes another number of the column into account. */
  add({ unit, mark, exact }: Measured): void {
    const own = markById(mark);
    const styles = this.#stylesByUnit.get(unit) ?? new Set();
    if (!isWhole(own)) styles.add(own.writtenAs);
    this.#stylesByUnit.set(unit, styles);
    const before = this.#candidatesByUnit.get(unit) ?? marksFor(unit);
    const after = before.filter(({ id }) => liesOnMark(exact, id));
    this.#candidatesByUnit.set(unit, after);
  }

  /** The mark found for a unit, or null where no mark holds all its numbers. */
  markOf(unit: Unit): MarkId | null {
    const styles = this.#stylesByUnit.get(unit) ?? new Set();
    const candidates = this.#candidatesByUnit.get(unit) ?? [];
    const fits = (mark: Mark): boolean =>
      isWhole(mark) || (styles.size < 2 && (styles.size === 0 || styles.has(mark.writtenAs)));
    return candidates.find(fits)?.id ?? null;
  }
}

/** A mark of whole units is written alike either way. */
const isWhole = (mark: Mark): boolean => mark.exact === exactPerUnit(mark.unit);
