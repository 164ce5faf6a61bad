import { markById, type MarkId } from '#core/measure';
import { nearestMark } from './ruler-ticks';

/** What a ruler needs to know to take a step on it. */
export interface Stepping {
  readonly mark: MarkId;
  readonly lengthExact: number;
  readonly wholeExact: number;
}

/**
 * Where a key takes the pointer: arrows one mark, Page keys one numbered step, Home to the zero
 * edge, End to the far end. Null for every other key, which the ruler leaves alone.
 * Source: WAI-ARIA Authoring Practices, slider pattern.
 */
export const keyToExact = (key: string, from: number | null, how: Stepping): number | null => {
  const here = from ?? 0;
  const one = markById(how.mark).exact;
  const place = (exact: number) => nearestMark(exact, how.mark, how.lengthExact);
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return place(here + one);
    case 'ArrowLeft':
    case 'ArrowDown':
      return place(here - one);
    case 'PageUp':
      return place(here + how.wholeExact);
    case 'PageDown':
      return place(here - how.wholeExact);
    case 'Home':
      return 0;
    case 'End':
      return place(how.lengthExact);
    default:
      return null;
  }
};
