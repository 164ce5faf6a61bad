import type { Drawing } from '#core/graphs';
import { linesMm, pictureEdges } from '#ui/paper';

/** How high a graph is with its words on paper, in squares of 5 mm. */
export const wantedMm = (drawing: Drawing): number => {
  const { top, bottom } = pictureEdges(drawing, squareMm);
  return Math.ceil(top + drawing.paper.rows * squareMm + bottom + linesMm(drawing, false));
};

/**
 * Shares the room of a page among its graphs: each gets what it wants where there is enough, and
 * what the small ones leave goes to the large ones.
 */
export const graphRooms = (wanted: readonly number[], roomMm: number): readonly number[] => {
  const given = wanted.map(() => 0);
  let left = roomMm;
  const smallestFirst = wanted
    .map((mm, index) => ({ mm, index }))
    .toSorted((one, other) => one.mm - other.mm);
  smallestFirst.forEach(({ mm, index }, done) => {
    given[index] = Math.min(mm, Math.floor(left / (smallestFirst.length - done)));
    left -= given[index]!;
  });
  return given;
};

const squareMm = 5;
