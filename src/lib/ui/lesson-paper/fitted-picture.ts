import type { Drawing } from '#core/graphs';
import { linesMm, pictureEdges } from '#ui/paper';

/** How a drawing is set smaller than true, so that it fits and its words stay as large as can be. */
export interface FittedPicture {
  readonly squareMm: number;
  /** How wide it is before it is made smaller. */
  readonly widthMm: number;
  /** How much smaller everything becomes; 1 where nothing does. */
  readonly smaller: number;
}

/**
 * Takes the squares with which the words come out largest in so much room; of equals the largest
 * squares. For a grown-up to look at: it is not at true scale.
 */
export function fittedPicture(
  drawing: Drawing,
  most: { readonly widthMm: number; readonly heightMm: number },
): FittedPicture {
  const fitted = squaresMm.map((squareMm): FittedPicture => {
    const { left, right, top, bottom } = pictureEdges(drawing, squareMm);
    const widthMm = Math.max(leastMm, left + drawing.paper.columns * squareMm + right);
    const heightMm = top + drawing.paper.rows * squareMm + bottom + linesMm(drawing, false);
    const smaller = Math.min(1, most.widthMm / widthMm, most.heightMm / heightMm);
    return { squareMm, widthMm, smaller };
  });
  return fitted.reduce((best, each) => (each.smaller > best.smaller ? each : best));
}

const squaresMm = [10, 8, 6, 5] as const;
/** The lines of words over and under a narrow graph need some room. */
const leastMm = 80;
