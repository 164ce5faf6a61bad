import { failed, ok, type Result } from '#core/base';
import type { CivilDay } from '#core/calendar';
import {
  begunDrawing,
  drawingLevels,
  drawRight,
  lastDrawing,
  rightGraphOf,
  tableOfDrawing,
  type Drawing,
  type GraphTable,
  type RightGraph,
  type TableOfDrawing,
  type TableSource,
} from '#core/graphs';
import type { DrawingRecord, Notebook } from '#core/journal';
import { isGraphKind } from '#ui/graph-words';

/** A drawing that is taken up again: days to be sorted first, or a desk to draw at. */
export type OpenedDrawing =
  | { readonly at: 'sorting'; readonly source: TableSource; readonly sorting: Sorting }
  | { readonly at: 'desk'; readonly desk: OpenedDesk; readonly notice: TallyNotice | null };

type Sorting = NonNullable<TableOfDrawing['sorting']>;

/** Why the log's table stands beside the paper though the child had a tally. */
export type TallyNotice = 'lost' | 'does-not-fit';

/** What the desk needs to go on with a drawing. */
export interface OpenedDesk {
  readonly begun: Drawing;
  readonly ticked: readonly number[];
  readonly table: GraphTable;
  readonly right: RightGraph;
}

/** Takes a drawing up again as it was last kept: its sorting, or its paper beside its table. */
export function openedDrawing(
  record: DrawingRecord,
  notebook: Notebook,
  today: CivilDay,
): Result<OpenedDrawing, { readonly kind: 'not-understood' | 'no-table' }> {
  const { graph, level, stage } = record;
  const made = tableOfDrawing(record, notebook, today);
  const given = drawingLevels.find((each) => each === level);
  if (!isGraphKind(graph) || !given) return failed({ kind: 'not-understood' });
  if (!made.ok) {
    return failed({ kind: made.error.kind === 'no-table' ? 'no-table' : 'not-understood' });
  }
  const { choice, inLog, sorting, isTallyLost } = made.value;
  if (sorting) return ok({ at: 'sorting', source: choice.source, sorting });
  const own = rightGraphOf(graph, made.value.table, stage);
  const right = own.ok ? own : rightGraphOf(graph, inLog, stage);
  if (!right.ok) return failed({ kind: 'no-table' });
  const table = own.ok ? made.value.table : inLog;
  const notice = isTallyLost ? 'lost' : own.ok ? null : 'does-not-fit';
  const drawn = record.versions.filter(({ paper }) => !Object.hasOwn(paper, 'tally'));
  const last = lastDrawing(drawn);
  if (drawn.length > 0 && last?.kind !== graph) return failed({ kind: 'not-understood' });
  const begun = last ?? begunDrawing(drawRight(right.value), given);
  const ticked = drawn.at(-1)?.ticked ?? [];
  return ok({ at: 'desk', desk: { begun, ticked, table, right: right.value }, notice });
}
