import type { Stage } from '#core/journal';
import { mostPicturesAtEase, mostSquaresUp } from './paper-room';

/** How many things one picture may stand for. */
export const keyValues = [1, 2, 5, 10] as const;

/**
 * How many things one picture had best stand for: 1 in grades 1 and 2; in grade 3 the smallest of
 * 1, 2, 5 and 10 that keeps rows short and needs only whole and half pictures. Null when the rows
 * fit the paper with none of them. (Common Core 1.MD.C.4, 2.MD.D.10, 3.MD.B.3.)
 * @example
 * pictureKey([4, 7, 2], 'grade-2') // => 1
 * pictureKey([18, 4, 7], 'grade-3') // => 2
 * pictureKey([25, 40, 15], 'grade-3') // => 5
 * pictureKey([41, 17], 'grade-3') // => null
 */
export const pictureKey = (counts: readonly number[], stage: Stage): number | null => {
  const largest = Math.max(0, ...counts);
  const right = keyValues.filter(
    (value) => (value === 1 || stage === 'grade-3') && keyIsRight(counts, value),
  );
  const atEase = stage === 'grade-3' ? mostPicturesAtEase : mostSquaresUp;
  for (const room of [atEase, mostSquaresUp]) {
    const fits = right.find((value) => largest / value <= room);
    if (fits !== undefined) return fits;
  }
  return null;
};

/**
 * Whether counts can be shown with a picture for so many, in whole pictures and halves: a half
 * stands for a whole number of things only when the picture stands for an even number, so never
 * when it stands for 5.
 * @example
 * keyIsRight([7, 3, 10], 2) // => true
 * keyIsRight([5, 10, 0, 12], 5) // => false
 */
export const keyIsRight = (counts: readonly number[], value: number): boolean =>
  counts.every((count) => count % value === 0 || (value % 2 === 0 && count % (value / 2) === 0));
