import { footMm as checkedFootMm, headMm, sheetRoom, type PaperSizeName } from '#ui/paper';
import type { LessonFrame } from './lesson-frame';
import { packBlocks } from './pack-blocks';

/** What stands on each of a child's sheets. */
export type ChildPage =
  | {
      readonly kind: 'frame';
      readonly frame: LessonFrame;
      /** The parts under it, by their place in the list. */
      readonly parts: readonly number[];
    }
  /** The table, where the frame needs the whole of its sheet: the first of them is 0. */
  | { readonly kind: 'table'; readonly frame: LessonFrame; readonly sheet: number }
  | { readonly kind: 'parts'; readonly parts: readonly number[] };

export interface ChildParts {
  readonly size: PaperSizeName;
  /** How high each question is, and what comes after them. */
  readonly heightsMm: readonly number[];
  /** The frame with so much under it; null where it would then not be as large. */
  readonly frameOver: (underMm: number) => LessonFrame | null;
  /** The frame by itself. */
  readonly frame: LessonFrame;
}

/** White between one question and the next, and the foot of a sheet without check bars. */
export const partGapMm = 3;
export const smallFootMm = 7;

/**
 * Lays a child's table, frame and questions on one sheet, where all of them go on it with squares
 * as large as they can be; else on as few as can be: the questions by themselves, or, where that
 * saves a sheet, beginning under the frame.
 */
export function childPages({
  size,
  heightsMm,
  frameOver,
  frame,
}: ChildParts): readonly ChildPage[] {
  const all = heightsMm.map((_, index) => index);
  const together = frameOver(sumMm(heightsMm) + partGapMm * heightsMm.length);
  if (together) return [{ kind: 'frame', frame: together, parts: all }];
  const apart = [...framePages(frame, []), ...partPages(packed(heightsMm, size, null))];
  const flowing = packed(heightsMm, size, restUnder(frame, size));
  const [first = [], ...others] = flowing;
  const begun = [...framePages(frame, first), ...partPages(others)];
  return begun.length < apart.length ? begun : apart;
}

const framePages = (frame: LessonFrame, parts: readonly number[]): readonly ChildPage[] => [
  { kind: 'frame', frame, parts },
  ...Array.from({ length: frame.layout.tableSheets }, (_, sheet): ChildPage => ({
    ...{ kind: 'table', frame, sheet },
  })),
];

const partPages = (pages: readonly (readonly number[])[]): readonly ChildPage[] =>
  pages.map((parts) => ({ kind: 'parts', parts }));

/** Room under a frame by itself: none on a sheet that lies, where lines would be too long. */
const restUnder = ({ layout, heightMm }: LessonFrame, size: PaperSizeName): number =>
  layout.direction === 'wide'
    ? 0
    : sheetRoom(size, 'tall').heightMm - headMm - checkedFootMm - heightMm - partGapMm;

const packed = (
  heightsMm: readonly number[],
  size: PaperSizeName,
  firstMm: number | null,
): readonly (readonly number[])[] => {
  const fullMm = sheetRoom(size, 'tall').heightMm - headMm - smallFootMm - partGapMm;
  const blocks = heightsMm.map((heightMm) => ({ heightMm, gapMm: partGapMm }));
  const pages = packBlocks(blocks, {
    columns: 1,
    heightMm: (page) => (page === 0 && firstMm !== null ? Math.max(0, firstMm) : fullMm),
  });
  return pages.map(([column = []]) => column);
};

const sumMm = (lengths: readonly number[]): number => lengths.reduce((sum, each) => sum + each, 0);
