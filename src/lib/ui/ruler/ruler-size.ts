import { markById, nanometresByUnit } from '#core/measure';
import { rulerTicks, wholeStepExact, type RulerShape, type RulerTick } from './ruler-ticks';

/**
 * How long to draw a ruler, in pixels: it fills the room there is, but its marks never come closer
 * than a fingertip can tell apart with the help of the less and more buttons, and it is never
 * drawn larger than life (96 CSS pixels to the inch: CSS Values and Units, section 6.2).
 * When the answer is more than the room, the ruler scrolls.
 */
export const rulerPixels = (shape: RulerShape, roomPx: number): number => {
  const wholeExact = wholeStepExact(shape.unit);
  const wholes = shape.lengthExact / wholeExact;
  const marksPerWhole = wholeExact / markById(shape.mark).exact;
  const leastPerWhole = Math.max(
    leastPixelsPerWhole,
    Math.min(marksPerWhole * leastPixelsPerMark, mostPixelsPerWholeForMarks),
  );
  const lifeSizePx = (shape.lengthExact / nanometresByUnit.in) * 96;
  const leastPx = wholes * leastPerWhole;
  return Math.round(Math.max(leastPx, Math.min(roomPx, lifeSizePx)));
};

/** The lines of a ruler this long: the faint half-way lines only where an eye can part them. */
export const rulerTicksAt = (shape: RulerShape, lengthPx: number): readonly RulerTick[] => {
  const ticks = rulerTicks(shape);
  const crowded = lengthPx / (ticks.length - 1) < leastPixelsPerTick;
  return crowded ? rulerTicks({ ...shape, detail: 'mark' }) : ticks;
};

/** How large its numbers can be without running into each other. */
export const rulerFontPixels = (shape: RulerShape, lengthPx: number): number =>
  (lengthPx * wholeStepExact(shape.unit)) / shape.lengthExact < 26 ? 15 : 19;

const leastPixelsPerWhole = 22;
const leastPixelsPerTick = 3;
const leastPixelsPerMark = 6;
const mostPixelsPerWholeForMarks = 96;
