import type { Drawing, DrawingLevel } from './drawing';
import { emptyDrawing } from './empty-drawing';
import type { GraphKind } from './graph-table';

/** A sheet of squares for a right drawing, turned as it is. Not part of the public door. */
export const blankDrawing = (
  kind: GraphKind,
  level: DrawingLevel,
  upright: boolean,
  squares: { readonly up: number; readonly across: number },
): Drawing => ({
  ...emptyDrawing(
    kind,
    upright
      ? { columns: squares.across, rows: squares.up }
      : { columns: squares.up, rows: squares.across },
  ),
  ...{ level, upright },
});
