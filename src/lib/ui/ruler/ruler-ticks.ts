import { exactPerUnit, markById, nearestOnMark, type LengthUnit, type MarkId } from '#core/measure';

/** How long a line is on the ruler: the whole unit longest, each finer division shorter. */
export type TickRank = 'whole' | 'half' | 'quarter' | 'eighth' | 'sixteenth' | 'tenth';

export interface RulerTick {
  /** Where it stands, in whole nanometres from the zero edge. */
  readonly exact: number;
  /** The same as a part of the whole ruler: 0 at the zero edge, 1 at the far end. */
  readonly position: number;
  readonly rank: TickRank;
  /** The number printed at it, if any. */
  readonly label: string | null;
  /** False for the faint lines one step finer than the mark, which only show where half-way is. */
  readonly onMark: boolean;
}

export interface RulerShape {
  readonly unit: LengthUnit;
  readonly mark: MarkId;
  /** How long the ruler is, in whole nanometres. */
  readonly lengthExact: number;
  /** Print a number at every nth whole unit only. */
  readonly labelEvery?: number;
  /** Leave out the lines finer than the mark (and, with 'whole', all but the whole units). */
  readonly detail?: 'half-way' | 'mark' | 'whole';
}

/**
 * The lines of a ruler from its zero edge to its end, each division as long as on a wooden ruler:
 * whole units, then halves, quarters, eighths and sixteenths of an inch, or halves and tenths of a
 * centimetre. It is divided to the mark in use and one step finer, faintly.
 * Source of the hierarchy: US federal item description A-A-355, office ruler (different lengths
 * for 1/2, 1/4, 1/8, 1/16); NIST Handbook 44, section 5.52 (inches and binary submultiples of the
 * inch, or centimetres and tenths).
 */
export const rulerTicks = (shape: RulerShape): readonly RulerTick[] => {
  const { lengthExact, labelEvery = 1, detail = 'half-way' } = shape;
  const levels = levelsOf(shape.unit, shape.mark);
  const markExact = markById(shape.mark).exact;
  const drawn = levels.filter((level, index) => {
    if (index === 0) return true;
    if (detail === 'whole') return false;
    if (level.exact >= markExact) return true;
    return detail === 'half-way' && levels[index - 1]!.exact >= markExact;
  });
  const step = drawn[drawn.length - 1]!.exact;
  const whole = levels[0]!;

  return Array.from({ length: Math.floor(lengthExact / step) + 1 }, (_, index) => {
    const exact = index * step;
    const level = drawn.find((each) => exact % each.exact === 0)!;
    const wholes = exact / whole.exact;
    const labelled = level === whole && wholes % labelEvery === 0;
    return {
      exact,
      position: exact / lengthExact,
      rank: level.rank,
      label: labelled ? String(exact / exactPerUnit(shape.unit)) : null,
      onMark: exact % markExact === 0,
    };
  });
};

/**
 * The mark nearest to a place on the ruler; exactly half-way goes up. Never below zero, never
 * past the last mark on the ruler.
 * Source of "half goes up": common practice, no source.
 * @example
 * nearestMark(6350000, '1/2 in', 304800000) // => 12700000
 */
export const nearestMark = (exact: number, mark: MarkId, lengthExact: number): number => {
  const last = lengthExact - (lengthExact % markById(mark).exact);
  return Math.min(Math.max(nearestOnMark(exact, mark), 0), last);
};

/** One printed number to the next: a whole unit, but ten millimetres on a millimetre ruler. */
export const wholeStepExact = (unit: LengthUnit): number => levelsOf(unit, '1 mm')[0]!.exact;

interface Level {
  readonly rank: TickRank;
  readonly exact: number;
}

function levelsOf(unit: LengthUnit, mark: MarkId): readonly Level[] {
  const inch = exactPerUnit('in');
  const centimetre = exactPerUnit('cm');
  switch (unit) {
    case 'in':
      return markById(mark).writtenAs === 'decimal'
        ? levels(['whole', inch], ['half', inch / 2], ['tenth', inch / 10])
        : levels(
            ['whole', inch],
            ['half', inch / 2],
            ['quarter', inch / 4],
            ['eighth', inch / 8],
            ['sixteenth', inch / 16],
          );
    case 'cm':
    case 'mm':
      return levels(['whole', centimetre], ['half', centimetre / 2], ['tenth', centimetre / 10]);
    case 'ft':
      return levels(
        ['whole', inch * 12],
        ['half', inch * 6],
        ['tenth', inch],
        ['sixteenth', inch / 2],
      );
    case 'yd':
      return levels(['whole', inch * 36], ['half', inch * 12], ['tenth', inch]);
    case 'm':
      return levels(['whole', centimetre * 100], ['half', centimetre * 10], ['tenth', centimetre]);
  }
}

const levels = (...pairs: readonly (readonly [TickRank, number])[]): readonly Level[] =>
  pairs.map(([rank, exact]) => ({ rank, exact }));
