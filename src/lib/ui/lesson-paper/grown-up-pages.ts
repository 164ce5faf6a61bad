import { goesOn, type GrownUpBlock } from './grown-up-blocks';
import { packBlocks, type PackedPages } from './pack-blocks';

export interface GrownUpRoom {
  readonly heightMm: (block: GrownUpBlock) => number;
  /** How high a column is. */
  readonly columnMm: number;
  /** What stands over both columns of the first page, with its white. */
  readonly overFirstMm: number;
}

export interface GrownUpPages {
  readonly pages: PackedPages;
  /** Whether the questions begin a page. */
  readonly areQuestionsApart: boolean;
}

/**
 * Of ways to set the same parts, the one with fewest pages; of those one whose questions begin a
 * page; of those the first. Null where there is none.
 */
export const bestPages = <Way extends GrownUpPages>(ways: readonly Way[]): Way | null => {
  const costOf = ({ pages, areQuestionsApart }: Way): number =>
    2 * pages.length + (areQuestionsApart ? 0 : 1);
  return ways.reduce<Way | null>(
    (best, way) => (best && costOf(best) <= costOf(way) ? best : way),
    null,
  );
};

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
): GrownUpPages {
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
  return apart.length > flowing.length
    ? { pages: flowing, areQuestionsApart: false }
    : { pages: apart, areQuestionsApart: true };
}
