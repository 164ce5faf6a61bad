/**
 * How large a square of the paper is, in millimetres, so that the whole graph is in sight where it
 * can be. Words keep their size: squares give way, but never so far that words lie on each other.
 */
export function squareFor(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  room: { readonly width: number; readonly height: number },
): number {
  const across = (room.width / leastPxPerMm - namesMm) / columns;
  const up = (room.height / leastPxPerMm - namesMm) / rows;
  return Math.min(mostMm, Math.max(leastMm, Math.floor(Math.min(across, up) * 10) / 10));
}

/** The least width in pixels, so that words stay as large as they have to be. */
export const leastPx = ({ columns }: { readonly columns: number }, squareMm: number): number =>
  Math.round((columns * squareMm + namesMm) * leastPxPerMm);

/** Words of 4.2 mm are then 14 pixels high. */
const leastPxPerMm = 3.3;
/** The numbers or names beside the squares take about so much. */
const namesMm = 20;
const leastMm = 4;
const mostMm = 10;
