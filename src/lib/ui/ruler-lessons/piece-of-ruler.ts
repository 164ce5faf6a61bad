import { exactPerUnit, type MarkId } from '#core/measure';
import type { RulerTask } from '#core/lessons';
import { rulerTicks, type RulerTick } from '#ui/ruler';

/** A part of a ruler, and what lies beside it, in the lengths of a drawing. */
export interface PieceOfRuler {
  readonly wholeLength: number;
  readonly length: number;
  readonly ticks: readonly PlacedTick[];
  /** Where the strip lies; it may begin or end outside the piece. */
  readonly strip: { readonly from: number; readonly to: number };
  /** The zero edge; or the ruler is broken off there; or it goes on and only a part is shown. */
  readonly leftEnd: LeftEnd;
  /** The spaces from each numbered mark to the next. */
  readonly spaces: readonly Space[];
}

export type LeftEnd = 'zero-edge' | 'broken' | 'goes-on';

export interface PlacedTick extends RulerTick {
  readonly at: number;
}

export interface Space {
  readonly fromNumber: number;
  readonly at: number;
  readonly length: number;
  /** Whether the strip covers the whole space, a part of it, or nothing of it. */
  readonly covered: 'whole' | 'part' | 'none';
}

type Drawn = Pick<RulerTask, 'unit' | 'beginsExact' | 'endsExact'> & { readonly mark: MarkId };

/**
 * The piece of a ruler between two places that lie on whole numbers, drawn so that a whole unit is
 * `wholeLength` long: pixels on a screen, millimetres on paper.
 */
export function pieceOfRuler(
  { unit, mark, beginsExact, endsExact }: Drawn,
  { fromExact, toExact, isCloseUp = false }: PieceEnds,
  wholeLength: number,
): PieceOfRuler {
  const perUnit = exactPerUnit(unit);
  const along = (exact: number): number => ((exact - fromExact) / perUnit) * wholeLength;
  const coveredOf = (from: number): Space['covered'] => {
    const shared = Math.min(from + perUnit, endsExact) - Math.max(from, beginsExact);
    if (shared >= perUnit) return 'whole';
    return shared > 0 ? 'part' : 'none';
  };
  return {
    wholeLength,
    length: along(toExact),
    ticks: rulerTicks({ unit, mark, lengthExact: toExact, detail: 'mark' })
      .filter(({ exact }) => exact >= fromExact)
      .map((tick) => ({ ...tick, at: along(tick.exact) })),
    strip: { from: along(beginsExact), to: along(endsExact) },
    leftEnd: fromExact === 0 ? 'zero-edge' : isCloseUp ? 'goes-on' : 'broken',
    spaces: Array.from({ length: Math.round((toExact - fromExact) / perUnit) }, (_, index) => {
      const from = fromExact + index * perUnit;
      return {
        ...{ fromNumber: from / perUnit, at: along(from), length: wholeLength },
        covered: coveredOf(from),
      };
    }),
  };
}

export interface PieceEnds {
  readonly fromExact: number;
  readonly toExact: number;
  /** Whether the ruler goes on at both ends of the piece. */
  readonly isCloseUp?: boolean;
}

/** The ruler of a task, as far as it is needed: to one space past the strip. */
export const pieceOfTask = (task: RulerTask): PieceEnds => {
  const perUnit = exactPerUnit(task.unit);
  const past = (Math.ceil(task.endsExact / perUnit) + 1) * perUnit;
  return { fromExact: task.rulerFromExact, toExact: Math.min(past, task.rulerToExact) };
};

/**
 * Four spaces around the end of a strip, so that small parts can be told apart. Some of the strip
 * is always seen; which space the end lies in is left to chance (0 up to 1), so that the place of
 * the end on the screen tells nothing.
 */
export const closeUpOf = (task: RulerTask, chance: number): PieceEnds => {
  const perUnit = exactPerUnit(task.unit);
  const before = Math.floor(task.endsExact / perUnit);
  const last = task.rulerToExact / perUnit;
  const first = Math.max(0, Math.min(before - 1 - Math.floor(chance * 3), last - 4));
  return { fromExact: first * perUnit, toExact: (first + 4) * perUnit, isCloseUp: true };
};
