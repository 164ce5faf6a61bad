import type { Drawing } from './drawing';
import type { Look } from './found-mistake';
import { lookAtBarGraph } from './look-at-bar-graph';
import { lookAtLineGraph } from './look-at-line-graph';
import { lookAtLinePlot } from './look-at-line-plot';
import { lookAtPictureGraph } from './look-at-picture-graph';
import type { RightGraph } from './right-graph';

/**
 * Looks at what a child drew, beside the table it was drawn from: what is right, which is said
 * first, and the mistakes by their numbers in the order a teacher would raise them, each with
 * where to look and never with what would be right. Only the first of them is shown at a time. A
 * drawing that does not show its table always has a mistake; what is not drawn yet comes last.
 *
 * The kind of the drawing decides how it is looked at. Bars or lines of a table that makes none
 * are our own mistake and throw; pictures of such a table are P13.
 * @example
 * lookAtDrawing({ kind: 'picture-graph', keyValue: 1, table: { form: 'counts', counted: 'days', rows: [{ label: 'sun', count: 0 }] }, titleWords: ['days'] }, { ...emptyDrawing('picture-graph', { columns: 3, rows: 3 }), title: 'Days' }) // => { right: ['title'], mistakes: [{ id: 'P2', lookAt: { part: 'key' }, isSoft: false }, { id: 'P11', lookAt: { part: 'places', indexes: [] }, isSoft: false }] }
 */
export const lookAtDrawing = (right: RightGraph, drawing: Drawing): Look => {
  switch (drawing.kind) {
    case 'picture-graph':
      return lookAtPictureGraph(right, drawing);
    case 'bar-graph':
      return lookAtBarGraph(right, drawing);
    case 'line-plot':
      return lookAtLinePlot(right, drawing);
    case 'line-graph':
      return lookAtLineGraph(right, drawing);
  }
};
