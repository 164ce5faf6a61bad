import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import {
  begunDrawing,
  decodeTableChoice,
  drawingLevels,
  drawRight,
  lastDrawing,
  rightGraphOf,
  tableOf,
  type Drawing,
  type GraphTable,
  type RightGraph,
} from '#core/graphs';
import type { DrawingRecord, Notebook } from '#core/journal';
import { isGraphKind } from './draw-board-words';

/** What the desk needs to go on with a drawing. */
export interface OpenedDrawing {
  readonly begun: Drawing;
  readonly ticked: readonly number[];
  readonly table: GraphTable;
  readonly right: RightGraph;
}

/** Takes a drawing up again as it was last kept, with its table as the log has it now. */
export function openedDrawing(
  { graph, level, choice, stage, versions }: DrawingRecord,
  notebook: Notebook,
  today: CivilDay,
): Result<OpenedDrawing, { readonly kind: 'not-understood' | 'no-table' }> {
  const chosen = decodeTableChoice(choice);
  const given = drawingLevels.find((each) => each === level);
  if (!isGraphKind(graph) || !chosen.ok || !given) return failed({ kind: 'not-understood' });
  const table = tableOf(chosen.value, notebook, today);
  const right = table && rightGraphOf(graph, table, stage);
  if (!table || !right?.ok) return failed({ kind: 'no-table' });
  const last = lastDrawing(versions);
  if (versions.length > 0 && last?.kind !== graph) return failed({ kind: 'not-understood' });
  const begun = last ?? begunDrawing(drawRight(right.value), given);
  return ok({ begun, ticked: versions.at(-1)?.ticked ?? [], table, right: right.value });
}
