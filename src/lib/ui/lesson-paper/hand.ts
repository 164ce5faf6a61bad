import type { Stage } from '#core/journal';

/** How large a child of a stage writes and reads, on paper. */
export interface Hand {
  /** From one line to write on to the next. */
  readonly lineMm: number;
  /** How much a dashed line half-way helps; older children write without. */
  readonly hasMiddleLine: boolean;
  readonly letterPt: number;
}

/**
 * Lines as school paper is ruled for these grades: five eighths, half and three eighths of an inch
 * (common practice, no source). Letters no smaller than the 12 to 14 points that easy reading asks
 * for (style advice of the British Dyslexia Association, from memory).
 */
export const handByStage: Readonly<Record<Stage, Hand>> = {
  'grade-1': { lineMm: 15.9, hasMiddleLine: true, letterPt: 16 },
  'grade-2': { lineMm: 12.7, hasMiddleLine: true, letterPt: 14 },
  'grade-3': { lineMm: 9.5, hasMiddleLine: false, letterPt: 13 },
};
