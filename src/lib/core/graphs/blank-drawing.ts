import type { Drawing, DrawingLevel } from './drawing';
import type { GraphKind } from './graph-table';

/** A sheet of squares with nothing on it. Not part of the public door. */
export const blankDrawing = (
  kind: GraphKind,
  level: DrawingLevel,
  upright: boolean,
  squares: { readonly up: number; readonly across: number },
): Drawing => ({
  ...{ kind, level, upright, title: '', key: null, seriesKey: [] },
  paper: upright
    ? { columns: squares.across, rows: squares.up }
    : { columns: squares.up, rows: squares.across },
  side: { label: '', ticks: [] },
  bottom: { label: '', ticks: [] },
  ...{ places: [], symbols: [], bars: [], crosses: [], points: [], joins: [], strokes: [] },
});
