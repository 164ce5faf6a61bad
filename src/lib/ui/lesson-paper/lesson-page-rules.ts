import type { LessonRecord, Notebook } from '#core/journal';
import { pageRule, paperSizes, type PaperSizeName } from '#ui/paper';

/** How large the pages are, and that a frame that lies has its page turned. */
export const lessonPageRules = (size: PaperSizeName): string => {
  const { widthMm, heightMm } = paperSizes[size];
  const tall = pageRule(size, 'tall');
  return `${tall} @page lesson-wide { size: ${heightMm}mm ${widthMm}mm; }`;
};

/** The paper most likely in the house: inches and Letter go together. */
export const usualSize = (
  { investigations }: Notebook,
  { investigation }: LessonRecord,
): PaperSizeName => {
  const unit = investigations.get(investigation)?.unit;
  return unit === 'cm' || unit === 'mm' || unit === 'm' ? 'a4' : 'letter';
};
