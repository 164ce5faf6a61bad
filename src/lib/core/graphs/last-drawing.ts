import { decodeDrawing } from './decode-drawing';
import type { Drawing } from './drawing';

/**
 * The newest version of a drawing that can be read: what a later program drew is passed over, and
 * the version before it is shown. Null when none can be read, or none was saved.
 * @example
 * lastDrawing([{ paper: { ...emptyDrawing('bar-graph', { columns: 4, rows: 6 }), title: 'Sun' } }, { paper: { kind: 'hologram' } }]).title // => 'Sun'
 * lastDrawing([]) // => null
 */
export function lastDrawing(versions: readonly { readonly paper: unknown }[]): Drawing | null {
  for (const { paper } of versions.toReversed()) {
    const read = decodeDrawing(paper);
    if (read.ok) return read.value;
  }
  return null;
}
