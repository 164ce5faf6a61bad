/** A part of a page that is never cut in two, as high as it was measured to be. */
export interface Block {
  readonly heightMm: number;
  /** White over it, where it does not begin a column. */
  readonly gapMm: number;
  /** A heading that stands alone: what comes after it stands with it. */
  readonly isHeading?: boolean;
  /** Begins a new page, where it is not the first of all. */
  readonly beginsPage?: boolean;
}

/** How much there is room for. */
export interface Room {
  /** Columns side by side on a page. */
  readonly columns: number;
  /** How high the columns of a page are, by its number; from 0. */
  readonly heightMm: (page: number) => number;
}

/** Of each page, of each of its columns, which blocks stand in it, by their place in the list. */
export type PackedPages = readonly (readonly (readonly number[])[])[];

/**
 * Sets blocks into the columns of pages, in their order, each where there is still room for it. No
 * block is cut, and no heading stands last in a column. A block that is higher than a whole column
 * has one to itself. A first page that has too little room for the first block is left empty. No
 * blocks make no page.
 */
export function packBlocks(blocks: readonly Block[], room: Room): PackedPages {
  const pages: number[][][] = [[[]]];
  let usedMm = 0;
  const page = (): number => pages.length - 1;
  const beginColumn = (isOnNewPage: boolean): void => {
    if (isOnNewPage || pages[page()]!.length === room.columns) pages.push([[]]);
    else pages[page()]!.push([]);
    usedMm = 0;
  };
  groupsOf(blocks).forEach((group, index) => {
    const [first] = group.map((at) => blocks[at]!);
    const heightMm = heightOf(group.map((at) => blocks[at]!));
    if (index > 0 && first!.beginsPage) beginColumn(true);
    const withGapMm = (): number => (usedMm > 0 ? first!.gapMm : 0) + heightMm;
    const hasRoom = (): boolean => usedMm + withGapMm() <= room.heightMm(page());
    const hasRoomLater = (): boolean => usedMm > 0 || heightMm <= room.heightMm(page() + 1);
    while (!hasRoom() && hasRoomLater()) beginColumn(false);
    usedMm += withGapMm();
    pages[page()]!.at(-1)!.push(...group);
  });
  return blocks.length === 0 ? [] : pages;
}

/** A heading together with what it is the heading of; everything else by itself. */
const groupsOf = (blocks: readonly Block[]): readonly (readonly number[])[] => {
  const groups: number[][] = [];
  blocks.forEach((_, index) => {
    if (index > 0 && blocks[index - 1]!.isHeading) groups.at(-1)!.push(index);
    else groups.push([index]);
  });
  return groups;
};

const heightOf = (group: readonly Block[]): number =>
  group.reduce((sum, { heightMm, gapMm }, at) => sum + heightMm + (at > 0 ? gapMm : 0), 0);
