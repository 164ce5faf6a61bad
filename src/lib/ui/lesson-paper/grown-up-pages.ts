import { goesOn, type GrownUpBlock } from './grown-up-blocks';
import { packBlocks, type PackedPages } from './pack-blocks';

export interface GrownUpRoom {
  readonly heightMm: (block: GrownUpBlock) => number;
  /** How high a column is. */
  readonly columnMm: number;
  /** What stands over both columns of the first page, with its white. */
  readonly overFirstMm: number;
}

/** White between one part and the next. */
export const grownUpGapMm = 2.6;
export const gapOver = (block: GrownUpBlock): number => (goesOn(block) ? 0 : grownUpGapMm);

/**
 * Sets the parts of a grown-up's sheets in two columns. The questions begin a page of their own,
 * to be laid beside the child's, where that needs no page more.
 */
export function grownUpPages(
  blocks: readonly GrownUpBlock[],
  { heightMm, columnMm, overFirstMm }: GrownUpRoom,
): PackedPages {
  const packed = (areQuestionsApart: boolean): PackedPages =>
    packBlocks(
      blocks.map((block) => ({
        heightMm: heightMm(block),
        gapMm: gapOver(block),
        isHeading: block.kind === 'questions' || block.kind === 'second-sitting',
        beginsPage: areQuestionsApart && block.kind === 'questions',
      })),
      {
        columns: 2,
        heightMm: (page) => (page === 0 ? columnMm - overFirstMm : columnMm),
      },
    );
  const [apart, flowing] = [packed(true), packed(false)];
  return apart.length > flowing.length ? flowing : apart;
}
