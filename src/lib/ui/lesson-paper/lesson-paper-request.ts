import { isPaperSize, type PaperSizeName } from '#ui/paper';
import { frameLevels, type FrameLevel } from './lesson-frame';

/** The sheets a lesson has on paper. */
export const sheetGroups = ['child', 'grown-up', 'words'] as const;
export type SheetGroup = (typeof sheetGroups)[number];

/** What the address of the page asks to have on paper. What it does not say is left open. */
export interface LessonPaperRequest {
  readonly size: PaperSizeName | null;
  /** In their own order; all of them where the address names none. */
  readonly groups: readonly SheetGroup[];
  /** What stands on the child's frame. */
  readonly frame: FrameLevel | null;
}

/**
 * Reads the address: `size`, `frame` (a level) and `sheets` (`child`,
 * `grown-up` and `words`, with commas between). Anything else is passed over.
 */
export const lessonPaperRequest = (search: URLSearchParams): LessonPaperRequest => {
  const size = search.get('size');
  const asked = search.get('sheets')?.split(',') ?? [];
  const groups = sheetGroups.filter((group) => asked.includes(group));
  return {
    size: isPaperSize(size) ? size : null,
    groups: groups.length > 0 ? groups : sheetGroups,
    frame: frameLevels.find((level) => level === search.get('frame')) ?? null,
  };
};

/** The same groups with one put in or left out; the last one is never left out. */
export const withGroup = (
  groups: readonly SheetGroup[],
  group: SheetGroup,
): readonly SheetGroup[] => {
  const others = groups.filter((each) => each !== group);
  if (others.length === groups.length)
    return sheetGroups.filter((each) => each === group || groups.includes(each));
  return others.length === 0 ? groups : others;
};
